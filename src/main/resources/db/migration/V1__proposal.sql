-- One row for each state of a consultation; the newest revision of a code is the present one.
create table proposal (
    code        varchar(40)  not null,
    revision    integer      not null,
    made_at     timestamp    not null,
    brief       text         not null,
    adjustments text         not null,
    seed        bigint       not null,
    outcome     varchar(10)  not null,
    proposal    text         not null,
    primary key (code, revision)
);

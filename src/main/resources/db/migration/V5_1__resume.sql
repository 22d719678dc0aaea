-- By which mark a tablet takes its own consultations up again when its session is lost: SHA-256 of 128 random bits that only the
-- browser keeps. A mark ends with the wipe, or soon after the last touch.
create table resume_mark (
    hash        varchar(64)  not null,
    code        varchar(40)  not null,
    opened_at   timestamp    not null,
    until       timestamp    not null,
    primary key (hash, code)
);

-- What staff make of the house rules. An edition never changes once it is kept; what is live is the last publication that has begun.
create table edition (
    number     integer      not null primary key,
    id         varchar(80)  not null unique,
    title      varchar(80)  not null,
    note       text         not null,
    author     varchar(60)  not null,
    origin     varchar(10)  not null,
    based_on   integer,
    made_at    timestamp    not null,
    -- JSON of paths and texts, gzip, Base64.
    texts      text         not null,
    override   text         not null
);

create table publication (
    id         integer      not null primary key,
    edition    integer      not null references edition (number),
    starts_on  date         not null,
    made_at    timestamp    not null,
    author     varchar(60)  not null,
    withdrawn  boolean      not null
);

create table house_event (
    id         integer      not null primary key,
    made_at    timestamp    not null,
    author     varchar(60)  not null,
    what       varchar(20)  not null,
    edition    integer,
    words      text         not null
);

-- One draft for the whole shop.
create table house_draft (
    id         integer      not null primary key,
    based_on   integer      not null,
    changed_at timestamp    not null,
    author     varchar(60)  not null,
    content    text         not null
);

create table reference_brief (
    id         integer      not null primary key,
    title      varchar(80)  not null,
    brief      text         not null,
    expected   text         not null,
    author     varchar(60)  not null
);

create table manager (
    id         integer      not null primary key,
    password   varchar(200) not null,
    set_at     timestamp    not null
);

alter table proposal add column edition varchar(80) default '' not null;

-- The shop's shelf. A product that has left the range stays, so that those who own it can build on it.
create table product (
    sku        varchar(60)  not null primary key,
    -- JSON of the catalogue's columns and the text in each.
    cells      text         not null,
    gone       boolean      not null
);

-- What was done to the shelf, by whom; each can be undone, the newest first.
create table shelf_event (
    id         integer      not null primary key,
    made_at    timestamp    not null,
    author     varchar(60)  not null,
    what       varchar(20)  not null,
    words      varchar(120) not null,
    -- SHA-256 of the file that the kiosk was started with; empty for anything else.
    source     varchar(64)  not null,
    added      integer      not null,
    changed    integer      not null,
    gone       integer      not null,
    undone     boolean      not null,
    -- JSON of the rows before and after, gzip, Base64.
    changes    text         not null
);

-- How the headings of a supplier's file were matched with our columns.
create table file_mapping (
    signature  varchar(64)  not null primary key,
    mapping    text         not null,
    kept_at    timestamp    not null
);

create table product_photo (
    sku        varchar(60)  not null primary key,
    kept_at    timestamp    not null,
    -- JPEG.
    picture    bytea        not null
);

-- Which consultations a product was proposed in, chosen in by hand, swapped out of.
create table product_use (
    sku        varchar(60)  not null,
    code       varchar(40)  not null,
    what       varchar(20)  not null,
    first_at   timestamp    not null,
    primary key (sku, code, what)
);

-- The till signs its calls with a key; the same call made twice counts once.
create table till_key (
    id         integer      not null primary key,
    hash       varchar(64)  not null,
    made_at    timestamp    not null,
    author     varchar(60)  not null
);

create table till_call (
    id         varchar(200) not null primary key,
    made_at    timestamp    not null,
    digest     varchar(64)  not null,
    answer     text         not null
);

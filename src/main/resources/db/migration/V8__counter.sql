-- Stock as numbers, so that packs can be promised by one conditional update. "on_hand" is what the product's cells say.
create table stock (
    sku        varchar(60)  not null primary key,
    on_hand    integer      not null,
    held       integer      not null
);

-- What is promised to whom at this moment; the sum for a product is its "held".
create table reserved (
    code       varchar(40)  not null,
    sku        varchar(60)  not null,
    packs      integer      not null,
    primary key (code, sku)
);

-- Something that was done under a key of its own; the same key again does nothing more.
create table deed (
    id         varchar(80)  not null primary key,
    made_at    timestamp    not null,
    answer     text         not null
);

create table shop_terms (
    id         integer      not null primary key,
    content    text         not null,
    changed_at timestamp    not null,
    author     varchar(60)  not null
);

create table consultation_note (
    code       varchar(40)  not null,
    number     integer      not null,
    made_at    timestamp    not null,
    author     varchar(60)  not null,
    words      text         not null,
    primary key (code, number)
);

-- A quote never changes; another one takes its place.
create table quote (
    code       varchar(40)  not null,
    number     integer      not null,
    made_at    timestamp    not null,
    valid_to   date         not null,
    total      numeric(14, 4) not null,
    content    text         not null,
    primary key (code, number)
);

create table hold (
    code       varchar(40)  not null,
    number     integer      not null,
    made_at    timestamp    not null,
    author     varchar(60)  not null,
    ends_at    timestamp    not null,
    state      varchar(20)  not null,
    settled_at timestamp,
    primary key (code, number)
);

create table hold_line (
    code       varchar(40)  not null,
    number     integer      not null,
    sku        varchar(60)  not null,
    name       varchar(200) not null,
    shelf      varchar(60)  not null,
    packs      integer      not null,
    -- Null until somebody has been at the shelf.
    picked     integer,
    collected  integer      not null,
    put_back   boolean      not null,
    primary key (code, number, sku)
);
create index hold_state on hold (state, ends_at);

-- Where a customer follows the plan at home.
create table plan_link (
    token      varchar(40)  not null primary key,
    code       varchar(40)  not null,
    made_at    timestamp    not null,
    ends_at    timestamp    not null,
    revoked    boolean      not null
);
create index plan_link_code on plan_link (code);

-- What stood in the way of a kit or a hold because there was not enough of it.
create table blocked (
    sku        varchar(60)  not null,
    code       varchar(40)  not null,
    what       varchar(20)  not null,
    made_at    timestamp    not null,
    primary key (sku, code, what)
);

-- What is left of consultations that have been forgotten: sums of a day, nobody's own.
create table past_day (
    on_day     date         not null,
    measure    varchar(20)  not null,
    sku        varchar(60)  not null,
    amount     numeric(14, 4) not null,
    primary key (on_day, measure, sku)
);

-- What the kit of a revision costs, so that lists need not read whole proposals; empty where no kit fits, and for what was kept before.
alter table proposal add column total numeric(14, 4);

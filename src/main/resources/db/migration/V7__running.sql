-- How often something has changed, by topic: kiosks that share a database look here for what another one did. A later migration that
-- needs another topic inserts its row.
create table change_count (
    topic      varchar(40)  not null primary key,
    version    bigint       not null
);

insert into change_count (topic, version) values ('editions', 0);
insert into change_count (topic, version) values ('shelf', 0);
insert into change_count (topic, version) values ('stock', 0);
insert into change_count (topic, version) values ('people', 0);

-- The count of "shelf" with which a row was written last, to read only those that are newer.
alter table product add column version bigint default 0 not null;

-- Rises with each change of the draft; no clock tells two changes apart for certain.
alter table house_draft add column version bigint default 0 not null;

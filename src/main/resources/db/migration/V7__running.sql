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

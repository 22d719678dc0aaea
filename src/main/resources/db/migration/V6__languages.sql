-- The language that a revision was written in, by its BCP 47 tag: it is compared with what would come of it today in that language.
alter table proposal add column language varchar(8) default 'en' not null;

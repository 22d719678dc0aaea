-- A consultation from its first answer on; what was proposed in it are the rows of the same code in "proposal".
create table consultation (
    code        varchar(40)  not null primary key,
    begun_at    timestamp    not null,
    touched_at  timestamp    not null,
    -- What the customer likes to be called by, if anything; no name is needed.
    nickname    varchar(40)  not null,
    language    varchar(8)   not null,
    units       varchar(10)  not null,
    -- Where the interview stands, and what was answered so far as JSON; empty for one that came over the interface.
    question    varchar(20)  not null,
    answers     text         not null,
    -- The code of the consultation that this one was copied from or takes up again a year later.
    follows     varchar(40)
);

insert into consultation (code, begun_at, touched_at, nickname, language, units, question, answers)
select code, min(made_at), max(made_at), '', 'en', 'feet', '', '' from proposal group by code;

-- "FFLM" in ASCII: tells a database of this program from any other SQLite file.
pragma application_id = 1179012173;
pragma user_version = 1;

create table visit (
    id       text not null primary key check (length(id) between 1 and 80),
    state    text not null check (length(state) > 0),
    customer text not null,
    day      text not null check (day glob '????-??-??'),
    content  text not null
) strict;
create index visit_by_state on visit (state, day);

-- What is being typed, kept at every keystroke. A draft may stand for a visit that is not stored yet.
create table draft (
    visit   text not null primary key check (length(visit) between 1 and 80),
    saved   text not null,
    content text not null
) strict;

create table quote (
    number   text not null primary key,
    series   text not null,
    year     integer not null,
    sequence integer not null check (sequence >= 1),
    visit    text not null references visit (id),
    unique (series, year, sequence)
) strict;
create index quote_by_visit on quote (visit);

create table quote_revision (
    number      text not null references quote (number),
    revision    integer not null check (revision >= 1),
    made        text not null,
    valid_until text not null,
    customer    text not null,
    site        text not null,
    currency    text not null check (length(currency) = 3),
    total       integer not null,
    body        blob not null,
    digest      text not null check (length(digest) = 64),
    primary key (number, revision)
) strict;
create index quote_revision_by_customer on quote_revision (customer);

create table agreement (
    quote     text not null,
    revision  integer not null,
    choice    text not null,
    signed_by text not null,
    signed_at text not null,
    currency  text not null check (length(currency) = 3),
    total     integer not null,
    position  integer not null unique check (position >= 1),
    previous  text not null check (length(previous) = 64),
    chain     text not null unique check (length(chain) = 64),
    body      blob not null,
    digest    text not null check (length(digest) = 64),
    primary key (quote, revision),
    foreign key (quote, revision) references quote_revision (number, revision)
) strict;

create table change_order (
    number    text not null primary key,
    quote     text not null,
    revision  integer not null,
    signed_by text not null,
    signed_at text not null,
    currency  text not null check (length(currency) = 3),
    total     integer not null,
    position  integer not null unique check (position >= 1),
    previous  text not null check (length(previous) = 64),
    chain     text not null unique check (length(chain) = 64),
    body      blob not null,
    digest    text not null check (length(digest) = 64),
    foreign key (quote, revision) references agreement (quote, revision)
) strict;
create index change_order_by_quote on change_order (quote, revision);

-- Everything sealed, in the order of sealing.
create view chain_link as
    select position, quote || ' revision ' || revision as subject, previous, chain from agreement
    union all
    select position, number, previous, chain from change_order;

create table audit (
    position integer not null primary key check (position >= 1),
    at       text not null,
    who      text not null check (length(who) > 0),
    what     text not null,
    subject  text not null,
    before   text not null,
    after    text not null
) strict;
create index audit_by_subject on audit (subject);

create table setting (
    name    text not null primary key,
    content text not null
) strict;

-- What is kept for ever refuses change. The triggers before insert stand against "insert or replace", which would
-- otherwise delete a row without asking a delete trigger.
create trigger quote_stays before update on quote begin
    select raise(abort, 'a quote number never changes');
end;
create trigger quote_remains before delete on quote begin
    select raise(abort, 'a quote number is never deleted');
end;
create trigger quote_once before insert on quote
    when exists (select 1 from quote where number = new.number
        or (series = new.series and year = new.year and sequence = new.sequence)) begin
    select raise(abort, 'a quote number is given once');
end;

create trigger quote_revision_stays before update on quote_revision begin
    select raise(abort, 'a stored revision never changes');
end;
create trigger quote_revision_remains before delete on quote_revision begin
    select raise(abort, 'a stored revision is never deleted');
end;
create trigger quote_revision_once before insert on quote_revision
    when exists (select 1 from quote_revision where number = new.number and revision = new.revision) begin
    select raise(abort, 'a revision is stored once');
end;

create trigger agreement_stays before update on agreement begin
    select raise(abort, 'a sealed revision never changes');
end;
create trigger agreement_remains before delete on agreement begin
    select raise(abort, 'a sealed revision is never deleted');
end;
create trigger agreement_once before insert on agreement
    when exists (select 1 from agreement where quote = new.quote and revision = new.revision) begin
    select raise(abort, 'a revision is signed once');
end;
create trigger agreement_continues before insert on agreement
    when new.position <> (select coalesce(max(position), 0) + 1 from chain_link)
        or new.previous <> coalesce((select chain from chain_link order by position desc limit 1),
            '0000000000000000000000000000000000000000000000000000000000000000') begin
    select raise(abort, 'a seal follows the last one');
end;

create trigger change_order_stays before update on change_order begin
    select raise(abort, 'a change order never changes');
end;
create trigger change_order_remains before delete on change_order begin
    select raise(abort, 'a change order is never deleted');
end;
create trigger change_order_once before insert on change_order
    when exists (select 1 from change_order where number = new.number) begin
    select raise(abort, 'a change order is stored once');
end;
create trigger change_order_continues before insert on change_order
    when new.position <> (select coalesce(max(position), 0) + 1 from chain_link)
        or new.previous <> coalesce((select chain from chain_link order by position desc limit 1),
            '0000000000000000000000000000000000000000000000000000000000000000') begin
    select raise(abort, 'a seal follows the last one');
end;

create trigger audit_stays before update on audit begin
    select raise(abort, 'the journal never changes');
end;
create trigger audit_remains before delete on audit begin
    select raise(abort, 'the journal is never deleted');
end;
create trigger audit_goes_on before insert on audit
    when new.position <> (select coalesce(max(position), 0) + 1 from audit) begin
    select raise(abort, 'the journal has no gap');
end;

pragma user_version = 3;

-- Seals of other laptops stand beside the shop's own: each origin has a chain of its own. '' is this database.
alter table agreement add column origin text not null default '';
alter table change_order add column origin text not null default '';

drop trigger agreement_continues;
drop trigger change_order_continues;
drop view chain_link;
create view chain_link as
    select position, quote || ' revision ' || revision as subject, previous, chain, origin from agreement
    union all
    select position, number, previous, chain, origin from change_order;

create trigger agreement_continues before insert on agreement
    when new.position <> (select coalesce(max(position), 0) + 1 from chain_link)
        or new.previous <> coalesce(
            (select chain from chain_link where origin = new.origin order by position desc limit 1),
            '0000000000000000000000000000000000000000000000000000000000000000') begin
    select raise(abort, 'a seal follows the last one');
end;
create trigger change_order_continues before insert on change_order
    when new.position <> (select coalesce(max(position), 0) + 1 from chain_link)
        or new.previous <> coalesce(
            (select chain from chain_link where origin = new.origin order by position desc limit 1),
            '0000000000000000000000000000000000000000000000000000000000000000') begin
    select raise(abort, 'a seal follows the last one');
end;

-- Registers of the office: permits, gas work, refunds, write-offs, hours, orders, column mappings. Every state is kept;
-- of one kind and key the last row counts.
create table register_entry (
    position integer not null primary key check (position >= 1),
    kind     text not null check (length(kind) > 0),
    key      text not null check (length(key) > 0),
    body     blob not null,
    digest   text not null check (length(digest) = 64)
) strict;
create index register_entry_by_key on register_entry (kind, key, position);

create trigger register_entry_stays before update on register_entry begin
    select raise(abort, 'an entry of a register never changes');
end;
create trigger register_entry_remains before delete on register_entry begin
    select raise(abort, 'an entry of a register is never deleted');
end;
create trigger register_entry_goes_on before insert on register_entry
    when new.position <> (select coalesce(max(position), 0) + 1 from register_entry) begin
    select raise(abort, 'a register has no gap');
end;

-- Price lists taken over from suppliers.
create table price_import (
    id       integer not null primary key check (id >= 1),
    supplier text not null,
    file     text not null,
    day      text not null,
    who      text not null,
    undone   text
) strict;

-- What an import did to each part: the state before (0) and after (1). A new part has no state before.
create table part_state (
    import          integer not null references price_import (id),
    number          text not null,
    after           integer not null check (after in (0, 1)),
    sheet_row       integer not null,
    role            text not null,
    size            text not null,
    description     text not null,
    consumable      integer not null check (consumable in (0, 1)),
    unit            text not null,
    currency        text not null check (length(currency) = 3),
    cost            integer not null,
    list_price      integer,
    supplier        text not null,
    warranty_months integer not null,
    preferred       integer not null check (preferred in (0, 1)),
    source          text not null,
    replaced_by     text not null,
    vanished        integer not null check (vanished in (0, 1)),
    primary key (number, import, after)
) strict, without rowid;
create index part_state_by_import on part_state (import);

create trigger part_state_stays before update on part_state begin
    select raise(abort, 'the state of a part never changes');
end;
create trigger part_state_remains before delete on part_state begin
    select raise(abort, 'the state of a part is never deleted');
end;

-- Photographs and other files taken at a visit.
create table attachment (
    visit  text not null,
    name   text not null check (length(name) between 1 and 120),
    body   blob not null,
    digest text not null check (length(digest) = 64),
    primary key (visit, name)
) strict;

-- What came in from other laptops, and what did not agree with what was here.
create table packet_entry (
    origin text not null check (length(origin) > 0),
    kind   text not null,
    key    text not null,
    digest text not null check (length(digest) = 64),
    made   text not null,
    primary key (origin, kind, key)
) strict;
create table packet_conflict (
    position integer not null primary key check (position >= 1),
    origin   text not null,
    kind     text not null,
    key      text not null,
    ours     text not null,
    theirs   text not null check (length(theirs) = 64),
    reason   text not null,
    body     blob not null,
    settled  text,
    unique (origin, kind, key, theirs)
) strict;

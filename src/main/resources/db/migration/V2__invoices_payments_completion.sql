pragma user_version = 2;

create table invoice (
    position integer not null primary key check (position >= 1),
    number   text not null unique,
    series   text not null,
    year     integer not null,
    sequence integer not null check (sequence >= 1),
    kind     text not null check (kind in ('FULL', 'PART', 'CREDIT')),
    corrects text references invoice (number),
    quote    text not null,
    revision integer not null,
    issued   text not null,
    due      text not null,
    customer text not null,
    currency text not null check (length(currency) = 3),
    subtotal integer not null,
    tax      integer not null,
    total    integer not null,
    complete integer not null check (complete in (0, 1)),
    body     blob not null,
    digest   text not null check (length(digest) = 64),
    unique (series, year, sequence),
    foreign key (quote, revision) references agreement (quote, revision)
) strict;
create index invoice_by_quote on invoice (quote, revision);
create index invoice_by_customer on invoice (customer);

create table payment (
    id        text not null primary key check (length(id) between 1 and 80),
    quote     text not null references quote (number),
    invoice   text references invoice (number),
    day       text not null,
    currency  text not null check (length(currency) = 3),
    amount    integer not null check (amount <> 0),
    method    text not null,
    reference text not null,
    deposit   integer not null check (deposit in (0, 1))
) strict;
create index payment_by_quote on payment (quote);
create index payment_by_invoice on payment (invoice);

-- The record of completion as it grows: the last row of a revision is the one that counts.
create table completion (
    position integer not null primary key check (position >= 1),
    quote    text not null,
    revision integer not null,
    body     blob not null,
    digest   text not null check (length(digest) = 64),
    foreign key (quote, revision) references agreement (quote, revision)
) strict;
create index completion_by_quote on completion (quote, revision, position);

create trigger invoice_stays before update on invoice begin
    select raise(abort, 'an invoice never changes');
end;
create trigger invoice_remains before delete on invoice begin
    select raise(abort, 'an invoice is never deleted');
end;
create trigger invoice_goes_on before insert on invoice
    when new.position <> (select coalesce(max(position), 0) + 1 from invoice)
        or exists (select 1 from invoice where number = new.number)
        or new.sequence <> (select coalesce(max(sequence), 0) + 1 from invoice
            where series = new.series and year = new.year) begin
    select raise(abort, 'invoice numbers have no gap');
end;

create trigger payment_stays before update on payment begin
    select raise(abort, 'a payment never changes');
end;
create trigger payment_remains before delete on payment begin
    select raise(abort, 'a payment is never deleted');
end;
create trigger payment_once before insert on payment
    when exists (select 1 from payment where id = new.id) begin
    select raise(abort, 'a payment is stored once');
end;

create trigger completion_stays before update on completion begin
    select raise(abort, 'a record of completion never changes');
end;
create trigger completion_remains before delete on completion begin
    select raise(abort, 'a record of completion is never deleted');
end;
create trigger completion_goes_on before insert on completion
    when new.position <> (select coalesce(max(position), 0) + 1 from completion) begin
    select raise(abort, 'records of completion have no gap');
end;

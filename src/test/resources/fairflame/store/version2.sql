insert into visit (id, state, customer, day, content)
values ('V-2025-0007', 'signed', 'Ilse Fenn', '2025-11-03', '{"complaint":"locks out"}');
insert into draft (visit, saved, content) values ('V-2025-0008', '2025-11-04T09:00:00Z', '{"comp');
insert into quote (number, series, year, sequence, visit) values ('Q-2025-0007', 'Q', 2025, 7, 'V-2025-0007');
insert into quote_revision (number, revision, made, valid_until, customer, site, currency, total, body, digest)
values ('Q-2025-0007', 1, '2025-11-03', '2025-12-03', 'Ilse Fenn', '2 Reed Way, Tarn Hollow', 'USD', 28721,
    cast('{}' as blob), '44136fa355b3678a1146ad16f7e8649e94fb4fc21fe77e8310c060f61caaff8a');
insert into agreement (quote, revision, choice, signed_by, signed_at, currency, total, position, previous, chain,
    body, digest)
values ('Q-2025-0007', 1, 'both', 'Ilse Fenn', '2025-11-03T11:00:00-05:00', 'USD', 28721, 1,
    '0000000000000000000000000000000000000000000000000000000000000000',
    'aaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaa',
    cast('{}' as blob), '44136fa355b3678a1146ad16f7e8649e94fb4fc21fe77e8310c060f61caaff8a');
insert into audit (position, at, who, what, subject, before, after)
values (1, '2025-11-03T16:00:00Z', 'Bram Sedge', 'revision signed', 'Q-2025-0007 revision 1', '',
    '44136fa355b3678a1146ad16f7e8649e94fb4fc21fe77e8310c060f61caaff8a');
insert into setting (name, content) values ('shop', 'own');
insert into invoice (position, number, series, year, sequence, kind, corrects, quote, revision, issued, due, customer,
    currency, subtotal, tax, total, complete, body, digest)
values (1, 'I-2025-0001', 'I', 2025, 1, 'FULL', null, 'Q-2025-0007', 1, '2025-11-10', '2025-12-10', 'Ilse Fenn',
    'USD', 27994, 727, 28721, 1, cast('{}' as blob), '44136fa355b3678a1146ad16f7e8649e94fb4fc21fe77e8310c060f61caaff8a');
insert into payment (id, quote, invoice, day, currency, amount, method, reference, deposit)
values ('P-2025-0001', 'Q-2025-0007', 'I-2025-0001', '2025-11-20', 'USD', 28721, 'card', '', 0);

package fairflame.store;

import fairflame.Refusal;
import fairflame.invoice.Invoice;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.jdbi.v3.core.Handle;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

final class SqliteInvoices implements Invoices {
    private final Handle handle;
    private final Journal journal;
    private final Body<Invoice> body;

    SqliteInvoices(Handle handle, Journal journal, Body<Invoice> body) {
        this.handle = handle;
        this.journal = journal;
        this.body = body;
    }

    @Override
    public Invoice issue(String series, int year, Function<String, Invoice> make) {
        journal.by();
        var number = next(series, year).toString();
        var invoice = make.apply(number);
        if (!invoice.number().equals(number)) {
            throw new IllegalArgumentException(
                    "number " + number + " was given, but the invoice made has " + invoice.number());
        }
        add(invoice);
        return invoice;
    }

    private SerialNumber next(String series, int year) {
        return new SerialNumber(
                series,
                year,
                handle.createQuery("select coalesce(max(sequence), 0) + 1 from invoice"
                                + " where series = :series and year = :year")
                        .bind("series", series)
                        .bind("year", year)
                        .mapTo(Long.class)
                        .one());
    }

    @Override
    public void add(Invoice invoice) {
        journal.by();
        var content = new Content(body.write(invoice));
        if (content.isThere(bytes(invoice.number()), "invoice", invoice.number())) {
            return;
        }
        var number = SerialNumber.parse(invoice.number());
        var next = next(number.series(), number.year());
        if (!number.equals(next)) {
            throw Refusal.notAllowed("invoice number", number, "the next one, " + next);
        }
        refuseUnlessFounded(invoice);
        insert(invoice, number, content);
        journal.stored("invoice issued", invoice.number(), content.digest());
    }

    private void refuseUnlessFounded(Invoice invoice) {
        var seal = SqliteSigned.seal(handle, invoice.quote(), invoice.revision());
        if (!invoice.seal().equals(seal)) {
            throw Refusal.notAllowed("seal named by invoice " + invoice.number(), invoice.seal(), seal);
        }
        if (!invoice.corrects().isEmpty() && bytes(invoice.corrects()).isEmpty()) {
            throw Refusal.unknown("invoice to correct", invoice.corrects(), "a stored invoice");
        }
    }

    private void insert(Invoice invoice, SerialNumber number, Content content) {
        var totals = invoice.totals();
        handle.createUpdate("""
                        insert into invoice (position, number, series, year, sequence, kind, corrects, quote, revision,
                            issued, due, customer, currency, subtotal, tax, total, complete, body, digest)
                        select coalesce(max(position), 0) + 1, :number, :series, :year, :sequence, :kind,
                            nullif(:corrects, ''), :quote, :revision, :issued, :due, :customer, :currency,
                            :subtotal, :tax, :total, :complete, :body, :digest from invoice""")
                .bind("number", invoice.number())
                .bind("series", number.series())
                .bind("year", number.year())
                .bind("sequence", number.sequence())
                .bind("kind", invoice.kind().name())
                .bind("corrects", invoice.corrects())
                .bind("quote", invoice.quote())
                .bind("revision", invoice.revision())
                .bind("issued", invoice.issued().toString())
                .bind("due", invoice.due().toString())
                .bind("customer", invoice.customer().name())
                .bind("currency", invoice.currency().getCode())
                .bind("subtotal", totals.subtotal().getAmountMinorLong())
                .bind("tax", totals.tax().getAmountMinorLong())
                .bind("total", totals.total().getAmountMinorLong())
                .bind("complete", invoice.complete())
                .bind("body", content.bytes())
                .bind("digest", content.digest())
                .execute();
    }

    @Override
    public Optional<Invoice> find(String number) {
        return bytes(number).map(body::read);
    }

    @Override
    public List<Invoice> ofQuote(String quote) {
        return handle.createQuery("select body from invoice where quote = :quote order by position")
                .bind("quote", quote)
                .map((row, context) -> body.read(row.getBytes("body")))
                .list();
    }

    @Override
    public List<InvoiceRow> rows() {
        return handle.createQuery("select * from invoice order by position desc")
                .map((row, context) -> row(row))
                .list();
    }

    @Override
    public Optional<byte[]> bytes(String number) {
        return handle.createQuery("select body from invoice where number = :number")
                .bind("number", number)
                .mapTo(byte[].class)
                .findOne();
    }

    private static InvoiceRow row(ResultSet row) throws SQLException {
        return new InvoiceRow(
                row.getString("number"),
                Invoice.Kind.valueOf(row.getString("kind")),
                row.getString("quote"),
                row.getInt("revision"),
                row.getString("customer"),
                LocalDate.parse(row.getString("issued")),
                LocalDate.parse(row.getString("due")),
                Money.ofMinor(CurrencyUnit.of(row.getString("currency")), row.getLong("total")),
                row.getBoolean("complete"));
    }
}

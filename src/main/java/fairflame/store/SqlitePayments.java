package fairflame.store;

import fairflame.Refusal;
import fairflame.invoice.Payment;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

final class SqlitePayments implements Payments {
    private final Handle handle;
    private final Journal journal;

    SqlitePayments(Handle handle, Journal journal) {
        this.handle = handle;
        this.journal = journal;
    }

    @Override
    public void add(Receipt receipt) {
        journal.by();
        var payment = receipt.payment();
        var stored = find(payment.id());
        if (stored.equals(Optional.of(receipt))) {
            return;
        }
        if (stored.isPresent()) {
            throw Refusal.notAllowed("payment", payment.id(), "an id that no other payment has");
        }
        refuseUnlessFounded(receipt);
        insert(receipt, payment);
        journal.stored("payment received", payment.id(), Digest.of(receipt.toString()));
    }

    private void refuseUnlessFounded(Receipt receipt) {
        var payment = receipt.payment();
        if (payment.id().isBlank() || payment.id().length() > 80) {
            throw Refusal.malformed("id of a payment", payment.id(), "1 to 80 characters");
        }
        if (payment.amount().isZero()) {
            throw Refusal.outOfRange("amount of payment " + payment.id(), payment.amount(), "other than zero");
        }
        if (count("select count(*) from quote where number = :number", receipt.quote()) == 0) {
            throw Refusal.unknown("quote of payment " + payment.id(), receipt.quote(), "a stored quote");
        }
        receipt.invoice().ifPresent(invoice -> {
            var quote = handle.createQuery("select quote from invoice where number = :number")
                    .bind("number", invoice)
                    .mapTo(String.class)
                    .findOne();
            if (!quote.equals(Optional.of(receipt.quote()))) {
                throw Refusal.unknown(
                        "invoice of payment " + payment.id(), invoice, "a stored invoice of " + receipt.quote());
            }
        });
    }

    private int count(String sql, String number) {
        return handle.createQuery(sql)
                .bind("number", number)
                .mapTo(Integer.class)
                .one();
    }

    private void insert(Receipt receipt, Payment payment) {
        handle.createUpdate("""
                        insert into payment (id, quote, invoice, day, currency, amount, method, reference, deposit)
                        values (:id, :quote, :invoice, :day, :currency, :amount, :method, :reference, :deposit)""")
                .bind("id", payment.id())
                .bind("quote", receipt.quote())
                .bind("invoice", receipt.invoice())
                .bind("day", payment.on().toString())
                .bind("currency", payment.amount().getCurrencyUnit().getCode())
                .bind("amount", payment.amount().getAmountMinorLong())
                .bind("method", payment.method())
                .bind("reference", payment.reference())
                .bind("deposit", payment.deposit())
                .execute();
    }

    private Optional<Receipt> find(String id) {
        return handle.createQuery("select * from payment where id = :id")
                .bind("id", id)
                .map((row, context) -> receipt(row))
                .findOne();
    }

    @Override
    public List<Receipt> ofQuote(String quote) {
        return handle.createQuery("select * from payment where quote = :quote order by day, id")
                .bind("quote", quote)
                .map((row, context) -> receipt(row))
                .list();
    }

    @Override
    public List<Receipt> all() {
        return handle.createQuery("select * from payment order by day, id")
                .map((row, context) -> receipt(row))
                .list();
    }

    @Override
    public List<Receipt> ofInvoice(String invoice) {
        return handle.createQuery("select * from payment where invoice = :invoice order by day, id")
                .bind("invoice", invoice)
                .map((row, context) -> receipt(row))
                .list();
    }

    private static Receipt receipt(ResultSet row) throws SQLException {
        return new Receipt(
                row.getString("quote"),
                Optional.ofNullable(row.getString("invoice")),
                new Payment(
                        row.getString("id"),
                        LocalDate.parse(row.getString("day")),
                        Money.ofMinor(CurrencyUnit.of(row.getString("currency")), row.getLong("amount")),
                        row.getString("method"),
                        row.getString("reference"),
                        row.getBoolean("deposit")));
    }
}

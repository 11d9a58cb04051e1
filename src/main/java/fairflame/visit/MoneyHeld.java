package fairflame.visit;

import fairflame.invoice.Invoice;
import fairflame.invoice.account.Movement;
import fairflame.store.InvoiceRow;
import fairflame.store.QuoteRow;
import fairflame.store.Records;
import java.util.ArrayList;
import java.util.List;
import org.joda.money.Money;

/** Money that is not on an open invoice: deposits held, what is to be paid back, what was given up. */
public final class MoneyHeld {
    private final Workplace workplace;

    public MoneyHeld(Workplace workplace) {
        this.workplace = workplace;
    }

    /**
     * Money of a customer that no invoice has used.
     *
     * @param deposit true while no invoice was made yet: it is held for the work; false when it is to be paid back or
     *     used for a later invoice
     */
    public record Held(String quote, String visit, String customer, Money amount, boolean deposit) {}

    /** What was given up of an invoice. */
    public record GivenUp(Movement movement, String visit, String customer) {}

    /** All money of customers that no invoice has used, by number of the quote. */
    public List<Held> held() {
        var currency = workplace.library().shop().currency();
        return workplace.store().reading(records -> {
            var list = new ArrayList<Held>();
            for (var quote : Accounts.quotes(records)) {
                var spare = Accounts.of(records, quote, currency).spare();
                if (spare.isPositive()) {
                    var billed = records.invoices().ofQuote(quote).stream()
                            .anyMatch(invoice -> invoice.kind() != Invoice.Kind.CREDIT);
                    list.add(new Held(quote, visit(records, quote), customer(records, quote), spare, !billed));
                }
            }
            return list;
        });
    }

    /** All write-offs, the first one first. */
    public List<GivenUp> givenUp() {
        return workplace
                .store()
                .reading(records -> Accounts.movements(records).stream()
                        .filter(movement -> movement.kind() == Movement.Kind.WRITE_OFF)
                        .map(movement -> new GivenUp(
                                movement, visit(records, movement.quote()), customer(records, movement.quote())))
                        .toList());
    }

    /** Id of the visit of a quote; empty when the quote is not here. */
    public String visit(String quote) {
        return workplace.store().reading(records -> visit(records, quote));
    }

    private static String visit(Records records, String quote) {
        return records.quotes().latest(quote).map(found -> found.visit()).orElse("");
    }

    private static String customer(Records records, String quote) {
        return records.quotes()
                .latest(quote)
                .map(found -> found.customer().name())
                .orElse(quote);
    }

    /** Names of all customers with a quote, in order. */
    public List<String> customers() {
        return workplace
                .store()
                .reading(records -> records.quotes().rows().stream()
                        .map(QuoteRow::customer)
                        .distinct()
                        .sorted()
                        .toList());
    }

    /** Numbers of all invoices and credit notes, the last issued first. */
    public List<String> papers() {
        return workplace
                .store()
                .reading(records -> records.invoices().rows().stream()
                        .map(InvoiceRow::number)
                        .toList());
    }
}

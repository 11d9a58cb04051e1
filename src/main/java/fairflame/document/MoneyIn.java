package fairflame.document;

import fairflame.Refusal;
import fairflame.agreement.SignedRevision;
import fairflame.invoice.Payment;
import java.util.List;
import java.util.Optional;
import org.joda.money.Money;

/**
 * Money received for signed work: what a receipt is written from.
 *
 * @param invoice number of the invoice that was paid; empty for a deposit on the signed quote
 * @param payments all payments on the quote, in the order in which they were received
 * @param due what they count against: what is billed, or the agreed price for a deposit
 */
public record MoneyIn(SignedRevision signed, Optional<String> invoice, List<Payment> payments, Money due) {
    public MoneyIn {
        payments = List.copyOf(payments);
    }

    /** A payment by its id; an unknown one is refused. */
    Payment payment(String id) {
        return payments.get(at(id));
    }

    /** What is left to pay after a payment; below zero what the customer has coming back. */
    Money after(String id) {
        return payments.subList(0, at(id) + 1).stream().map(Payment::amount).reduce(due, Money::minus);
    }

    private int at(String id) {
        var ids = payments.stream().map(Payment::id).toList();
        int at = ids.indexOf(id);
        if (at < 0) {
            throw Refusal.unknown("payment", id, ids.isEmpty() ? "no payment yet" : String.join(", ", ids));
        }
        return at;
    }
}

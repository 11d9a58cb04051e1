package fairflame.invoice.account;

import fairflame.invoice.Invoice;
import fairflame.wording.Spoken;
import java.time.LocalDate;
import org.joda.money.Money;

/**
 * One line of a statement.
 *
 * @param document number of invoice, credit note or movement
 * @param what in words
 * @param charge what it adds to the debt; negative for what it takes off
 * @param paper true for an invoice or credit note
 */
public record StatementRow(
        LocalDate on, String document, @Spoken String what, Money charge, boolean paper) {
    static StatementRow of(Invoice paper) {
        var words = switch (paper.kind()) {
            case FULL -> "Invoice, " + paper.title();
            case PART -> "Invoice in part, " + paper.title();
            case CREDIT -> "Credit note for " + paper.corrects();
        };
        return new StatementRow(
                paper.issued(), paper.number(), words, paper.totals().total(), true);
    }

    static StatementRow of(Movement movement) {
        var words = switch (movement.kind()) {
            case PAYMENT -> (movement.deposit() ? "Deposit, " : "Payment, ") + movement.method();
            case REFUND -> "Refund, " + movement.method() + ": " + movement.reason();
            case WRITE_OFF -> "Written off: " + movement.reason();
        };
        return new StatementRow(
                movement.on(), movement.id(), words, movement.settles().negated(), false);
    }
}

package fairflame.invoice.account;

import fairflame.Refusal;
import java.time.LocalDate;
import java.util.Optional;
import org.joda.money.Money;

/**
 * Money that moved, or was given up, for a quote.
 *
 * @param amount above zero, whichever way it went
 * @param invoice the invoice it is for; without one the oldest open invoice of the quote comes first
 * @param method cash, card, cheque, transfer; empty for a write-off
 * @param deposit true when taken before the work
 * @param reason why; has to be given for a refund and a write-off
 */
public record Movement(
        String id,
        Kind kind,
        LocalDate on,
        String quote,
        Optional<String> invoice,
        Money amount,
        String method,
        boolean deposit,
        String reason) {
    public Movement {
        if (!amount.isPositive()) {
            throw Refusal.outOfRange("amount of " + kind.word() + " " + id, amount, "above zero");
        }
        if (kind != Kind.PAYMENT && reason.isBlank()) {
            throw Refusal.missing("reason of " + kind.word() + " " + id, "a reason in words");
        }
        if (kind != Kind.WRITE_OFF && method.isBlank()) {
            throw Refusal.missing("method of " + kind.word() + " " + id, "cash, card, cheque, transfer");
        }
    }

    /** What happened. */
    public enum Kind {
        /** The customer paid. */
        PAYMENT("payment"),
        /** The shop paid back. */
        REFUND("refund"),
        /** The shop gave up a claim. */
        WRITE_OFF("write-off");

        private final String word;

        Kind(String word) {
            this.word = word;
        }

        public String word() {
            return word;
        }
    }

    /** What it takes off the customer's debt; negative for a refund. */
    public Money settles() {
        return kind == Kind.REFUND ? amount.negated() : amount;
    }
}

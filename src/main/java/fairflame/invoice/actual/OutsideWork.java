package fairflame.invoice.actual;

import fairflame.Refusal;
import fairflame.quote.LineKind;
import java.util.Locale;
import org.joda.money.Money;

/**
 * Work that stands in no signed line.
 *
 * @param words what was done, as a change order would name it
 * @param worth before tax, zero or more; zero takes it back
 * @param borne true when the shop bears it and the customer is never asked for it
 */
public record OutsideWork(String words, LineKind kind, Money worth, boolean borne) {
    public OutsideWork {
        if (words.isBlank()) {
            throw Refusal.missing("work outside", "what was done, in words");
        }
        if (worth.isNegative()) {
            throw Refusal.outOfRange("worth of " + words, worth, "zero or more");
        }
    }

    /** Work is told apart by its words, capitals and blanks aside. */
    public boolean isCalled(String other) {
        return key(words).equals(key(other));
    }

    private static String key(String words) {
        return words.strip().replaceAll("\\s+", " ").toLowerCase(Locale.ROOT);
    }
}

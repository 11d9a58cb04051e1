package fairflame.invoice;

import fairflame.Refusal;
import java.time.LocalDate;

/**
 * Number and days of an invoice about to be issued.
 *
 * @param supplied day on which the work was done
 */
public record Issue(InvoiceNumber number, LocalDate issued, LocalDate supplied, LocalDate due) {
    public Issue {
        if (number.year() != issued.getYear()) {
            throw Refusal.notAllowed("number " + number, "issued on " + issued, "a number of that year");
        }
        if (supplied.isAfter(issued)) {
            throw Refusal.outOfRange("day of the work", supplied, "up to " + issued + ", the day of issue");
        }
        if (due.isBefore(issued)) {
            throw Refusal.outOfRange("day on which payment is due", due, "from " + issued + ", the day of issue");
        }
    }
}

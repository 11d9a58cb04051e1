package fairflame.invoice.report;

import fairflame.Refusal;
import java.math.BigDecimal;
import java.time.LocalDate;

/**
 * Hours that a task took, beside its standard time for the same counts. Own time only, without access.
 *
 * @param task id of the task
 * @param condition key of the time condition, such as {@code tight-space}; empty for none
 * @param standard hours by the standard, above zero
 * @param actual hours as worked, above zero, at most 100
 */
public record ActualHours(
        String quote, LocalDate on, String task, String condition, BigDecimal standard, BigDecimal actual) {
    private static final BigDecimal MOST = BigDecimal.valueOf(100);

    public ActualHours {
        for (var hours : new BigDecimal[] {standard, actual}) {
            if (hours.signum() <= 0 || hours.compareTo(MOST) > 0) {
                throw Refusal.outOfRange("hours of task " + task, hours.toPlainString(), "above 0 to 100");
            }
        }
    }
}

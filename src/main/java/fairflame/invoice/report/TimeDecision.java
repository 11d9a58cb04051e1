package fairflame.invoice.report;

import fairflame.Refusal;
import java.math.BigDecimal;
import java.time.LocalDate;

/**
 * A person's decision to change the standard times of a task.
 *
 * @param factor on the times in the shop's file, 0.25 to 4
 * @param who decided
 */
public record TimeDecision(String task, BigDecimal factor, LocalDate on, String who, String reason) {
    public TimeDecision {
        if (factor.compareTo(new BigDecimal("0.25")) < 0 || factor.compareTo(new BigDecimal("4")) > 0) {
            throw Refusal.outOfRange("factor on the times of " + task, factor.toPlainString(), "0.25 to 4");
        }
        if (reason.isBlank()) {
            throw Refusal.missing("reason of the new time of " + task, "a reason in words");
        }
    }
}

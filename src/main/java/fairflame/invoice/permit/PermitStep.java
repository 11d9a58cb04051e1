package fairflame.invoice.permit;

import fairflame.Refusal;
import java.time.LocalDate;
import java.util.Optional;

/**
 * One step of a permit.
 *
 * @param on day of the step
 * @param to state that it leads to
 * @param by who reported it
 * @param number of the permit; has to be given when issued
 * @param day of the inspection when booked, last day of the permit when issued, where known
 * @param words inspector, reason of a failure, who said that none is needed
 */
public record PermitStep(
        LocalDate on, PermitState to, String by, String number, Optional<LocalDate> day, String words) {
    public PermitStep {
        if (by.isBlank()) {
            throw Refusal.missing("who reports the step", "a name");
        }
        if (to == PermitState.NEEDED) {
            throw Refusal.notAllowed("step of a permit", to.word(), "a later state; every permit begins as needed");
        }
        if (to == PermitState.ISSUED && number.isBlank()) {
            throw Refusal.missing("number of the permit", "the number the office gave it");
        }
        if (to == PermitState.BOOKED && day.isEmpty()) {
            throw Refusal.missing("day of the inspection", "a day such as 2026-03-20");
        }
        if ((to == PermitState.FAILED || to == PermitState.NOT_NEEDED) && words.isBlank()) {
            throw Refusal.missing(
                    to == PermitState.FAILED ? "reason of the failure" : "who said that no permit is needed",
                    "a few words");
        }
    }
}

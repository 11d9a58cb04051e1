package fairflame.invoice.permit;

import fairflame.Refusal;
import fairflame.agreement.CancelRight;
import fairflame.agreement.SignedRevision;
import java.time.LocalDate;
import java.util.Optional;

/**
 * No repair is begun, nor billed as done, while the customer may still cancel, unless the customer's own dated waiver for
 * an emergency is on record (16 CFR 429.0(a)(3)). A deposit may be taken meanwhile, up to the cap of the place.
 */
public final class CancelGate {
    private CancelGate() {}

    /** The right to cancel while it still runs on a day and nothing lifts it. */
    public static Optional<CancelRight> closed(SignedRevision signed, LocalDate day, Optional<Waiver> waiver) {
        return CancelRight.of(signed).filter(right -> !day.isAfter(right.lastDay()) && waiver.isEmpty());
    }

    /**
     * Refuses work, or a bill for work, on such a day.
     *
     * @param what the day that is refused, such as "day of the work"
     */
    public static void refuse(String what, SignedRevision signed, LocalDate day, Optional<Waiver> waiver) {
        closed(signed, day, waiver).ifPresent(right -> {
            throw Refusal.notAllowed(
                    what,
                    day,
                    "after " + right.lastDay() + ", when the right to cancel ends, or with the customer's own dated"
                            + " waiver on record");
        });
    }

    /**
     * Refuses to bill work as done inside the right to cancel. A diagnosis already made leaves nothing to begin: its fee
     * may be billed.
     *
     * @param supplied day on which the work was done
     */
    public static void refuseBill(SignedRevision signed, LocalDate supplied, LocalDate today, Optional<Waiver> waiver) {
        if (!signed.taken().work().isEmpty()) {
            refuse("invoice for work of", signed, supplied.isBefore(today) ? supplied : today, waiver);
        }
    }
}

package fairflame.visit;

import fairflame.catalog.PermitNeed;
import fairflame.invoice.permit.PermitState;
import java.math.BigDecimal;
import java.time.LocalDate;

/** What has to happen next with a visit, in the order of an office's day. */
public enum NextStep {
    /** Something that a laptop handed over disagrees with what is here. */
    CONFLICT,
    /** An invoice is past its day. */
    OVERDUE,
    /** The permit is not issued yet. */
    PERMIT,
    /** The work is done, the inspection is not passed. */
    INSPECTION,
    /** The work is done and not billed. */
    INVOICE,
    /** A part is billed, the rest is not. */
    PART_BILLED,
    /** The permit is there, the work has no day. */
    PERMIT_ISSUED,
    /** Nothing stands in the way of a day for the work. */
    BOOK,
    /** The customer may still cancel; work waits. */
    CANCEL_RUNS,
    /** The work has a day that is still to come. */
    BOOKED,
    /** Money of the customer that no invoice uses. */
    REFUND,
    PAYMENT,
    /** The quote waits for a signature. */
    SIGN,
    /** The quote can no longer be signed at its price. */
    EXPIRED,
    STOPPED,
    /** Not finished at the heater. */
    FINISH,
    /** Closed. */
    NOTHING;

    /** The step of a signed job. */
    static NextStep of(JobFile job, LocalDate today) {
        if (job.account().oldestDue().filter(due -> due.isBefore(today)).isPresent()) {
            return OVERDUE;
        }
        return job.isBilled() ? money(job) : unbilled(job, today, !job.papers().isEmpty());
    }

    private static NextStep money(JobFile job) {
        if (job.account().balance().isPositive()) {
            return PAYMENT;
        }
        return job.account().spare().isPositive() ? REFUND : NOTHING;
    }

    private static NextStep unbilled(JobFile job, LocalDate today, boolean billed) {
        var state = job.permit().permit().state();
        var needed = job.permit().need() != PermitNeed.NO;
        if (needed && (state == PermitState.NEEDED || state == PermitState.APPLIED)) {
            return PERMIT;
        }
        if (job.heldBack(today)) {
            return CANCEL_RUNS;
        }
        var late = needed && !state.settled() && isDone(job, today);
        if (late || state == PermitState.BOOKED || state == PermitState.FAILED) {
            return INSPECTION;
        }
        if (billed) {
            return PART_BILLED;
        }
        if (isDone(job, today) || job.agreed().signed().taken().work().isEmpty()) {
            return INVOICE;
        }
        if (job.booking().isPresent()) {
            return BOOKED;
        }
        return needed && state == PermitState.ISSUED ? PERMIT_ISSUED : BOOK;
    }

    /** Its day has come, or somebody told of the work, or its permit is passed. */
    private static boolean isDone(JobFile job, LocalDate today) {
        return job.booking().filter(booking -> !booking.day().isAfter(today)).isPresent()
                || job.permit().gasWork().isPresent()
                || job.permit().permit().state() == PermitState.PASSED
                || job.actuals().work().rows().stream()
                        .anyMatch(row -> row.told() && row.actual().compareTo(BigDecimal.ZERO) > 0);
    }
}

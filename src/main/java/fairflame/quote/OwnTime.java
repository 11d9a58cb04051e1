package fairflame.quote;

import fairflame.Refusal;
import fairflame.catalog.Per;
import fairflame.catalog.StandardTime;
import fairflame.repair.ScopedTask;
import java.math.BigDecimal;
import java.util.ArrayList;

/**
 * The own hours of a counted task, without access.
 *
 * @param words the arithmetic, such as "0.30 h x 2 pieces = 0.60 h"
 */
record OwnTime(BigDecimal hours, String words) {
    /** From the task's standard times and its counts. */
    static OwnTime of(ScopedTask scoped) {
        var task = scoped.task();
        if (task.times().isEmpty()) {
            throw Refusal.missing("standard time of task " + task.id(), "at least one standard time");
        }
        var hours = BigDecimal.ZERO;
        var parts = new ArrayList<String>();
        for (var time : task.times()) {
            var count = count(scoped, time);
            hours = hours.add(time.hours().multiply(count));
            parts.add(
                    time.per() == Per.JOB
                            ? plain(time.hours()) + " h"
                            : plain(time.hours()) + " h x " + plain(count) + " " + unit(time.per(), count));
        }
        return new OwnTime(hours, String.join(" + ", parts) + " = " + plain(hours) + " h");
    }

    private static BigDecimal count(ScopedTask scoped, StandardTime time) {
        var count = time.per() == Per.JOB ? BigDecimal.ONE : scoped.counts().get(time.per());
        if (count == null) {
            throw Refusal.missing(
                    "count of " + unit(time.per(), BigDecimal.TEN) + " for task "
                            + scoped.task().id(),
                    "a number, zero or more");
        }
        if (count.signum() < 0) {
            throw Refusal.outOfRange(
                    "count of " + unit(time.per(), BigDecimal.TEN) + " for task "
                            + scoped.task().id(),
                    count.toPlainString(),
                    "zero or more");
        }
        return count;
    }

    private static String unit(Per per, BigDecimal count) {
        var one = count.compareTo(BigDecimal.ONE) == 0;
        return switch (per) {
            case JOB -> one ? "job" : "jobs";
            case PIECE -> one ? "piece" : "pieces";
            case FOOT -> one ? "foot" : "feet";
            case FITTING -> one ? "fitting" : "fittings";
        };
    }

    /** Hours and counts as printed: at least two decimals when there are any, no trailing zeros beyond. */
    static String plain(BigDecimal number) {
        var stripped = number.stripTrailingZeros();
        if (stripped.scale() <= 0) {
            return stripped.toPlainString();
        }
        return stripped.scale() < 2 ? stripped.setScale(2).toPlainString() : stripped.toPlainString();
    }
}

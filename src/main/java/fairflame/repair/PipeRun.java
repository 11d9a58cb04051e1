package fairflame.repair;

import fairflame.Refusal;
import fairflame.quantity.Length;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Map;

/**
 * A stretch of new gas pipe of one size.
 *
 * @param material word of the sizing, such as {@code steel-schedule-40}, {@code csst}, {@code polyethylene}
 * @param size trade size, such as {@code 1-1/4}; for CSST the EHD
 * @param fittings how many of each, by the words of the layout: {@code ell-90}, {@code tee-run}
 * @param buried whether it lies underground
 */
public record PipeRun(String material, String size, Length length, Map<String, Integer> fittings, boolean buried) {
    /** Fact of a line with pipe underground, and condition of a task that lays it. */
    static final String BURIED = "buried-runs";

    /** Fact of a line with pipe in the open, and condition of a task that lays it. */
    static final String OPEN = "open-runs";

    private static final String MATERIAL = "material:";

    public PipeRun {
        fittings = Map.copyOf(fittings);
        if (length.feet() <= 0) {
            throw Refusal.outOfRange("length of gas line", length.feet() + " ft", "more than 0 ft");
        }
        fittings.forEach((kind, count) -> {
            if (count < 0) {
                throw Refusal.outOfRange("number of " + kind + " in a gas line", count, "0 or more");
            }
        });
    }

    /** Feet as they are bought and timed: whole feet, a begun one counts. A millionth is the error of a conversion. */
    BigDecimal wholeFeet() {
        return BigDecimal.valueOf(length.feet())
                .setScale(6, RoundingMode.HALF_UP)
                .setScale(0, RoundingMode.CEILING);
    }

    BigDecimal fittingCount() {
        return BigDecimal.valueOf(
                fittings.values().stream().mapToLong(Integer::longValue).sum());
    }

    /** Whether a task with these conditions lays this run: those that speak of runs and materials must fit it. */
    boolean fits(Iterable<String> conditions) {
        for (var condition : conditions) {
            var not = condition.startsWith("not ");
            var plain = not ? condition.substring("not ".length()).strip() : condition;
            if (about(plain) && holds(plain) == not) {
                return false;
            }
        }
        return true;
    }

    private static boolean about(String condition) {
        return condition.equals(BURIED) || condition.equals(OPEN) || condition.startsWith(MATERIAL);
    }

    private boolean holds(String condition) {
        return condition.startsWith(MATERIAL)
                ? condition.equals(MATERIAL + material)
                : condition.equals(buried ? BURIED : OPEN);
    }
}

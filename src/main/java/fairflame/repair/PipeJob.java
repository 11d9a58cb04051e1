package fairflame.repair;

import fairflame.Refusal;
import fairflame.quantity.Length;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Map;

/**
 * A gas line that the sizing has worked out: without one no pipe is sold.
 *
 * @param id short and stable; becomes the id of the scope, such as {@code larger-line}
 * @param title heading of the choice, plain words
 * @param material word of the sizing, such as {@code steel-schedule-40}, {@code csst}, {@code polyethylene}
 * @param size trade size of the new line, such as {@code 1-1/4}
 * @param inletSize steel size of cock, trap and union at the heater
 * @param length of the new line
 * @param fittings how many of each, by the words of the layout: {@code ell-90}, {@code tee-run}
 * @param buried whether it lies underground
 * @param sizing what was computed, with figures and source
 * @param leaves what this line does not mend; empty when it mends all
 * @param also ids of further tasks that belong to it, such as the regulator of a 2 psi line
 */
public record PipeJob(
        String id,
        String title,
        String material,
        String size,
        String inletSize,
        Length length,
        Map<String, Integer> fittings,
        boolean buried,
        Sizing sizing,
        String leaves,
        List<String> also) {
    public PipeJob {
        fittings = Map.copyOf(fittings);
        also = List.copyOf(also);
        if (length.feet() <= 0) {
            throw Refusal.outOfRange("length of gas line " + id, length.feet() + " ft", "more than 0 ft");
        }
        fittings.forEach((kind, count) -> {
            if (count < 0) {
                throw Refusal.outOfRange("number of " + kind + " in gas line " + id, count, "0 or more");
            }
        });
        if (sizing.words().isBlank() || sizing.source().isBlank()) {
            throw Refusal.missing(
                    "sizing record of gas line " + id, "what was computed, and by which table or equation");
        }
    }

    /**
     * The sizing record.
     *
     * @param words load, length, drop and result in one sentence
     * @param source table with its number, or the equation
     */
    public record Sizing(String words, String source) {}

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
}

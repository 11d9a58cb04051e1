package fairflame.invoice.actual;

import fairflame.Refusal;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What somebody tells of the work at one time; what is left out stays as it was.
 *
 * @param quantities hours or pieces by line id
 * @param outside work in no signed line; one with no worth takes it back
 * @param borne ids of lines of which the shop bears whatever goes beyond the signed quantity
 * @param charged ids of lines of which it no longer does
 * @param tasks own hours by task, access left out, for the standard times
 * @param note has to be given when a figure told before is changed
 */
public record ActualEntry(
        Map<String, BigDecimal> quantities,
        List<OutsideWork> outside,
        Set<String> borne,
        Set<String> charged,
        Map<String, BigDecimal> tasks,
        String note) {
    private static final BigDecimal MOST = BigDecimal.valueOf(100_000);
    private static final BigDecimal MOST_HOURS = BigDecimal.valueOf(100);
    private static final int DECIMALS = 4;

    public ActualEntry {
        quantities = Map.copyOf(quantities);
        outside = List.copyOf(outside);
        borne = Set.copyOf(borne);
        charged = Set.copyOf(charged);
        tasks = Map.copyOf(tasks);
        quantities.forEach((id, quantity) -> {
            if (quantity.signum() < 0
                    || quantity.compareTo(MOST) > 0
                    || quantity.stripTrailingZeros().scale() > DECIMALS) {
                throw Refusal.outOfRange(
                        "quantity of line " + id,
                        quantity.toPlainString(),
                        "0 to " + MOST + " with up to " + DECIMALS + " decimals");
            }
        });
        tasks.forEach((id, hours) -> {
            if (hours.signum() <= 0 || hours.compareTo(MOST_HOURS) > 0) {
                throw Refusal.outOfRange("hours of task " + id, hours.toPlainString(), "above 0 to 100");
            }
        });
    }

    /** Hours and pieces alone. */
    public static ActualEntry of(Map<String, BigDecimal> quantities, String note) {
        return new ActualEntry(quantities, List.of(), Set.of(), Set.of(), Map.of(), note);
    }

    boolean isEmpty() {
        return quantities.isEmpty() && outside.isEmpty() && borne.isEmpty() && charged.isEmpty() && tasks.isEmpty();
    }
}

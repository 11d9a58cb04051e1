package fairflame.catalog;

import fairflame.money.Percent;
import java.util.List;
import org.joda.money.Money;

/**
 * Markup by cost. The last step whose {@code from} is not above the cost counts.
 *
 * @param steps by rising {@code from}; the first is from zero
 */
public record PriceLadder(List<Step> steps, String source) {
    public PriceLadder {
        steps = List.copyOf(steps);
    }

    /** From this cost on, this markup on cost. */
    public record Step(Money from, Percent markup) {}
}

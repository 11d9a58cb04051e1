package fairflame.repair;

import fairflame.Refusal;
import java.util.List;
import org.joda.money.Money;

/**
 * What it costs to leave an underfired heater as it is.
 *
 * @param perWarmUp extra cost of one warm-up
 * @param warmUps a month, 0 to 100
 * @param months of use, 0 to 120
 */
public record WaitingCost(Money perWarmUp, int warmUps, int months) {
    public WaitingCost {
        if (warmUps < 0 || warmUps > 100) {
            throw Refusal.outOfRange("warm-ups a month", warmUps, "0 to 100");
        }
        if (months < 0 || months > 120) {
            throw Refusal.outOfRange("months", months, "0 to 120");
        }
    }

    public Money total() {
        return perWarmUp.multipliedBy((long) warmUps * months);
    }

    /** The result and what was assumed, a sentence each. */
    public List<String> sentences() {
        return List.of(
                "Waiting " + months + " months costs about " + Printed.amount(total()) + " in gas.",
                "Assumed: " + warmUps + " warm-ups a month, each "
                        + Printed.amount(perWarmUp)
                        + " dearer than it should be. Wear, soot and cold evenings are not in this sum.");
    }
}

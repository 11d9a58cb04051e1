package fairflame.gas;

import fairflame.Refusal;

/**
 * Permission to count less than all appliances at once in pipe that serves several. Never assumed.
 *
 * @param share of the connected load, above 0 and up to 1
 * @param reason who found so and why, at least ten characters; printed with every size
 */
public record Diversity(double share, String reason) {
    private static final int SHORTEST = 10;

    public Diversity {
        if (!(share > 0 && share <= 1)) {
            throw Refusal.outOfRange("diversity", Figures.percent(share), "above 0 and up to 100 %");
        }
        if (reason.strip().length() < SHORTEST) {
            throw Refusal.missing("reason of the diversity", "who allows it and why, in at least ten characters");
        }
    }
}

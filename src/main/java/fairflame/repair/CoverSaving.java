package fairflame.repair;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;

/**
 * What a cover saves, as a share: heating costs of an outdoor pool of 1,000 square feet from April to October at three
 * set points, uncovered and covered, US DOE figures as quoted by a utility, S-DOE3. The prices behind them are old, so only
 * the ratio is told.
 */
public final class CoverSaving {
    private static final List<Season> SEASONS =
            List.of(new Season(2608, 317), new Season(3312, 483), new Season(4236, 703));

    private CoverSaving() {}

    private record Season(int uncovered, int covered) {
        BigDecimal saved() {
            return BigDecimal.valueOf(100L * (uncovered - covered))
                    .divide(BigDecimal.valueOf(uncovered), 0, RoundingMode.HALF_UP);
        }
    }

    /** Percent saved at each set point, the lowest first. */
    public static List<BigDecimal> percents() {
        return SEASONS.stream().map(Season::saved).toList();
    }

    /** For the customer. */
    public static String sentence() {
        var percents = percents();
        return "A cover left on when nobody swims saved " + percents.get(percents.size() - 1) + " to " + percents.get(0)
                + " percent of the heating cost in published figures for an outdoor pool.";
    }
}

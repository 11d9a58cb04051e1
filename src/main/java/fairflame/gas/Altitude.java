package fairflame.gas;

import fairflame.Refusal;
import fairflame.quantity.HeatRate;
import fairflame.quantity.Length;

/**
 * What height above the sea takes from an appliance's input.
 *
 * <p>4 % for each 1,000 ft above sea level once the site lies above 2,000 ft: NFPA 54-2015 Table E.1.1(d) as quoted in
 * the trade press, and an appliance manual. Another manual counts only the height above 2,000 ft. For pipe the larger
 * reading would be the cautious one, for the burner the smaller; the code's table is taken for both and the maker's
 * figure, where given, goes before it. See docs/gas-methods.md.
 */
public final class Altitude {
    private static final double FREE_UP_TO_FEET = 2_000;
    private static final double SHARE_PER_FOOT = 0.04 / 1_000;
    private static final double HIGHEST_FEET = 12_000;

    private Altitude() {}

    /** The share of the plate's input that is left, 0.52 to 1; sites above 12,000 ft are refused. */
    public static double share(Length altitude) {
        if (altitude.feet() > HIGHEST_FEET) {
            throw Refusal.outOfRange("altitude", Figures.feet(altitude), "0 to 12000 ft");
        }
        return altitude.feet() > FREE_UP_TO_FEET ? 1 - SHARE_PER_FOOT * altitude.feet() : 1;
    }

    /** The input at a site: the maker's figure, else the plate's less the code's share. */
    public static HeatRate input(Appliance appliance, Length altitude) {
        return appliance
                .inputAtSite()
                .orElseGet(() -> HeatRate.ofBtuPerHour(appliance.input().btuPerHour() * share(altitude)));
    }
}

package fairflame.gas;

import fairflame.quantity.GasFlow;
import java.util.Optional;

/**
 * The connected load held against what meter or tank regulator is rated for. An answer, not a refusal: the gas supplier
 * decides.
 *
 * @param load all appliances at full fire
 * @param words a sentence for the paper
 */
public record SupplyCheck(GasFlow load, Optional<GasFlow> rating, Answer answer, String words) {
    /** What the comparison says. */
    public enum Answer {
        ENOUGH,
        OVER_RATING,
        RATING_UNKNOWN
    }

    public static SupplyCheck of(Layout layout) {
        var load = layout.connectedLoad();
        var rating = layout.source().capacity();
        var name = layout.source().kind().words();
        var all = Figures.cfh(load.cubicFeetPerHour());
        if (rating.isEmpty()) {
            return new SupplyCheck(
                    load,
                    rating,
                    Answer.RATING_UNKNOWN,
                    "All appliances take " + all + "; the rating of the " + name
                            + " is not known: ask the gas supplier whether it carries that.");
        }
        var rated = Figures.cfh(rating.get().cubicFeetPerHour());
        var over = load.cubicFeetPerHour() > rating.get().cubicFeetPerHour() * (1 + 1e-9);
        return over
                ? new SupplyCheck(
                        load,
                        rating,
                        Answer.OVER_RATING,
                        "All appliances take " + all + ", more than the " + name + " is rated for (" + rated
                                + "): ask the gas supplier for a larger one before any pipe is bought.")
                : new SupplyCheck(
                        load,
                        rating,
                        Answer.ENOUGH,
                        "All appliances take " + all + "; the " + name + " is rated " + rated + ".");
    }
}

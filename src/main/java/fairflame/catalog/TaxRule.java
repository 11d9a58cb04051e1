package fairflame.catalog;

import fairflame.money.Percent;
import fairflame.money.Rounding;
import fairflame.wording.Spoken;
import java.util.List;
import java.util.Set;

/**
 * How a place taxes a repair.
 *
 * @param layers state, county, city, special; empty means the place charges none, which has to be said on purpose
 * @param taxableKinds words of the line kinds that are taxed, such as {@code part}, {@code consumable}
 * @param combined true when the layers are added to one rate before rounding, false when each layer is rounded
 * @param perItem true when tax is rounded on each line, false when on the whole document
 */
public record TaxRule(
        List<Layer> layers,
        Set<String> taxableKinds,
        boolean combined,
        boolean perItem,
        Rounding rounding,
        String source) {
    /** The kinds of line that a place can tax, in the words of the quote's lines. */
    public static final List<String> KINDS =
            List.of("part", "consumable", "labour", "trip", "diagnosis", "permit-fee", "subcontract", "disposal");

    /**
     * A rule for a place that the catalog does not hold: one rate on every kind of line, so that nothing is left
     * untaxed by guess.
     *
     * @param source who stated the rate
     */
    public static TaxRule onEverything(String name, Percent rate, String source) {
        return new TaxRule(List.of(new Layer(name, rate)), Set.copyOf(KINDS), true, false, Rounding.NEAREST, source);
    }

    public TaxRule {
        layers = List.copyOf(layers);
        taxableKinds = Set.copyOf(taxableKinds);
    }

    /** One tax authority's share. */
    public record Layer(@Spoken String name, Percent rate) {}
}

package fairflame.catalog;

import fairflame.money.Percent;
import fairflame.money.Rounding;
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
    public TaxRule {
        layers = List.copyOf(layers);
        taxableKinds = Set.copyOf(taxableKinds);
    }

    /** One tax authority's share. */
    public record Layer(String name, Percent rate) {}
}

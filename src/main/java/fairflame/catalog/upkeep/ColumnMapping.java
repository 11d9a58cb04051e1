package fairflame.catalog.upkeep;

import fairflame.Refusal;
import java.util.Collection;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * How one supplier lays out its price lists, kept so that it is told only once.
 *
 * @param supplier id of the supplier
 * @param columns heading of the column by field; number and cost have to be there
 */
public record ColumnMapping(String supplier, Map<PriceField, String> columns) {
    public ColumnMapping {
        columns = Map.copyOf(columns);
        for (var needed : List.of(PriceField.NUMBER, PriceField.COST)) {
            if (!columns.containsKey(needed)) {
                throw Refusal.missing(
                        "column for " + needed.word() + " in the mapping of " + supplier,
                        needed.word() + "=HEADING, the heading as it stands in the price list");
            }
        }
    }

    /** Reads pairs such as {@code cost=Dealer price}. */
    public static ColumnMapping parse(String supplier, Collection<String> pairs) {
        var columns = new EnumMap<PriceField, String>(PriceField.class);
        for (var pair : pairs) {
            var at = pair.indexOf('=');
            if (at < 1 || pair.substring(at + 1).isBlank()) {
                throw Refusal.malformed("column mapping", pair, "FIELD=HEADING, such as cost=Dealer price");
            }
            var field = PriceField.parse(pair.substring(0, at));
            if (columns.put(field, pair.substring(at + 1).strip()) != null) {
                throw Refusal.notAllowed("column mapping", pair, "each field once");
            }
        }
        return new ColumnMapping(supplier, columns);
    }
}

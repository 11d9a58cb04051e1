package fairflame.catalog;

import java.util.List;
import org.joda.money.CurrencyUnit;

/**
 * Everything a shop keeps in its catalog folder, checked as a whole.
 *
 * @param version name and date of this state of the catalog, kept with every quote
 */
public record Shop(
        String version,
        CurrencyUnit currency,
        List<Part> parts,
        List<Supplier> suppliers,
        List<AccessStep> access,
        List<Task> tasks,
        Rates rates,
        PriceLadder ladder,
        List<Jurisdiction> jurisdictions) {
    public Shop {
        parts = List.copyOf(parts);
        suppliers = List.copyOf(suppliers);
        access = List.copyOf(access);
        tasks = List.copyOf(tasks);
        jurisdictions = List.copyOf(jurisdictions);
    }
}

package fairflame.catalog;

import fairflame.Refusal;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.joda.money.CurrencyUnit;

/** Reads {@code parts.csv}. */
final class PartsFile {
    static final String NAME = "parts.csv";
    private static final List<String> REQUIRED =
            List.of("number", "role", "size", "description", "consumable", "unit", "cost", "supplier", "source");
    private static final List<String> OPTIONAL = List.of("list_price", "warranty_months", "preferred", "currency");

    private final CurrencyUnit currency;
    private final List<Supplier> suppliers;

    PartsFile(CurrencyUnit currency, List<Supplier> suppliers) {
        this.currency = currency;
        this.suppliers = suppliers;
    }

    static List<Part> read(
            Map<String, String> files, CurrencyUnit currency, List<Supplier> suppliers, Problems problems) {
        var reader = new PartsFile(currency, suppliers);
        return problems.attempt(() -> CsvTable.rows(FileText.in(files, NAME), REQUIRED, OPTIONAL))
                .map(rows -> {
                    problems.duplicateRows("part number", "number", rows);
                    return problems.each(rows, reader::part);
                })
                .orElse(List.of());
    }

    Part part(CsvRow row) {
        row.readIfFilled("currency", text -> same(Fields.currency(text)));
        return new Part(
                row.id("number"),
                row.id("role"),
                row.textOrEmpty("size"),
                row.text("description"),
                row.flag("consumable"),
                row.text("unit"),
                row.money("cost", currency),
                row.readIfFilled("list_price", text -> Fields.money(text, currency)),
                row.read("supplier", this::supplier),
                row.readIfFilled("warranty_months", text -> Fields.whole(text, 0, 600))
                        .orElse(0),
                row.readIfFilled("preferred", Fields::flag).orElse(false),
                row.text("source"));
    }

    private CurrencyUnit same(CurrencyUnit stated) {
        return Currencies.same(currency, stated);
    }

    private String supplier(String id) {
        if (suppliers.stream().noneMatch(supplier -> supplier.id().equals(id))) {
            throw Refusal.unknown(
                    "supplier",
                    id,
                    suppliers.stream().map(Supplier::id).collect(Collectors.joining(", ", "one of ", "")));
        }
        return id;
    }
}

package fairflame.catalog;

import java.util.List;
import java.util.Map;

/** Reads {@code suppliers.csv}. */
final class SuppliersFile {
    static final String NAME = "suppliers.csv";

    private SuppliersFile() {}

    static List<Supplier> read(Map<String, String> files, Problems problems) {
        return problems.attempt(() -> CsvTable.rows(
                        FileText.in(files, NAME), List.of("id", "name", "phone", "email", "lead_days"), List.of()))
                .map(rows -> {
                    problems.duplicateRows("supplier id", "id", rows);
                    return problems.each(rows, SuppliersFile::supplier);
                })
                .orElse(List.of());
    }

    private static Supplier supplier(CsvRow row) {
        return new Supplier(
                row.id("id"),
                row.text("name"),
                row.textOrEmpty("phone"),
                row.textOrEmpty("email"),
                row.whole("lead_days", 0, 365));
    }
}

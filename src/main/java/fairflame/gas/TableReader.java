package fairflame.gas;

import fairflame.Refusal;
import fairflame.gas.CapacityTable.Between;
import fairflame.gas.CapacityTable.Beyond;
import fairflame.gas.CapacityTable.Cell;
import fairflame.gas.CapacityTable.Reading;
import fairflame.gas.CapacityTable.Use;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Set;
import java.util.TreeMap;

/** Reads capacity tables and the rules by which they are read, and refuses rows that cannot stand together. */
final class TableReader {
    private static final String[] RULE = {
        "table",
        "edition",
        "gas",
        "inlet",
        "drop",
        "material",
        "use",
        "between",
        "beyond",
        "from",
        "except",
        "warning",
        "source"
    };
    private static final String[] ROW = {
        "table", "edition", "gas", "inlet", "drop", "material", "size", "length_ft", "source"
    };
    // Propane tables print thousands of Btu per hour; the code counts 2,500 Btu to the cubic foot of propane.
    private static final double PROPANE_KBTU = 2.5;

    private TableReader() {}

    /** The rules of {@code tables.csv}, still without rows. */
    static List<CapacityTable> rules(String name, String csv) {
        var tables = new ArrayList<CapacityTable>();
        for (var row : CsvRows.read(name, csv, RULE)) {
            row.text("source");
            var except = row.optional("except");
            tables.add(new CapacityTable(
                    row.text("table"),
                    row.text("edition"),
                    at(row, () -> Conditions.parse(row)),
                    new Reading(
                            word(row, "use", Use.class),
                            word(row, "between", Between.class),
                            word(row, "beyond", Beyond.class)),
                    row.optional("from"),
                    except.isEmpty() ? Set.of() : Set.of(except.split(" +")),
                    row.optional("warning"),
                    Map.of()));
        }
        return tables;
    }

    /** Whole tables from rows; each has the reading of an unstated rule. */
    static List<CapacityTable> tables(String name, String csv) {
        var byId = new LinkedHashMap<String, List<CsvRows.Row>>();
        for (var row : CsvRows.read(name, csv, ROW)) {
            byId.computeIfAbsent(row.text("table"), id -> new ArrayList<>()).add(row);
        }
        var tables = new ArrayList<CapacityTable>();
        byId.forEach((id, rows) -> tables.add(table(name, id, rows)));
        return tables;
    }

    private static CapacityTable table(String name, String id, List<CsvRows.Row> rows) {
        var first = rows.get(0);
        var conditions = at(first, () -> Conditions.parse(first));
        var columns = new LinkedHashMap<String, NavigableMap<Double, Cell>>();
        for (var row : rows) {
            sameTable(first, row, conditions);
            var size = at(row, () -> new Pipe(conditions.material(), row.text("size")))
                    .size();
            var column = columns.computeIfAbsent(size, key -> new TreeMap<>());
            var cell = new Cell(capacity(row, conditions.fuel()), row.text("source"));
            if (column.put(row.positive("length_ft"), cell) != null) {
                throw Refusal.notAllowed(
                                "row", id + " size " + size + " length " + row.text("length_ft"), "one row each")
                        .at(row.place());
            }
        }
        columns.forEach((size, column) -> falling(name + ", " + id + " size " + size, column));
        var edition = first.text("edition");
        return new CapacityTable(
                id, edition, conditions, Reading.unstated(conditions), "", Set.of(), "", Map.copyOf(columns));
    }

    private static void sameTable(CsvRows.Row first, CsvRows.Row row, Conditions conditions) {
        if (!row.text("edition").equals(first.text("edition"))) {
            throw Refusal.notAllowed("edition", row.text("edition"), "one edition in a table: " + first.text("edition"))
                    .at(row.place());
        }
        if (!at(row, () -> Conditions.parse(row)).equals(conditions)) {
            throw Refusal.notAllowed("gas, inlet, drop or material", row.text("table"), conditions.words())
                    .at(row.place());
        }
    }

    private static double capacity(CsvRows.Row row, Fuel fuel) {
        var kbtu = row.optional("capacity_kbtuh");
        if (kbtu.isEmpty()) {
            return row.positive("capacity_cfh");
        }
        if (fuel != Fuel.PROPANE || !row.optional("capacity_cfh").isEmpty()) {
            throw Refusal.notAllowed("capacity_kbtuh", kbtu, "propane rows only, and then no capacity_cfh")
                    .at(row.place());
        }
        return row.positive("capacity_kbtuh") / PROPANE_KBTU;
    }

    private static void falling(String place, NavigableMap<Double, Cell> column) {
        var before = Double.MAX_VALUE;
        for (var entry : column.entrySet()) {
            var now = entry.getValue().cubicFeetPerHour();
            if (now > before) {
                throw Refusal.outOfRange(
                                "capacity at " + Figures.plain(entry.getKey()) + " ft", now, "at most " + before)
                        .at(place);
            }
            before = now;
        }
    }

    private static <E extends Enum<E>> E word(CsvRows.Row row, String column, Class<E> kind) {
        var text = row.text(column);
        for (var value : kind.getEnumConstants()) {
            if (value.name().toLowerCase(Locale.ROOT).replace('_', '-').equals(text)) {
                return value;
            }
        }
        throw Refusal.unknown(column, text, "the words explained on top of the file")
                .at(row.place());
    }

    private static <T> T at(CsvRows.Row row, java.util.function.Supplier<T> reading) {
        try {
            return reading.get();
        } catch (Refusal refusal) {
            throw refusal.where().isEmpty() ? refusal.at(row.place()) : refusal;
        }
    }
}

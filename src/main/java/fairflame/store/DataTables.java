package fairflame.store;

import java.util.List;
import java.util.Optional;

/** The tables of a data export, in an order in which every row finds what it points to. */
final class DataTables {
    static final String FORMAT = "fairflame data";

    /** A table and the order of its rows. */
    record Table(String name, String order) {}

    private static final List<Table> TABLES = List.of(
            new Table("visit", "id"),
            new Table("draft", "visit"),
            new Table("quote", "year, series, sequence"),
            new Table("quote_revision", "number, revision"),
            // Seals of both tables follow each other by position.
            new Table("agreement", "position"),
            new Table("change_order", "position"),
            new Table("invoice", "position"),
            new Table("payment", "id"),
            new Table("completion", "position"),
            new Table("setting", "name"),
            new Table("register_entry", "position"),
            new Table("price_import", "id"),
            new Table("part_state", "import, number, after"),
            new Table("attachment", "visit, name"),
            new Table("packet_entry", "origin, kind, key"),
            new Table("packet_conflict", "position"),
            new Table("audit", "position"));

    private DataTables() {}

    static List<Table> all() {
        return TABLES;
    }

    static Optional<Table> named(String name) {
        return TABLES.stream().filter(table -> table.name().equals(name)).findFirst();
    }

    static boolean sealed(String table) {
        return table.equals("agreement") || table.equals("change_order");
    }
}

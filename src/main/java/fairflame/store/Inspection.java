package fairflame.store;

import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Reads a whole database and says what is wrong with it. */
final class Inspection {
    /** Tables with a body, and what names a row of theirs. */
    private static final Map<String, String> BODIES = Map.of(
            "quote_revision", "number || ' revision ' || revision",
            "agreement", "'signed ' || quote || ' revision ' || revision",
            "change_order", "number",
            "invoice", "number",
            "completion", "'completion ' || position",
            "register_entry", "kind || ' ' || key",
            "attachment", "visit || '/' || name");

    private static final List<String> GAPS = List.of(
            "select 'invoice numbers ' || series || '-' || year || ' have gaps' from invoice"
                    + " group by series, year having count(*) <> max(sequence)",
            "select 'the journal has gaps' where (select count(*) <> coalesce(max(position), 0) from audit)",
            "select 'the chain of seals has gaps'"
                    + " where (select count(*) <> coalesce(max(position), 0) from chain_link)",
            "select 'the registers have gaps'"
                    + " where (select count(*) <> coalesce(max(position), 0) from register_entry)");

    private final Connection connection;
    private final List<String> faults = new ArrayList<>();

    private Inspection(Connection connection) {
        this.connection = connection;
    }

    static List<String> faults(Connection connection) throws SQLException {
        var inspection = new Inspection(connection);
        inspection.structure();
        if (inspection.faults.isEmpty()) {
            inspection.content();
        }
        return List.copyOf(inspection.faults);
    }

    private void structure() throws SQLException {
        each("pragma integrity_check(10)", row -> {
            if (!"ok".equals(row.getString(1))) {
                faults.add("damaged: " + row.getString(1));
            }
        });
        each(
                "pragma foreign_key_check",
                row -> faults.add("a row of " + row.getString(1) + " points to nothing in " + row.getString(3)));
    }

    private void content() throws SQLException {
        for (var table : BODIES.entrySet()) {
            each("select " + table.getValue() + ", body, digest from " + table.getKey() + " order by 1", row -> {
                if (!Digest.of(row.getBytes(2)).equals(row.getString(3))) {
                    faults.add(row.getString(1) + ": the content is not what was stored");
                }
            });
        }
        for (var gap : GAPS) {
            each(gap, row -> faults.add(row.getString(1)));
        }
    }

    private void each(String sql, Row row) throws SQLException {
        try (var statement = connection.createStatement();
                var rows = statement.executeQuery(sql)) {
            while (rows.next()) {
                row.take(rows);
            }
        }
    }

    /** What is done with a row. */
    private interface Row {
        void take(ResultSet row) throws SQLException;
    }
}

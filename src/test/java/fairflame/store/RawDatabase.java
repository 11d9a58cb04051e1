package fairflame.store;

import java.nio.file.Path;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** Plain statements on a database file, past the store: what another program could do. */
final class RawDatabase {
    private RawDatabase() {}

    static void run(Path file, String... statements) {
        try (var connection = DriverManager.getConnection("jdbc:sqlite:" + file);
                var statement = connection.createStatement()) {
            for (var sql : statements) {
                statement.execute(sql);
            }
        } catch (SQLException e) {
            throw new IllegalStateException(e.getMessage(), e);
        }
    }

    /** The first column of all rows as text. */
    static List<String> column(Path file, String sql) {
        try (var connection = DriverManager.getConnection("jdbc:sqlite:" + file);
                var statement = connection.createStatement();
                var rows = statement.executeQuery(sql)) {
            var column = new ArrayList<String>();
            while (rows.next()) {
                column.add(rows.getString(1));
            }
            return column;
        } catch (SQLException e) {
            throw new IllegalStateException(e.getMessage(), e);
        }
    }

    static String one(Path file, String sql) {
        return column(file, sql).get(0);
    }

    /** Number of rows of each table, by name: the whole content in short. */
    static String counts(Path file) {
        var tables = column(
                file, "select name from sqlite_schema where type = 'table' and name not like 'flyway%' order by 1");
        return String.join(
                ", ",
                column(
                        file,
                        tables.stream()
                                .map(table -> "select '" + table + " ' || count(*) from " + table)
                                .collect(Collectors.joining(" union all "))));
    }
}

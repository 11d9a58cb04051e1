package fairflame.store;

import fairflame.Refusal;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.time.Duration;
import java.util.UUID;

/** Makes a database from a data export under a passing name, looks it over, then gives it its name. */
final class Importing {
    private static final Connector CONNECTOR = Connector.waiting(Duration.ofSeconds(5));

    private Importing() {}

    static long run(Path export, Path file) {
        var faults = new Faults(file);
        if (!Files.isRegularFile(export)) {
            throw Refusal.unusable("data export", export, "an existing file");
        }
        if (Files.exists(file)) {
            throw faults.refused("a file that does not exist yet; an export is only read into a new database");
        }
        var fresh = Opening.beside(file, "." + UUID.randomUUID() + ".new");
        try {
            Store.open(fresh).close();
            var rows = filled(export, fresh, faults);
            Files.move(fresh, file);
            return rows;
        } catch (IOException e) {
            throw faults.refused("a place that can be written to (" + e.getMessage() + ")");
        } finally {
            Opening.deleteAll(fresh);
        }
    }

    private static long filled(Path export, Path fresh, Faults faults) {
        try (var connection = CONNECTOR.connect(fresh)) {
            var rows = DataImport.read(export, connection);
            var found = Inspection.faults(connection);
            if (!found.isEmpty()) {
                throw Refusal.notAllowed("data export", found.get(0), "an export of a sound database")
                        .at(export.toString());
            }
            return rows;
        } catch (SQLException e) {
            throw faults.told(e);
        }
    }
}

package fairflame.store;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.List;
import java.util.UUID;
import org.flywaydb.core.api.FlywayException;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** Makes a database that is not there, and looks an existing one over before anything is trusted to it. */
final class Opening {
    private static final Logger LOG = LoggerFactory.getLogger(Opening.class);

    /** The database itself and the files that SQLite puts beside it. */
    static final List<String> ENDINGS = List.of("", "-journal", "-wal", "-shm");

    private final Path file;
    private final Connector connector;
    private final Migrations migrations;
    private final Faults faults;

    Opening(Path file, Connector connector, Migrations migrations) {
        this.file = file;
        this.connector = connector;
        this.migrations = migrations;
        this.faults = new Faults(file);
    }

    Connection open() {
        refuseImpossiblePath();
        try {
            if (!Files.exists(file)) {
                create();
            }
            if (Files.size(file) == 0) {
                throw faults.refused(
                        "a Fairflame database; this file is empty: delete it or put a backup in its place");
            }
            return connected();
        } catch (SQLException e) {
            throw faults.toldAtOpening(e);
        } catch (IOException e) {
            throw faults.refused("a place that can be written to (" + e.getMessage() + ")");
        } catch (FlywayException e) {
            throw faults.told(e);
        }
    }

    private void refuseImpossiblePath() {
        var parent = file.toAbsolutePath().getParent();
        if (Files.isDirectory(file) || parent == null) {
            throw faults.refused("a file, not a folder");
        }
        if (!Files.isDirectory(parent)) {
            throw faults.refused("a file in a folder that exists; make the folder first");
        }
        // The driver reads settings after a question mark.
        if (file.toString().contains("?")) {
            throw faults.refused("a file name without a question mark");
        }
        // SQLite would play the old log into the new database.
        var log = beside(file, "-wal");
        if (!Files.exists(file) && Files.exists(log)) {
            throw faults.refused("the database that belongs to " + log.getFileName()
                    + "; bring it back, or move that file away to start anew");
        }
    }

    /** Makes the new database under a passing name, so that nobody ever meets half of one. */
    private void create() throws IOException {
        var fresh = beside(file, "." + UUID.randomUUID() + ".new");
        try {
            migrations.run(fresh);
            publish(fresh);
        } finally {
            deleteAll(fresh);
        }
    }

    /** Gives it its name, unless another program was faster: then that one's database is used. */
    private void publish(Path fresh) throws IOException {
        try {
            Files.createLink(file, fresh);
        } catch (FileAlreadyExistsException e) {
            LOG.info("another program has just made {}", file);
        } catch (UnsupportedOperationException | IOException e) {
            LOG.debug("this disk has no hard links; moving instead", e);
            Files.move(fresh, file);
        }
    }

    private Connection connected() throws SQLException {
        var connection = connector.connect(file);
        try {
            if (version(connection) < Migrations.NEWEST) {
                renew(connection);
            }
            prepare(connection);
            return connection;
        } catch (SQLException | RuntimeException e) {
            connection.close();
            throw e;
        }
    }

    /** Refuses what is no database of this program, or of a later one, before anything is changed in it. */
    int version(Connection connection) throws SQLException {
        if (number(connection, "pragma application_id") != Migrations.APPLICATION) {
            throw faults.refused("a Fairflame database; this file belongs to another program");
        }
        var version = number(connection, "pragma user_version");
        if (version > Migrations.NEWEST) {
            throw faults.refused("a database up to version " + Migrations.NEWEST + "; this one has version " + version
                    + ": use the newer program that made it");
        }
        return version;
    }

    private void renew(Connection connection) throws SQLException {
        try {
            migrations.run(file);
        } catch (FlywayException e) {
            // Another program may have renewed it in the meantime; then all is well.
            if (number(connection, "pragma user_version") != Migrations.NEWEST) {
                throw e;
            }
        }
    }

    private void prepare(Connection connection) throws SQLException {
        try (var statement = connection.createStatement()) {
            statement.execute("pragma cell_size_check = on");
            statement.execute("pragma trusted_schema = off");
            // Tries to write, which a locked or read-only database does not allow. Beginning alone would not tell:
            // SQLite lets even an immediate transaction begin on a read-only file.
            statement.execute("begin immediate");
            statement.execute("pragma user_version = " + Migrations.NEWEST);
            statement.execute("rollback");
        }
        if (!"wal".equals(text(connection, "pragma journal_mode = wal"))) {
            throw faults.refused("a database on a local disk: this place does not allow a write-ahead log");
        }
        var check = text(connection, "pragma quick_check(1)");
        if (!"ok".equals(check)) {
            throw faults.damaged(check);
        }
    }

    private static int number(Connection connection, String sql) throws SQLException {
        return Integer.parseInt(text(connection, sql));
    }

    static String text(Connection connection, String sql) throws SQLException {
        try (var statement = connection.createStatement();
                var row = statement.executeQuery(sql)) {
            return row.getString(1);
        }
    }

    /** Removes a passing database; what cannot be removed now is only left over. */
    static void deleteAll(Path passing) {
        for (var ending : ENDINGS) {
            var path = beside(passing, ending);
            try {
                Files.deleteIfExists(path);
            } catch (IOException e) {
                LOG.warn("could not remove the passing file {}: {}", path, e.toString());
            }
        }
    }

    static Path beside(Path file, String ending) {
        return file.resolveSibling(file.getFileName() + ending);
    }
}

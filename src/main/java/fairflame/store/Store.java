package fairflame.store;

import fairflame.Refusal;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.locks.ReentrantLock;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.JdbiException;

/**
 * The shop's database: one SQLite file. Several threads may use one store, one after the other; several programs may
 * open the same file.
 *
 * <p>What a user can mend (a file in the way, locked, read-only, damaged, too new; a full disk) is a {@link Refusal}
 * that names the file. A {@link StoreException} is a bug.
 */
public final class Store implements AutoCloseable {
    private static final Duration WAIT = Duration.ofSeconds(5);
    private final Path file;
    private final Connection connection;
    private final Jdbi jdbi;
    private final Bodies bodies;
    private final Faults faults;
    private final ReentrantLock turn = new ReentrantLock(true);

    private Store(Path file, Connection connection, Bodies bodies) {
        this.file = file;
        this.connection = connection;
        this.jdbi = Jdbi.create(connection);
        this.bodies = bodies;
        this.faults = new Faults(file);
    }

    /** Opens a database, makes it when the file is not there and renews it when it is of an earlier version. */
    public static Store open(Path file) {
        return open(file, WAIT);
    }

    /** As {@link #open(Path)}, waiting this long for another program that is writing. */
    public static Store open(Path file, Duration wait) {
        return open(file, Bodies.canonical(), wait);
    }

    /** As {@link #open(Path)}, with another byte form. */
    public static Store open(Path file, Bodies bodies) {
        return open(file, bodies, WAIT);
    }

    /** As {@link #open(Path, Bodies)}, waiting this long for another program that is writing. */
    static Store open(Path file, Bodies bodies, Duration wait) {
        return open(file, bodies, Connector.waiting(wait), Migrations.shipped());
    }

    static Store open(Path file, Bodies bodies, Connector connector, Migrations migrations) {
        return new Store(file, new Opening(file, connector, migrations).open(), bodies);
    }

    /** The database file. */
    public Path file() {
        return file;
    }

    /**
     * Does all of the work or none of it: what the work throws undoes everything it stored. No other program writes
     * meanwhile.
     */
    public <T> T inTransaction(By by, Function<Records, T> work) {
        return transaction("begin immediate", Optional.of(by), work);
    }

    /** As {@link #inTransaction}, for work that gives nothing back. */
    public void change(By by, Consumer<Records> work) {
        transaction("begin immediate", Optional.of(by), records -> {
            work.accept(records);
            return by;
        });
    }

    /** Reads one and the same state of the database throughout; the work may change nothing. */
    public <T> T reading(Function<Records, T> work) {
        return transaction("begin deferred", Optional.empty(), work);
    }

    private <T> T transaction(String begin, Optional<By> by, Function<Records, T> work) {
        if (turn.isHeldByCurrentThread()) {
            throw new IllegalStateException("a transaction is running already");
        }
        turn.lock();
        try (var handle = jdbi.open()) {
            var journal = new Journal(handle, by);
            // Begin and commit are spelled out: the driver's own commit begins the next transaction at once, and would
            // report a failure of that one as if this one had not been stored.
            handle.execute(begin);
            return ended(handle, journal, () -> work.apply(new SqliteRecords(handle, journal, bodies)));
        } catch (JdbiException e) {
            throw faults.told(e);
        } finally {
            turn.unlock();
        }
    }

    private static <T> T ended(Handle handle, Journal journal, Supplier<T> work) {
        try {
            var result = work.get();
            handle.execute("commit");
            return result;
        } catch (RuntimeException | Error e) {
            undo(handle, e);
            throw e;
        } finally {
            journal.end();
        }
    }

    private static void undo(Handle handle, Throwable reason) {
        try {
            handle.execute("rollback");
        } catch (JdbiException e) {
            // SQLite has undone it by itself already, as it does when the disk is full.
            reason.addSuppressed(e);
        }
    }

    /**
     * Copies the database as it is now to a new file, beside running work, and looks the copy over.
     *
     * @param copy a file that does not exist
     */
    public void backup(Path copy) {
        alone(database -> Backup.take(database, copy));
    }

    /**
     * Writes everything that is stored as JSON lines; gives the number of rows.
     *
     * @param export a file that does not exist
     */
    public long export(Path export, Instant made) {
        return alone(database -> DataExport.write(database, export, made));
    }

    /**
     * Makes a new database from a data export, all of it or none; gives the number of rows.
     *
     * @param file where no database stands yet
     */
    public static long importAll(Path export, Path file) {
        return Importing.run(export, file);
    }

    /** Everything wrong with the database, in plain words; empty when it is sound. Reads all of it. */
    public List<String> faults() {
        return alone(Inspection::faults);
    }

    private <T> T alone(Look<T> look) {
        if (turn.isHeldByCurrentThread()) {
            throw new IllegalStateException("a transaction is running already");
        }
        turn.lock();
        try {
            return look.at(connection);
        } catch (SQLException e) {
            throw faults.told(e);
        } finally {
            turn.unlock();
        }
    }

    /** Gives the file free. */
    @Override
    public void close() {
        turn.lock();
        try {
            connection.close();
        } catch (SQLException e) {
            throw faults.told(e);
        } finally {
            turn.unlock();
        }
    }

    /** Something done with the database outside a transaction. */
    private interface Look<T> {
        T at(Connection database) throws SQLException;
    }
}

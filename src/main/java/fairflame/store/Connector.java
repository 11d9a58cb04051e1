package fairflame.store;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Duration;
import org.sqlite.SQLiteConfig;
import org.sqlite.SQLiteConfig.SynchronousMode;

/** How a connection to a database file is made; another one makes faults in tests. */
interface Connector {
    Connection connect(Path file) throws SQLException;

    /** As the program runs it, waiting this long for another program that is writing. */
    static Connector waiting(Duration wait) {
        return file -> {
            var config = new SQLiteConfig();
            config.enforceForeignKeys(true);
            config.enableRecursiveTriggers(true);
            config.setSynchronous(SynchronousMode.FULL);
            config.setBusyTimeout(Math.toIntExact(wait.toMillis()));
            return config.createConnection(url(file));
        };
    }

    /** Absolute, so that no file name is taken for one of the driver's own words such as {@code :memory:}. */
    static String url(Path file) {
        return "jdbc:sqlite:" + file.toAbsolutePath();
    }
}

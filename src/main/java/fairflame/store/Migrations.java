package fairflame.store;

import java.nio.file.Path;
import org.flywaydb.core.Flyway;

/** The numbered steps that make or renew the tables. Each database carries the number of the last one. */
class Migrations {
    /** "FFLM" in ASCII, SQLite's application_id. */
    static final int APPLICATION = 0x46464C4D;

    /** Number of the newest step under {@code db/migration}. */
    static final int NEWEST = 3;

    private final String location;

    Migrations(String location) {
        this.location = location;
    }

    static Migrations shipped() {
        return new Migrations("classpath:db/migration");
    }

    /** Runs what is missing, all of it or nothing. */
    void run(Path file) {
        Flyway.configure(Migrations.class.getClassLoader())
                .dataSource(Connector.url(file), "", "")
                .locations(location)
                .group(true)
                .cleanDisabled(true)
                .load()
                .migrate();
    }
}

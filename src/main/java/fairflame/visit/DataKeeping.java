package fairflame.visit;

import fairflame.store.Backup;
import fairflame.store.Store;
import java.nio.file.Path;

/** Backup, restore, and the whole content as data lines. */
public final class DataKeeping {
    private DataKeeping() {}

    /** Copies the database, beside running work, to a file that does not exist yet. */
    public static void backup(Workplace workplace, Path copy) {
        workplace.store().backup(copy);
    }

    /** Puts a backup in the place of a database that is gone. */
    public static void restore(Path copy, Path folder) {
        Backup.restore(copy, folder.resolve(Workplace.DATABASE));
    }

    /** Writes everything that is stored as JSON lines; gives the number of rows. */
    public static long export(Workplace workplace, Path file) {
        return workplace.store().export(file, workplace.now().toInstant());
    }

    /** Makes the database of a folder from an export; gives the number of rows. */
    public static long importAll(Path file, Path folder) {
        return Store.importAll(file, folder.resolve(Workplace.DATABASE));
    }
}

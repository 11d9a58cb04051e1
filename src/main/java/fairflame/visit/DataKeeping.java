package fairflame.visit;

import fairflame.Refusal;
import fairflame.store.Backup;
import fairflame.store.Store;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.CancellationException;
import java.util.function.LongSupplier;

/** Backup, restore, and the whole content as data lines. */
public final class DataKeeping {
    private DataKeeping() {}

    /** Copies the database, beside running work, to a file that does not exist yet. */
    public static void backup(Workplace workplace, Path copy) {
        backup(workplace, copy, Progress.UNWATCHED);
    }

    /** As {@link #backup(Workplace, Path)}; when it is stopped, no copy is left. */
    public static void backup(Workplace workplace, Path copy, Progress progress) {
        kept(copy, progress, () -> {
            workplace.store().backup(copy);
            return 1L;
        });
    }

    /** Puts a backup in the place of a database that is gone. */
    public static void restore(Path copy, Path folder) {
        restore(copy, folder, Progress.UNWATCHED);
    }

    /** As {@link #restore(Path, Path)}; when it is stopped, the folder is as it was. */
    public static void restore(Path copy, Path folder, Progress progress) {
        var database = folder.resolve(Workplace.DATABASE);
        kept(database, progress, () -> {
            Backup.restore(copy, database);
            return 1L;
        });
    }

    /** Writes everything that is stored as JSON lines; gives the number of rows. */
    public static long export(Workplace workplace, Path file) {
        return export(workplace, file, Progress.UNWATCHED);
    }

    /** As {@link #export(Workplace, Path)}; when it is stopped, no file is left. */
    public static long export(Workplace workplace, Path file, Progress progress) {
        return kept(
                file,
                progress,
                () -> workplace.store().export(file, workplace.now().toInstant()));
    }

    /** Makes the database of a folder from an export; gives the number of rows. */
    public static long importAll(Path file, Path folder) {
        return importAll(file, folder, Progress.UNWATCHED);
    }

    /** As {@link #importAll(Path, Path)}; when it is stopped, the folder is as it was. */
    public static long importAll(Path file, Path folder, Progress progress) {
        var database = folder.resolve(Workplace.DATABASE);
        return kept(database, progress, () -> Store.importAll(file, database));
    }

    /** The work refuses a file that is there already; so what is there after it is its own, and goes when it is stopped. */
    private static long kept(Path made, Progress progress, LongSupplier work) {
        progress.at(0, 1);
        var count = work.getAsLong();
        try {
            progress.at(1, 1);
        } catch (CancellationException stopped) {
            delete(made);
            throw stopped;
        }
        return count;
    }

    private static void delete(Path file) {
        try {
            Files.deleteIfExists(file);
        } catch (IOException e) {
            throw Refusal.unusable("file", file, "a file that can be taken away again (" + e.getMessage() + ")");
        }
    }
}

package fairflame.command;

import fairflame.visit.DataKeeping;
import fairflame.visit.Workplace;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Backup, restore, and everything as data lines. */
final class DataCommands {
    private DataCommands() {}

    @Command(
            name = "backup",
            mixinStandardHelpOptions = true,
            description = "Copy the database, beside running work, to a new file.")
    static final class Backup extends ShopCommand {
        @Parameters(paramLabel = "FILE", description = "a file that does not exist yet")
        private Path file;

        @Override
        void run(Workplace workplace) {
            DataKeeping.backup(workplace, file);
            print(
                    () -> Printing.object().put("file", file.toString()),
                    out -> out.println("Backup written and read through: " + file));
        }
    }

    @Command(
            name = "restore",
            mixinStandardHelpOptions = true,
            description = "Put a backup into a folder whose database is gone.")
    static final class Restore implements Callable<Integer> {
        @Parameters(paramLabel = "FILE", description = "backup file")
        private Path file;

        @Option(names = "--out", paramLabel = "DIR", required = true, description = "folder of the shop")
        private Path folder;

        @Mixin
        private Printing printing;

        @Override
        public Integer call() {
            DataKeeping.restore(file, folder);
            printing.print(
                    () -> Printing.object().put("folder", folder.toString()),
                    out -> out.println("Restored into " + folder));
            return 0;
        }
    }

    @Command(
            name = "export",
            mixinStandardHelpOptions = true,
            description = "Write everything that is stored as JSON lines, see docs/formats/export.md.")
    static final class Export extends ShopCommand {
        @Parameters(paramLabel = "FILE", description = "a file that does not exist yet")
        private Path file;

        @Override
        void run(Workplace workplace) {
            var rows = DataKeeping.export(workplace, file);
            print(
                    () -> Printing.object().put("file", file.toString()).put("rows", rows),
                    out -> out.println(rows + " rows. Written: " + file));
        }
    }

    @Command(
            name = "import",
            mixinStandardHelpOptions = true,
            description = "Make the database of a new folder from an export, all of it or nothing.")
    static final class Import implements Callable<Integer> {
        @Parameters(paramLabel = "FILE", description = "data export")
        private Path file;

        @Option(names = "--out", paramLabel = "DIR", required = true, description = "folder without a database")
        private Path folder;

        @Mixin
        private Printing printing;

        @Override
        public Integer call() {
            var rows = DataKeeping.importAll(file, folder);
            printing.print(
                    () -> Printing.object().put("folder", folder.toString()).put("rows", rows),
                    out -> out.println(rows + " rows taken into " + folder));
            return 0;
        }
    }
}

package fairflame.store;

import static fairflame.store.Samples.OFFICE;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fairflame.Refusal;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.DriverManager;
import java.sql.SQLException;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIf;

class BackupTest extends RecordsContract {
    private Path copy;

    @BeforeEach
    void fill() {
        copy = folder.resolve("backup.db");
        signed();
    }

    @Test
    void aBackupIsOneFileThatHoldsEverything() {
        var before = RawDatabase.counts(store.file());
        store.backup(copy);

        assertThat(RawDatabase.one(copy, "pragma journal_mode")).isEqualTo("delete");
        assertThat(RawDatabase.counts(copy)).isEqualTo(before);
        assertThat(folder).isDirectoryNotContaining("glob:**.new*");
        assertThat(folder).isDirectoryNotContaining("glob:**backup.db-*");
        assertThatCode(() -> Backup.check(copy)).doesNotThrowAnyException();
    }

    @Test
    void aBackupBesideAnotherProgramsUnfinishedWorkHoldsNoneOfIt() throws SQLException {
        try (var other = DriverManager.getConnection("jdbc:sqlite:" + store.file())) {
            other.createStatement().execute("begin immediate");
            other.createStatement().execute("insert into setting values ('half', 'x')");
            store.backup(copy);
            other.createStatement().execute("commit");
        }
        assertThat(RawDatabase.one(copy, "select count(*) from setting")).isEqualTo("0");
    }

    @Test
    void aBackupIsPutInThePlaceOfALostDatabaseAndWorksOn() {
        store.backup(copy);
        var restored = folder.resolve("restored.db");
        Backup.restore(copy, restored);
        try (var other = Store.open(restored)) {
            assertThat(RawDatabase.counts(restored)).isEqualTo(RawDatabase.counts(store.file()));
            other.change(OFFICE, records -> records.settings().put("shop", "own"));
            assertThat(other.faults()).isEmpty();
        }
    }

    @Test
    void aLiveDatabaseIsCopiedWithWhatStandsInItsLog() {
        var restored = folder.resolve("restored.db");
        assertThat(folder.resolve("shop.db-wal")).isNotEmptyFile();
        Backup.restore(store.file(), restored);
        assertThat(RawDatabase.counts(restored)).isEqualTo(RawDatabase.counts(store.file()));
    }

    @Test
    void nothingIsWrittenOver() throws IOException {
        Files.writeString(copy, "kept");
        assertThatThrownBy(() -> store.backup(copy))
                .isInstanceOf(Refusal.Unusable.class)
                .hasMessageContaining("backup.db is in the way");
        assertThat(copy).hasContent("kept");
        assertThatThrownBy(() -> store.backup(folder)).isInstanceOf(Refusal.Unusable.class);
        assertThatThrownBy(() -> store.backup(folder.resolve("none/backup.db")))
                .isInstanceOf(Refusal.Unusable.class)
                .hasMessageContaining("in a folder that exists");
    }

    @Test
    void anOldLogBesideTheNewPlaceIsInTheWay() throws IOException {
        store.backup(copy);
        Files.writeString(folder.resolve("new.db-wal"), "old");
        assertThatThrownBy(() -> Backup.restore(copy, folder.resolve("new.db")))
                .isInstanceOf(Refusal.Unusable.class)
                .hasMessageContaining("new.db-wal is in the way");
    }

    @Test
    void aBackupThatIsNoneIsRefused() throws IOException {
        refused(folder.resolve("gone.db"), "an existing backup file");
        refused(folder, "an existing backup file");
        Files.writeString(copy, "complaint,reading\n".repeat(100));
        refused(copy, "this file is no database");
    }

    @Test
    void aDamagedOrNewerBackupIsRefusedAndNothingIsRestored() throws IOException {
        store.backup(copy);
        RawDatabase.run(copy, "drop trigger quote_revision_stays", "update quote_revision set body = x'00'");
        refused(copy, "found: Q-2026-0001 revision 1: the content is not what was stored");
        var restored = folder.resolve("restored.db");
        assertThatThrownBy(() -> Backup.restore(copy, restored)).isInstanceOf(Refusal.Unusable.class);
        assertThat(restored).doesNotExist();
        RawDatabase.run(copy, "pragma user_version = 99");
        refused(copy, "has version 99");
    }

    @Test
    @EnabledIf("hasKernelFolder")
    void aPlaceWhereNothingMayBeWrittenIsRefused() {
        assertThatThrownBy(() -> store.backup(Path.of("/proc/backup.db")))
                .isInstanceOf(Refusal.Unusable.class)
                .hasMessageContaining("/proc/backup.db");
    }

    static boolean hasKernelFolder() {
        return Files.isDirectory(Path.of("/proc/self"));
    }

    private static void refused(Path copy, String reason) {
        assertThatThrownBy(() -> Backup.check(copy))
                .isInstanceOf(Refusal.Unusable.class)
                .hasMessageContaining(copy.toString())
                .hasMessageContaining(reason);
    }
}

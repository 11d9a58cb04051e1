package fairflame.store;

import static fairflame.store.Samples.OFFICE;
import static fairflame.store.Samples.VISIT;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fairflame.Refusal;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.time.Duration;
import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIf;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.sqlite.SQLiteConfig;

class OpeningTest {
    private static final Duration SHORT = Duration.ofMillis(60);

    @TempDir
    Path folder;

    Path file;

    @BeforeEach
    void name() {
        file = folder.resolve("shop.db");
    }

    @Test
    void aMissingDatabaseIsMadeWithoutLeavings() {
        open().close();
        assertThat(folder).isDirectoryContaining(path -> path.equals(file));
        assertThat(folder).isDirectoryNotContaining(path -> !path.equals(file));
    }

    @Test
    void theDatabaseIsSetForSafety() {
        try (var store = open()) {
            assertThat(store.file()).isEqualTo(file);
            assertThat(RawDatabase.one(file, "pragma journal_mode")).isEqualTo("wal");
            assertThat(RawDatabase.one(file, "pragma application_id")).isEqualTo("1179012173");
            assertThat(RawDatabase.one(file, "pragma user_version")).isEqualTo("" + Migrations.NEWEST);
        }
    }

    @Test
    void theStoresOwnConnectionIsSetForSafety() throws SQLException {
        open().close();
        try (var connection = new Opening(file, Connector.waiting(SHORT), Migrations.shipped()).open()) {
            for (var expected : new String[] {
                "foreign_keys 1",
                "synchronous 2",
                "busy_timeout 60",
                "recursive_triggers 1",
                "trusted_schema 0",
                "cell_size_check 1"
            }) {
                try (var row = connection.createStatement().executeQuery("pragma " + expected.split(" ")[0])) {
                    assertThat(expected.split(" ")[0] + " " + row.getString(1)).isEqualTo(expected);
                }
            }
        }
    }

    @Test
    void refusesAFolder() {
        refused(folder, "a file, not a folder");
    }

    @Test
    void refusesAFileInAFolderThatIsMissingOrAFile() throws IOException {
        refused(folder.resolve("none/shop.db"), "make the folder first");
        Files.writeString(folder.resolve("taken"), "x");
        refused(folder.resolve("taken/shop.db"), "make the folder first");
        assertThat(folder.resolve("none")).doesNotExist();
    }

    @Test
    void refusesANameThatTheDriverWouldReadAsASetting() {
        refused(folder.resolve("shop.db?mode=memory"), "without a question mark");
    }

    @ParameterizedTest
    @ValueSource(strings = {":memory:", "file:shop.db", "sh op's %20 ü.db", ":resource:x"})
    void takesEveryOtherNameAsItIs(String name) {
        var odd = folder.resolve(name);
        Store.open(odd).close();
        assertThat(odd).isRegularFile();
    }

    @Test
    void refusesAnEmptyFile() throws IOException {
        unchanged(new byte[0], "this file is empty");
    }

    @Test
    void refusesATextFile() throws IOException {
        unchanged("complaint,reading\n".repeat(1000).getBytes(), "this file is no database");
    }

    @Test
    void refusesATextFileShorterThanAHeader() throws IOException {
        unchanged("x".getBytes(), "a Fairflame database");
    }

    @Test
    void refusesRandomBytes() throws IOException {
        var random = new Random(20260302);
        for (int size : new int[] {1, 99, 100, 512, 4096, 100_000}) {
            var bytes = new byte[size];
            random.nextBytes(bytes);
            unchanged(bytes, "a Fairflame database");
        }
    }

    @Test
    void refusesTheDatabaseOfAnotherProgramAndLeavesItAlone() throws IOException {
        RawDatabase.run(file, "create table song (title text)");
        unchanged(Files.readAllBytes(file), "this file belongs to another program");
    }

    @Test
    void refusesANewerDatabaseAndLeavesItAlone() throws IOException {
        open().close();
        RawDatabase.run(file, "pragma user_version = 99");
        unchanged(Files.readAllBytes(file), "has version 99: use the newer program");
    }

    @Test
    void refusesADatabaseCutOffAnywhere() throws IOException {
        filled();
        var whole = Files.readAllBytes(file);
        for (int size = 1; size < whole.length; size += 3001) {
            unchanged(Arrays.copyOf(whole, size), "database");
        }
    }

    /** Damage is found, or harmless; never anything but a refusal. */
    @Test
    void damagedBytesAreRefusedOrHarmless() throws IOException {
        filled();
        var whole = Files.readAllBytes(file);
        int refused = 0;
        for (int seed = 0; seed < 150; seed++) {
            var random = new Random(seed);
            var bytes = whole.clone();
            int from = random.nextInt(bytes.length);
            for (int i = from; i < Math.min(bytes.length, from + 1 + random.nextInt(600)); i++) {
                bytes[i] = (byte) random.nextInt();
            }
            Files.write(file, bytes);
            try (var store = open()) {
                store.faults();
            } catch (Refusal.Unusable refusal) {
                refused++;
            } catch (RuntimeException e) {
                throw new AssertionError("seed " + seed + ", bytes from " + from, e);
            }
            Opening.deleteAll(file);
        }
        assertThat(refused).as("damage found at opening").isGreaterThan(3);
    }

    @Test
    void refusesALogWhoseDatabaseIsGone() throws IOException {
        Files.writeString(folder.resolve("shop.db-wal"), "left over");
        refused(file, "shop.db-wal; bring it back, or move that file away");
        assertThat(file).doesNotExist();
        assertThat(folder.resolve("shop.db-wal")).hasContent("left over");
    }

    @Test
    void aLogLeftByAKilledProgramIsTakenIn() throws IOException {
        var copy = Files.createDirectory(folder.resolve("copy"));
        try (var store = open()) {
            store.change(OFFICE, records -> records.visits().save(VISIT));
            // What the disk holds when the program is gone without closing: the row stands in the log alone.
            Files.copy(file, copy.resolve("shop.db"));
            Files.copy(folder.resolve("shop.db-wal"), copy.resolve("shop.db-wal"));
        }
        try (var store = Store.open(copy.resolve("shop.db"))) {
            assertThat(store.<Object>reading(records -> records.visits().find(VISIT.id())))
                    .isEqualTo(java.util.Optional.of(VISIT));
        }
    }

    @Test
    void aLogOfRandomBytesIsPassedOver() throws IOException {
        filled();
        var bytes = new byte[50_000];
        new Random(7).nextBytes(bytes);
        Files.write(folder.resolve("shop.db-wal"), bytes);
        try (var store = open()) {
            assertThat(store.faults()).isEmpty();
        }
    }

    @Test
    void refusesADatabaseLockedByAnotherProgramWithinTheWaitingTime() throws SQLException {
        open().close();
        try (var other = DriverManager.getConnection("jdbc:sqlite:" + file)) {
            other.createStatement().execute("begin exclusive");
            var start = System.nanoTime();
            refused(file, "not in use by another program");
            assertThat(Duration.ofNanos(System.nanoTime() - start)).isLessThan(Duration.ofSeconds(3));
            other.createStatement().execute("rollback");
        }
        open().close();
    }

    @Test
    void refusesToWriteWhileAnotherProgramDoesAndStoresNothing() throws SQLException {
        try (var store = open();
                var other = DriverManager.getConnection("jdbc:sqlite:" + file)) {
            other.createStatement().execute("begin immediate");
            assertThatThrownBy(() ->
                            store.change(OFFICE, records -> records.visits().save(VISIT)))
                    .isInstanceOf(Refusal.Unusable.class)
                    .hasMessageContaining("shop.db")
                    .hasMessageContaining("not in use by another program");
            assertThat(store.<Object>reading(records -> records.visits().all()).toString())
                    .isEqualTo("[]");
            other.createStatement().execute("rollback");
            store.change(OFFICE, records -> records.visits().save(VISIT));
        }
    }

    /** A connection without the right to write stands for a read-only disk, which binds root too. */
    @Test
    void refusesAReadOnlyDatabase() {
        open().close();
        assertThatThrownBy(() -> Store.open(file, Bodies.canonical(), OpeningTest::readOnly, Migrations.shipped()))
                .isInstanceOf(Refusal.Unusable.class)
                .hasMessageContaining("a database that this user may write to");
    }

    private static java.sql.Connection readOnly(Path file) throws SQLException {
        var config = new SQLiteConfig();
        config.setReadOnly(true);
        return config.createConnection(Connector.url(file));
    }

    @Test
    @EnabledIf("permissionsBind")
    void refusesAFileAndAFolderWithoutTheRightToWrite() {
        open().close();
        assertThat(file.toFile().setWritable(false)).isTrue();
        refused(file, "a database that this user may write to");
        assertThat(folder.toFile().setWritable(false)).isTrue();
        refused(folder.resolve("new.db"), "new.db");
        assertThat(folder.toFile().setWritable(true)).isTrue();
    }

    /** False for root. */
    static boolean permissionsBind() throws IOException {
        var probe = Files.createTempFile("probe", "");
        var bind = probe.toFile().setWritable(false) && !Files.isWritable(probe);
        Files.delete(probe);
        return bind;
    }

    /** A kernel folder in which nobody may make files, not even root. */
    @Test
    @EnabledIf("hasKernelFolder")
    void refusesAFolderInWhichNothingMayBeMade() {
        refused(Path.of("/proc/shop.db"), "/proc/shop.db");
    }

    static boolean hasKernelFolder() {
        return Files.isDirectory(Path.of("/proc/self"));
    }

    @Test
    void aFullDiskStoresNothingAndLeavesTheDatabaseInUse() {
        open().close();
        Connector small = path -> {
            var config = new SQLiteConfig();
            config.setMaxPageCount(80);
            return config.createConnection(Connector.url(path));
        };
        try (var store = Store.open(file, Bodies.canonical(), small, Migrations.shipped())) {
            var large = new StoredVisit("V-2", "open", "x", VISIT.on(), "x".repeat(2_000_000));
            assertThatThrownBy(() -> store.change(OFFICE, records -> {
                        records.visits().save(VISIT);
                        records.visits().save(large);
                    }))
                    .isInstanceOf(Refusal.Unusable.class)
                    .hasMessageContaining("a database on a disk with room left; nothing of this step was stored");
            assertThat(store.<Object>reading(records -> records.visits().all()).toString())
                    .isEqualTo("[]");
            store.change(OFFICE, records -> records.visits().save(VISIT));
            assertThat(store.faults()).isEmpty();
        }
    }

    private Store open() {
        return Store.open(file, SHORT);
    }

    private void filled() {
        try (var store = open()) {
            for (int i = 0; i < 20; i++) {
                var visit = new StoredVisit("V-" + i, "open", "x", VISIT.on(), "{}".repeat(500));
                store.change(OFFICE, records -> records.visits().save(visit));
            }
            store.change(OFFICE, records -> {
                records.visits().save(VISIT);
                records.quotes().issue("Q", 2026, number -> Samples.quote(number, 1));
            });
        }
    }

    private void unchanged(byte[] content, String reason) throws IOException {
        Files.write(file, content);
        refused(file, reason);
        assertThat(Files.readAllBytes(file)).isEqualTo(content);
        Opening.deleteAll(file);
    }

    private static void refused(Path file, String reason) {
        assertThatThrownBy(() -> Store.open(file, SHORT).close())
                .isInstanceOf(Refusal.Unusable.class)
                .hasMessageContaining("database '" + file)
                .hasMessageContaining(reason)
                .hasMessageNotContaining("\n")
                .hasNoCause();
    }
}

package fairflame.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Optional;
import java.util.stream.IntStream;
import org.flywaydb.core.Flyway;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class MigrationsTest {
    @TempDir
    Path folder;

    @Test
    void theStepsAreNumberedWithoutGapAndTheNewestIsKnown() {
        var numbers = Folder.shipped("db/migration").keySet().stream()
                .map(name -> Integer.parseInt(name.substring(1, name.indexOf("__"))))
                .toList();
        assertThat(numbers)
                .containsExactlyInAnyOrderElementsOf(
                        IntStream.rangeClosed(1, Migrations.NEWEST).boxed().toList());
    }

    static IntStream earlierVersions() {
        return IntStream.range(1, Migrations.NEWEST);
    }

    /** Each version is filled with plain SQL as it was then, not by today's program. */
    @ParameterizedTest
    @MethodSource("earlierVersions")
    void aDatabaseOfEveryEarlierVersionIsRenewedWithWhatItHolds(int version) throws IOException {
        var file = atVersion(version);
        try (var store = Store.open(file)) {
            assertThat(RawDatabase.one(file, "pragma user_version")).isEqualTo("" + Migrations.NEWEST);
            assertThat(store.faults()).isEmpty();
            store.reading(records -> {
                assertThat(records.visits().find("V-2025-0007"))
                        .map(StoredVisit::state)
                        .contains("signed");
                assertThat(records.quotes().rows()).map(QuoteRow::number).containsExactly("Q-2025-0007");
                assertThat(records.chain().links()).map(Chain.Link::subject).containsExactly("Q-2025-0007 revision 1");
                assertThat(records.settings().find("shop")).contains("own");
                assertThat(records.audit().all()).hasSize(1);
                return "read";
            });
            store.change(Samples.OFFICE, records -> {
                records.visits().save(Samples.VISIT);
                var quote = records.quotes().issue("Q", 2026, number -> Samples.quote(number, 1));
                var signed = Samples.signed(quote, records.chain().last());
                records.agreements().add(signed);
                records.invoices().issue("I", 2026, number -> Samples.invoice(number, signed));
            });
            assertThat(store.faults()).isEmpty();
        }
    }

    private Path atVersion(int version) throws IOException {
        var file = folder.resolve("shop.db");
        Flyway.configure()
                .dataSource("jdbc:sqlite:" + file, "", "")
                .locations("classpath:db/migration")
                .target("" + version)
                .load()
                .migrate();
        try (var in = MigrationsTest.class.getResourceAsStream("version" + version + ".sql")) {
            RawDatabase.run(
                    file, new String(in.readAllBytes(), java.nio.charset.StandardCharsets.UTF_8).split(";\\s*\n"));
        }
        return file;
    }

    @Test
    void aStepThatFailsHalfwayLeavesTheOldDatabase() throws IOException {
        var file = atVersion(1);
        var steps = Files.createDirectory(folder.resolve("steps"));
        Folder.shipped("db/migration").forEach((name, sql) -> {
            try {
                Files.writeString(
                        steps.resolve(name), name.startsWith("V2") ? sql + "\ninsert into nowhere values (1);" : sql);
            } catch (IOException e) {
                throw new AssertionError(e);
            }
        });
        var before = RawDatabase.counts(file);
        assertThatThrownBy(() -> Store.open(
                        file,
                        Bodies.canonical(),
                        Connector.waiting(Duration.ofMillis(60)),
                        new Migrations("filesystem:" + steps)))
                .isInstanceOf(StoreException.class)
                .hasMessageContaining("nowhere");
        assertThat(RawDatabase.counts(file)).isEqualTo(before);
        assertThat(RawDatabase.one(file, "pragma user_version")).isEqualTo("1");
        Store.open(file).close();
    }

    @Test
    void aDatabaseThatCannotBeMadeWholeIsNotMadeAtAll() throws IOException {
        var file = folder.resolve("shop.db");
        var steps = Files.createDirectory(folder.resolve("steps"));
        Files.writeString(
                steps.resolve("V1__broken.sql"), "create table song (title text);\ninsert into nowhere values (1);");
        assertThatThrownBy(() -> Store.open(
                        file,
                        Bodies.canonical(),
                        Connector.waiting(Duration.ofMillis(60)),
                        new Migrations("filesystem:" + steps)))
                .isInstanceOf(StoreException.class);
        assertThat(folder).isDirectoryNotContaining(path -> !path.equals(steps));
    }

    @Test
    void aDatabaseRenewedByAnotherProgramInTheMeantimeIsUsed() throws IOException {
        var file = atVersion(1);
        // These steps find the tables there already, as a slower program would.
        var late = new Migrations("classpath:db/migration") {
            @Override
            void run(Path path) {
                super.run(path);
                throw new org.flywaydb.core.api.FlywayException("table invoice already exists");
            }
        };
        try (var store = Store.open(file, Bodies.canonical(), Connector.waiting(Duration.ofMillis(60)), late)) {
            assertThat(store.<Object>reading(records -> records.settings().find("shop")))
                    .isEqualTo(Optional.of("own"));
        }
    }
}

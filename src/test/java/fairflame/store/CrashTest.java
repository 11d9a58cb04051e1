package fairflame.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Programs of their own: one that is killed while it stores, and two that store at the same time. */
class CrashTest {
    @TempDir
    Path folder;

    @Test
    void aKilledProgramLosesNothingItToldAndLeavesNothingHalf() throws IOException, InterruptedException {
        var file = folder.resolve("shop.db");
        var told = new ArrayList<String>();
        for (int jobs : new int[] {1, 17, 60}) {
            var program = WritingProgram.start(file, "kill" + jobs, 1_000_000);
            program.awaitJobs(jobs);
            told.addAll(program.kill());
            try (var store = Store.open(file)) {
                assertThat(store.faults()).isEmpty();
                List<String> invoices = store.reading(records -> records.invoices().rows().stream()
                        .map(InvoiceRow::number)
                        .toList());
                assertThat(invoices).as("told before the kill").containsAll(told);
                for (var table : new String[] {"quote", "quote_revision", "agreement", "payment"}) {
                    assertThat(RawDatabase.one(file, "select count(*) from " + table))
                            .as(table + " as many as invoices")
                            .isEqualTo(RawDatabase.one(file, "select count(*) from invoice"));
                }
                assertThat(RawDatabase.one(file, "select count(*) from setting"))
                        .isEqualTo(RawDatabase.one(file, "select count(*) from invoice"));
            }
        }
        assertThat(told).hasSizeGreaterThanOrEqualTo(78);
    }

    @Test
    void twoProgramsThatStoreAtOnceShareOneRowOfNumbers() throws IOException, InterruptedException {
        var file = folder.resolve("shop.db");
        var first = WritingProgram.start(file, "first", 60);
        var second = WritingProgram.start(file, "second", 60);
        var told = Stream.of(first.end(), second.end())
                .flatMap(numbers -> numbers.stream())
                .sorted()
                .toList();
        assertThat(told)
                .isEqualTo(IntStream.rangeClosed(1, 120)
                        .mapToObj(n -> new SerialNumber("I", 2026, n).toString())
                        .toList());
        try (var store = Store.open(file)) {
            assertThat(store.faults()).isEmpty();
        }
        assertThat(folder).isDirectoryNotContaining("glob:**.new*");
    }
}

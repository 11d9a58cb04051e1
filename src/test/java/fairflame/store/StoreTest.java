package fairflame.store;

import static fairflame.store.Samples.OFFICE;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;

class StoreTest extends RecordsContract {
    @Test
    void whatIsStoredIsThereAfterReopeningAndNoLogIsLeftBeside() {
        var signed = signed();
        store.close();
        assertThat(folder).isDirectoryNotContaining(path -> !path.endsWith("shop.db"));

        open();
        assertThat(store.file()).isEqualTo(folder.resolve("shop.db"));
        assertThat(seen().agreements().all()).containsExactly(signed);
        assertThat(store.faults()).isEmpty();
    }

    @Test
    void whatFailsStoresNothing() {
        assertThatThrownBy(() -> change(records -> {
                    records.visits().save(Samples.VISIT);
                    throw new AssertionError("stop");
                }))
                .isInstanceOf(AssertionError.class);
        assertThat(seen().visits().all()).isEmpty();
        assertThat(seen().audit().all()).isEmpty();
    }

    @Test
    void aTransactionInsideAnotherIsABug() {
        assertThatThrownBy(() -> change(records -> seen().visits().all())).isInstanceOf(IllegalStateException.class);
        assertThatThrownBy(() -> change(records -> store.faults())).isInstanceOf(IllegalStateException.class);
        change(records -> records.visits().save(Samples.VISIT));
    }

    @Test
    void recordsKeptBeyondTheirTransactionAreOfNoUse() {
        var kept = new Records[1];
        change(records -> kept[0] = records);
        assertThatThrownBy(() -> kept[0].visits().save(Samples.VISIT)).isInstanceOf(IllegalStateException.class);
        assertThat(seen().visits().all()).isEmpty();
    }

    @Test
    void aClosedStoreIsOfNoUse() {
        store.close();
        assertThatThrownBy(() -> seen().visits().all()).isInstanceOf(StoreException.class);
        store.close();
    }

    @Test
    void threadsTakeTurns() throws InterruptedException {
        change(records -> records.visits().save(Samples.VISIT));
        var threads = Executors.newFixedThreadPool(4);
        for (int i = 0; i < 40; i++) {
            threads.execute(() ->
                    change(records -> records.quotes().issue("Q", 2026, number -> Samples.quote(number, 1))));
        }
        threads.shutdown();
        assertThat(threads.awaitTermination(30, TimeUnit.SECONDS)).isTrue();
        assertThat(seen().quotes().rows())
                .extracting(QuoteRow::number)
                .hasSize(40)
                .startsWith("Q-2026-0040")
                .endsWith("Q-2026-0001");
    }

    @Test
    void readingSeesOneStateWhileAnotherProgramWrites() {
        try (var other = Store.open(store.file())) {
            store.reading(records -> {
                assertThat(records.visits().all()).isEmpty();
                other.change(OFFICE, writing -> writing.visits().save(Samples.VISIT));
                assertThat(records.visits().all()).isEmpty();
                return "seen";
            });
            assertThat(seen().visits().all()).containsExactly(Samples.VISIT);
        }
    }
}

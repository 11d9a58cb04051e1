package fairflame.store;

import static fairflame.store.Samples.OFFICE;
import static fairflame.store.Samples.VISIT;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fairflame.Refusal;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.function.LongConsumer;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Breaks the n-th statement of a whole job for n = 1, 2, ... and looks for all or nothing. */
class FaultTest {
    private static final int ENOUGH = 1000;
    private final BrokenDisk disk = new BrokenDisk();

    @TempDir
    Path folder;

    Path file;
    Store store;

    @BeforeEach
    void open() {
        file = folder.resolve("shop.db");
        store = opened();
        store.change(OFFICE, records -> records.visits().save(VISIT));
    }

    @AfterEach
    void close() {
        store.close();
    }

    /** All that one day's work stores: eight kinds of thing in one transaction. */
    private static void job(Records records) {
        records.visits().saveDraft("V-2", "typed");
        records.visits().save(new StoredVisit(VISIT.id(), "signed", "Odile Marsh", VISIT.on(), "{}"));
        var quote = records.quotes().issue("Q", 2026, number -> Samples.quote(number, 1));
        var signed = Samples.signed(quote, records.chain().last());
        records.agreements().add(signed);
        var chain = records.chain().last();
        records.changeOrders().add(Samples.changeOrder(quote.number(), 1, chain, chain));
        records.completionRecords().put(quote.number(), 1, Samples.completion("P-1188"));
        var invoice = records.invoices().issue("I", 2026, number -> Samples.invoice(number, signed));
        records.payments().add(Samples.receipt("P-1", quote.number(), Optional.of(invoice.number()), "103.71"));
        records.settings().put("last invoice", invoice.number());
    }

    @Test
    void aStatementThatFailsStoresNothing() {
        everyStatement(disk::failAt, () -> {});
    }

    @Test
    void aDiskThatStaysBrokenStoresNothing() {
        everyStatement(disk::failFrom, this::reopen);
    }

    private void everyStatement(LongConsumer breaking, Runnable afterwards) {
        var before = content();
        int n = 1;
        for (; n < ENOUGH; n++) {
            breaking.accept(n);
            try {
                store.change(OFFICE, FaultTest::job);
                break;
            } catch (Refusal.Unusable refusal) {
                assertThat(refusal).hasMessageContaining("shop.db").hasMessageContaining("a disk without faults");
            }
            disk.heal();
            if (!content().equals(before)) {
                throw new AssertionError("half stored after statement " + n + ": " + content());
            }
            afterwards.run();
        }
        assertThat(n).as("statements of the job").isBetween(20, ENOUGH - 1);
        assertThat(content()).contains("agreement 1", "invoice 1", "payment 1", "audit 9", "draft 1");
        disk.heal();
        assertThat(store.faults()).isEmpty();
    }

    /** After a disk that stayed broken the program has to begin anew; what it finds then counts. */
    private void reopen() {
        store.close();
        store = opened();
    }

    private Store opened() {
        var connector = Connector.waiting(Duration.ofMillis(60));
        return Store.open(file, Bodies.canonical(), path -> disk.wrap(connector.connect(path)), Migrations.shipped());
    }

    @Test
    void aCommitThatIsReportedAsFailedIsStoredWhole() {
        int statements = statementsOfTheJob();
        disk.failAfter(statements);
        assertThatThrownBy(() -> store.change(OFFICE, FaultTest::job)).isInstanceOf(Refusal.Unusable.class);
        disk.heal();
        assertThat(content()).contains("agreement 1", "invoice 1", "payment 1");
        assertThat(store.faults()).isEmpty();
    }

    private int statementsOfTheJob() {
        for (int n = 1; n < ENOUGH; n++) {
            disk.failAt(n);
            try {
                store.change(OFFICE, records -> {
                    job(records);
                    throw new IllegalStateException("counted");
                });
            } catch (IllegalStateException e) {
                disk.heal();
                // The failed statement was the rollback's: the commit would have been in its place.
                reopen();
                return n;
            } catch (Refusal.Unusable refusal) {
                disk.heal();
            }
        }
        throw new AssertionError("no end of statements");
    }

    private List<String> content() {
        return List.of(RawDatabase.counts(file).split(", "));
    }
}

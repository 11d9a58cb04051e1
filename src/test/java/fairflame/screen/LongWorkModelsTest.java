package fairflame.screen;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fairflame.Refusal;
import fairflame.quote.Quote;
import fairflame.screen.bench.BenchModel;
import fairflame.screen.file.BillModel;
import fairflame.screen.file.FileModel;
import fairflame.screen.file.Form;
import fairflame.screen.handover.HandoverModel;
import fairflame.screen.kit.AtOnce;
import fairflame.screen.kit.Later;
import fairflame.screen.kit.LongWork;
import fairflame.screen.ledger.LedgerModel;
import fairflame.screen.line.LineModel;
import fairflame.visit.Progress;
import fairflame.visit.Workplace;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What makes papers, over the real use cases and without a toolkit: done, refused, asked for twice, ended by hand. */
class LongWorkModelsTest {
    private static final String VISIT = "V-2026-0603";
    private static final List<List<Integer>> STROKE = List.of(List.of(10, 20, 300, 40, 500, 60));

    @TempDir
    Path folder;

    private Workplace workplace;
    private WorkplaceScreens work;
    private final List<String> told = new ArrayList<>();

    @BeforeEach
    void open() {
        workplace = Shop.in(folder);
        work = new WorkplaceScreens(workplace, true);
    }

    @AfterEach
    void close() {
        workplace.close();
    }

    private Quote offered() {
        return work.offer(Shop.demo(3), Progress.UNWATCHED);
    }

    private HandoverModel page(LongWork runner) {
        var page = new HandoverModel(
                work, new HandoverModel.Offered(offered(), Optional.empty()), "Ines Calloway", runner);
        page.choice().set(page.quote().choices().get(0).id());
        page.promises().forEach(promise -> page.accepted().add(promise.id()));
        page.name().set("Odalys Brennecke");
        page.drawn().set(true);
        return page;
    }

    private BillModel bill(LongWork runner) {
        var job = work.file(VISIT).job().orElseThrow();
        return new BillModel(new FileModel(work.papers(), job, runner, told::add), 0);
    }

    private List<String> papers(String part) {
        try (var files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString())
                    .filter(name -> name.contains(part))
                    .sorted()
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Test
    void aQuoteThatIsEndedAnywhereBeforeItIsKeptLeavesNothing() {
        var ended = 0;
        while (ended < 20 && !isOffered(ended)) {
            assertThat(work.file(VISIT).quote()).as("ended at " + ended).isEmpty();
            assertThat(papers("Q-")).as("ended at " + ended).isEmpty();
            ended++;
        }
        assertThat(ended)
                .as("looks up before each of three papers and before it is kept")
                .isGreaterThanOrEqualTo(4);
        assertThat(work.file(VISIT).quote()).isPresent();
        assertThat(papers("Q-")).containsExactly("Q-2026-0001.json", "Q-2026-0001.pdf", "Q-2026-0001.xlsx");
    }

    private boolean isOffered(int ended) {
        var looks = new int[1];
        try {
            work.offer(Shop.demo(3), (done, all) -> {
                if (looks[0]++ == ended) {
                    throw new CancellationException();
                }
            });
            return true;
        } catch (CancellationException stopped) {
            return false;
        }
    }

    @Test
    void aSignatureThatIsEndedAnywhereBeforeItIsSealedLeavesNothing() {
        for (int look = 0; look < 5; look++) {
            var page = page(AtOnce.endedAt(look));
            page.sign(STROKE);
            assertThat(page.signed().get()).as("ended at " + look).isEmpty();
            assertThat(page.refusal().get()).isEqualTo("ended by hand");
            assertThat(work.file(VISIT).signed()).as("ended at " + look).isEmpty();
            assertThat(papers("-signed")).isEmpty();
        }
        var page = page(new AtOnce());
        page.sign(STROKE);
        assertThat(page.refusal().get()).isEmpty();
        assertThat(work.file(VISIT).signed()).isEqualTo(page.signed().get()).isPresent();
        assertThat(papers("-signed")).hasSize(3);
        assertThat(work.verify(page.quote().number())).isEmpty();
    }

    @Test
    void aSignatureIsNotGivenTwiceAndARefusedOneSaysWhy() {
        var later = new Later();
        var page = page(later);
        page.sign(STROKE);
        page.sign(STROKE);
        assertThat(later.waiting()).isEqualTo(1);
        var other = page(new AtOnce());
        other.sign(STROKE);
        later.go();
        assertThat(page.signed().get()).isEmpty();
        assertThat(page.refusal().get()).contains("signed");
    }

    @Test
    void aPaperThatCannotBeWrittenLeavesNoQuoteWithoutPaper() throws IOException {
        // A folder in the place of the paper: it cannot be laid there.
        Files.createDirectory(folder.resolve("Q-2026-0001.pdf"));
        assertThatThrownBy(this::offered).isInstanceOf(Refusal.class).hasMessageContaining("Q-2026-0001.pdf");
        assertThat(work.file(VISIT).quote()).isEmpty();
        assertThat(papers("Q-2026")).containsExactly("Q-2026-0001.pdf");
    }

    @Test
    void anInvoiceIsRefusedBesideItsFieldEndedWithoutATraceAndMadeOnce() {
        page(new AtOnce()).sign(STROKE);
        var refused = bill(new AtOnce());
        refused.whole().with("bill-day", "some day");
        refused.invoice();
        assertThat(refused.whole().problem("bill-day").get().isNone()).isFalse();
        for (int look = 0; look < 4; look++) {
            var ended = bill(AtOnce.endedAt(look));
            ended.invoice();
            assertThat(ended.whole().problem(Form.WHOLE).get().allowed()).isEqualTo("ended by hand");
        }
        assertThat(work.file(VISIT).bills()).isEmpty();
        assertThat(papers("I-2026")).isEmpty();
        assertThat(told).isEmpty();
        var later = new Later();
        var bill = bill(later);
        var stale = bill(new AtOnce());
        bill.invoice();
        bill.invoice();
        later.go();
        assertThat(told).containsExactly("file.said.invoiced");
        stale.invoice();
        assertThat(stale.whole().problem(Form.WHOLE).get().allowed()).contains("billed");
        assertThat(work.file(VISIT).bills()).hasSize(1);
        assertThat(papers("I-2026")).contains("I-2026-0001.json", "I-2026-0001.pdf", "I-2026-0001.xlsx");
    }

    @Test
    void theLedgerTellsTheSealBesideTheKeyThatAsked() {
        page(new AtOnce()).sign(STROKE);
        var later = new Later();
        var ledger = new LedgerModel(work, later);
        ledger.visit().set(VISIT);
        ledger.verify();
        ledger.verify();
        assertThat(ledger.said().get()).isEmpty();
        later.go();
        assertThat(ledger.said().get()).isNotEmpty();
        assertThat(ledger.refusal().get()).isEmpty();
    }

    @Test
    void waysOfAGasLineAreLookedForOnceAndTheSearchCanBeEnded() {
        var bench = new BenchModel(work, Shop.demo(2));
        var ended = new LineModel(bench, work.line(), AtOnce.endedAt(5));
        ended.plan();
        assertThat(ended.ways().get()).isEmpty();
        assertThat(ended.refusal().get()).isEqualTo("ended by hand");
        var later = new Later();
        var line = new LineModel(bench, work.line(), later);
        line.plan();
        line.plan();
        assertThat(later.waiting()).isEqualTo(1);
        later.go();
        assertThat(line.ways().get()).isNotEmpty();
    }
}

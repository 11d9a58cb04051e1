package fairflame.screen;

import static org.assertj.core.api.Assertions.assertThat;

import fairflame.diagnosis.Finding;
import fairflame.screen.bench.BenchModel;
import fairflame.screen.bench.Draft;
import fairflame.screen.bench.Judged;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The bench over the real use cases, without a toolkit. */
class BenchModelTest {
    @TempDir
    Path folder;

    @Test
    void thePriceMovesAsAReadingMoves() {
        try (var workplace = Shop.in(folder)) {
            var model = new BenchModel(new WorkplaceScreens(workplace, true), Shop.demo(1));
            assertThat(total(model, "both")).contains("USD 389.86");
            model.typed("price.discountPercent").set("10");
            model.typed("price.discountReason").set("returning customer");
            assertThat(total(model, "both")).isPresent().isNotEqualTo(Optional.of("USD 389.86"));
            model.history().undo();
            model.history().undo();
            assertThat(total(model, "both")).contains("USD 389.86");
        }
    }

    @Test
    void anImpossibleReadingIsRefusedBesideItsFieldAndTheOthersStillCount() {
        try (var workplace = Shop.in(folder)) {
            var model = new BenchModel(new WorkplaceScreens(workplace, true), Shop.demo(1));
            var number = model.lastReading("gas-static").orElseThrow();
            model.typed("reading." + number + ".value").set("900");
            assertThat(model.refused().get("reading." + number + ".value")).contains("0 to 60 in w.c.");
            assertThat(model.judged().get()).isPresent();
            model.typed("reading." + number + ".value").set("10.0");
            assertThat(model.refused()).isEmpty();
        }
    }

    @Test
    void eachOfSeveralReadingsOfACheckHasItsOwnVerdict() {
        try (var workplace = Shop.in(folder)) {
            var model = new BenchModel(new WorkplaceScreens(workplace, true), Shop.demo(1));
            var taken = model.readings("leak-outlet");
            assertThat(taken).hasSize(2);
            for (var number : taken) {
                var typed = model.draft().get("reading." + number + ".value");
                assertThat(model.verdict(number).orElseThrow().reading().value().toString())
                        .startsWith(typed);
            }
            model.remove(model.work().knowledge().check("leak-outlet"), taken.get(1));
            assertThat(model.readings("leak-outlet")).containsExactly(taken.get(0));
            model.history().undo();
            assertThat(model.readings("leak-outlet")).isEqualTo(taken);
        }
    }

    @Test
    void aGateAnsweredYesTakesThePaperAway() {
        try (var workplace = Shop.in(folder)) {
            var model = new BenchModel(new WorkplaceScreens(workplace, true), Shop.demo(1));
            model.history().change(draft -> draft.with("gate.G1", "yes"));
            var judged = model.judged().get().orElseThrow();
            assertThat(judged.danger()).isTrue();
            assertThat(judged.quote()).isEmpty();
        }
    }

    @Test
    void onlyALicensedReleaseOpensStoppedWorkAgain() {
        try (var workplace = Shop.in(folder)) {
            var model = new BenchModel(new WorkplaceScreens(workplace, true), Shop.demo(4));
            model.history().change(draft -> draft.with("gate.G1", "no"));
            assertThat(model.judged().get().orElseThrow().finding()).isInstanceOf(Finding.StopWork.class);
            model.history()
                    .change(draft -> draft.with("release.1.gate", "G1")
                            .with("release.1.name", "Hollis Brandt")
                            .with("release.1.licence", "GF-10442")
                            .with("release.1.cause", "union leaked, remade and tested"));
            assertThat(model.judged().get().orElseThrow().danger()).isFalse();
        }
    }

    @Test
    void whatWasTypedIsThereAfterTheProgramIsGone() {
        try (var workplace = Shop.in(folder)) {
            var work = new WorkplaceScreens(workplace, true);
            var model = new BenchModel(work, work.newVisit());
            model.typed("customer.name").set("Odal");
        }
        try (var workplace = Shop.in(folder)) {
            var work = new WorkplaceScreens(workplace, true);
            var kept = work.entries("odal");
            assertThat(kept).hasSize(1);
            assertThat(work.draft(kept.get(0).visit()).map(draft -> draft.get("customer.name")))
                    .contains("Odal");
        }
    }

    @Test
    void aBypassLeadCountsUntilItsRemovalIsRecorded() {
        try (var workplace = Shop.in(folder)) {
            var model = new BenchModel(
                    new WorkplaceScreens(workplace, true), Draft.empty().with("id", "V-1"));
            model.history().change(draft -> draft.with("lead.1.device", "high-limit-switch"));
            assertThat(model.leadsPlaced()).isEqualTo(1);
            model.history().change(draft -> draft.with("lead.1.removed", "yes"));
            assertThat(model.leadsPlaced()).isZero();
        }
    }

    private static Optional<String> total(BenchModel model, String choice) {
        return model.judged()
                .get()
                .flatMap(Judged::quote)
                .map(quote -> quote.choice(choice).totals().total().toString());
    }
}

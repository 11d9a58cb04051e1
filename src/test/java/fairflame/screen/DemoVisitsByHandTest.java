package fairflame.screen;

import static org.assertj.core.api.Assertions.assertThat;

import fairflame.diagnosis.Finding;
import fairflame.quote.Quote;
import fairflame.screen.bench.BenchModel;
import fairflame.screen.bench.Drafting;
import fairflame.screen.bench.Judged;
import fairflame.screen.look.Theme;
import fairflame.visit.NextStep;
import java.nio.file.Path;
import java.util.List;
import javafx.scene.input.KeyCode;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/**
 * The demo visits 2 to 4 with mouse and keyboard from an empty visit on: 2 and 3 to the paid invoice, 4 to the licensed
 * release; visit 1 is in WholeVisitTest.
 */
@ExtendWith(ScreenMachine.class)
class DemoVisitsByHandTest {
    @TempDir
    Path folder;

    /**
     * The line to the pad is too small: drawn by hand, priced ways, fitter and decision typed, signed with a drawn
     * stroke, permit got; billed and paid twelve days later.
     */
    @Test
    void aGasLineIsDrawnPricedSignedBilledAndPaid() {
        String visit;
        Money signed;
        try (var workplace = Shop.in(folder);
                var hand = new Hand(new WorkplaceScreens(workplace, true), 1280, 800, Theme.BRIGHT, "en")) {
            var person = new VisitByHand(hand, Shop.demo(2));
            visit = person.begin();
            person.who();
            person.complaint();
            person.plate();
            person.gates();
            person.readings();
            person.terms();
            hand.look("visit-2-decide");
            line(hand);
            hand.press("place-bench").press("finding-strip").look("visit-2-finding");
            assertThat(told(quote(hand))).isEqualTo(told(ofFile(hand, 2)));
            signed = person.sign("visit-2");
            assertThat(hand.has("line-story")).as("signed").isFalse();
            person.unlock();
            assertThat(folder).isDirectoryContaining(file -> file.toString().endsWith("-signed.pdf"));
            permit(new BillByHand(hand, visit));
        }
        try (var workplace = Shop.later(folder, 12);
                var hand = new Hand(new WorkplaceScreens(workplace, true), 1280, 800, Theme.BRIGHT, "en")) {
            var office = new BillByHand(hand, visit);
            office.open();
            assertThat(office.group()).isEqualTo(NextStep.PERMIT_ISSUED);
            office.heldBack();
            office.inspectionPassed("2026-06-15", "A. Moss");
            office.gasWork("Rosalind Achterberg", "GF-40217", "2027-03-31");
            assertThat(office.group()).isEqualTo(NextStep.INVOICE);
            office.invoice(signed, List.of("A", "P", "C", "K", "G"));
            office.payInFull("transfer", "visit-2");
        }
    }

    /** The permit is applied for and issued on the day of the signature; the right to cancel still holds the work. */
    private static void permit(BillByHand office) {
        office.open();
        assertThat(office.group()).isEqualTo(NextStep.PERMIT);
        office.permitIssued("LK-26-0457", "2026-12-01");
        assertThat(office.group()).isEqualTo(NextStep.CANCEL_RUNS);
    }

    private static void line(Hand hand) {
        hand.key(KeyCode.F3).press("line-start");
        hand.press("line-source")
                .type("piece-pressure", "10")
                .type("piece-firing", "9.8")
                .type("piece-capacity", "630")
                .type("piece-drop.low", "1")
                .type("piece-gas.heatingValue", "1030");
        hand.press("run-run-1").press("piece-split").press("run-run-1").press("piece-branch");
        run(hand, "run-1", "outdoors", "12", "2");
        hand.press("size-1-1_4");
        run(hand, "run-2", "outdoors", "50", "8").type("piece-fittings.cock", "1");
        run(hand, "run-3", "indoors", "20", "2").type("piece-fittings.cock", "1");
        hand.press("appliance-appliance-1")
                .type("piece-input", "40000")
                .type("piece-minimum", "5")
                .type("piece-maximum", "14");
        hand.press("line-plan").press("way-1").look("visit-2-line-after").press("way-now");
    }

    private static Hand run(Hand hand, String id, String place, String feet, String elbows) {
        return hand.press("run-" + id)
                .press("lies-" + place)
                .type("piece-length", feet)
                .type("piece-fittings.ell-90", elbows);
    }

    /** Two stories at once: the next check is shown, the diagnosis alone is signed, billed and paid. */
    @Test
    void anUnsettledVisitEndsInASignedAndPaidDiagnosis() {
        try (var workplace = Shop.in(folder);
                var hand = new Hand(new WorkplaceScreens(workplace, true), 1280, 800, Theme.DIM, "en")) {
            var person = new VisitByHand(hand, Shop.demo(3));
            var visit = person.begin();
            person.who();
            person.complaint();
            person.plate();
            person.gates();
            person.readings();
            hand.press("finding-strip").look("visit-3-finding");
            var judged = bench(hand).judged().get().orElseThrow();
            assertThat(judged.finding()).isInstanceOf(Finding.Unsettled.class);
            assertThat(hand.has("next-" + judged.next().get(0).check()))
                    .as("the next check is shown")
                    .isTrue();
            assertThat(quote(hand).repair()).as("no repair is priced").isFalse();
            assertThat(told(quote(hand))).isEqualTo(told(ofFile(hand, 3)));
            var signed = person.sign("visit-3");
            person.unlock();
            assertThat(folder).isDirectoryContaining(file -> file.toString().endsWith("-signed.pdf"));
            var office = new BillByHand(hand, visit);
            office.open();
            assertThat(office.group()).isEqualTo(NextStep.INVOICE);
            office.invoice(signed, List.of());
            office.payInFull("cash", "visit-3");
        }
    }

    /** A smell of gas: the sheet fills the bench and holds it; only a licensed release lets the visit go on. */
    @Test
    void aSmellOfGasHoldsTheScreenUntilALicensedRelease() {
        try (var workplace = Shop.in(folder);
                var hand = new Hand(new WorkplaceScreens(workplace, true), 1280, 800, Theme.BRIGHT, "en")) {
            var person = new VisitByHand(hand, Shop.demo(4));
            var visit = person.begin();
            person.who();
            person.complaint();
            person.plate();
            person.gates();
            hand.look("visit-4-sure").press("gate-stop").look("visit-4-stopped");
            heldFast(hand);
            hand.press("stop-print").press("say-close");
            assertThat(folder).isDirectoryContaining(file -> file.toString().endsWith("-stop-work.pdf"));
            hand.key(KeyCode.F1);
            assertThat(hand.has("new-visit")).as("a printed sheet may be left").isTrue();
            hand.press("entry-" + visit).press("open-bench");
            assertThat(hand.has("stop-release")).as("and is there again").isTrue();
            assertThat(hand.has("hand-over")).isFalse();
            hand.press("stop-release")
                    .type("release-G1-name", "Hollis Brandt")
                    .type("release-G1-licence", "GF-10442")
                    .type("release-G1-cause", "union leaked, remade and tested")
                    .look("visit-4-release")
                    .press("release-record-G1");
            assertThat(hand.has("stop-print")).isFalse();
            person.readings();
            hand.press("finding-strip").look("visit-4-goes-on");
            assertThat(bench(hand).judged().get().orElseThrow().finding()).isNotInstanceOf(Finding.StopWork.class);
            assertThat(hand.has("hand-over")).isTrue();
        }
    }

    /** Neither key nor rail leads away, nothing is undone, no paper and no price is to be seen. */
    private static void heldFast(Hand hand) {
        assertThat(bench(hand).judged().get().orElseThrow().quote()).isEmpty();
        assertThat(hand.has("hand-over")).isFalse();
        assertThat(hand.has("paper-total")).isFalse();
        for (var key : List.of(KeyCode.F1, KeyCode.F3, KeyCode.F4, KeyCode.ESCAPE)) {
            hand.key(key);
            assertThat(hand.has("stop-print")).as("held against " + key).isTrue();
        }
        for (var key : List.of("place-ledger", "place-line", "place-stock", "tool-undo", "stop-signature")) {
            assertThat(hand.has(key)).as(key + " is off").isFalse();
        }
        hand.keys(KeyCode.CONTROL, KeyCode.N).keys(KeyCode.CONTROL, KeyCode.Z);
        assertThat(hand.has("stop-print")).isTrue();
    }

    private static BenchModel bench(Hand hand) {
        return hand.model().bench().get().orElseThrow();
    }

    private static Quote quote(Hand hand) {
        return bench(hand).judged().get().flatMap(Judged::quote).orElseThrow();
    }

    /** The quote of the demo's own file. */
    private static Quote ofFile(Hand hand, int visit) {
        return hand.model()
                .work()
                .judge(Drafting.visitText(Shop.demo(visit)))
                .quote()
                .orElseThrow();
    }

    /** What the customer would notice: the finding, each choice with its price and the arithmetic beside it. */
    private static List<String> told(Quote quote) {
        return java.util.stream.Stream.concat(
                        java.util.stream.Stream.of(quote.finding().headline()),
                        quote.choices().stream()
                                .map(choice -> choice.title() + " "
                                        + choice.totals().total() + " " + choice.deposit() + " " + choice.arithmetic()))
                .toList();
    }
}

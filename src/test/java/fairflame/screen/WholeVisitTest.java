package fairflame.screen;

import static org.assertj.core.api.Assertions.assertThat;

import fairflame.screen.look.Theme;
import fairflame.visit.NextStep;
import java.nio.file.Files;
import java.nio.file.Path;
import javafx.scene.input.KeyCode;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** From the complaint to the paid invoice with nothing but the window. */
@ExtendWith(ScreenMachine.class)
class WholeVisitTest {
    @TempDir
    Path folder;

    /** Visit 1, typed by hand: both water-side switches wet. */
    @Test
    void aPersonMakesSignsAndInvoicesTheFirstVisit() throws Exception {
        try (var workplace = Shop.in(folder);
                var hand = new Hand(new WorkplaceScreens(workplace, true), 1280, 800, Theme.BRIGHT, "en")) {
            hand.press("new-visit");
            var visit = hand.model().bench().get().orElseThrow().draft().get("id");
            hand.type("customer.name", "Marguerite Oduya")
                    .type("customer.address", "18 Heron Walk\nLarkwell")
                    .type("customer.phone", "555-0141")
                    .type("customer.email", "m.oduya@example.com")
                    .press("place-larkwell")
                    .look("visit-1-who");
            hand.press("step-complaint").press("complaint-drops-out").look("visit-1-complaint");
            hand.press("step-plate")
                    .type("heater.description", "gas pool heater, fan assisted")
                    .type("heater.input", "400000")
                    .type("heater.inletMinimum", "4")
                    .type("heater.inletMaximum", "14")
                    .type("heater.flameMinimum", "1.5")
                    .type("heater.ageYears", "7")
                    .look("visit-1-plate");
            hand.press("step-gates");
            for (int gate = 1; gate <= 9; gate++) {
                hand.press("gate-G" + gate + "-no");
            }
            hand.look("visit-1-gates");
            readings(hand);
            hand.press("finding-strip").look("visit-1-finding");
            hand.press("hand-over").look("visit-1-handover");
            sign(hand, 0);
            hand.look("visit-1-signed");
            assertThat(folder).isDirectoryContaining(file -> file.toString().endsWith("-signed.pdf"));
            hand.press("copy-folder").press("copy-mail");
            assertThat(folder).isDirectoryContaining(file -> file.toString().endsWith("-copy.pdf"));
            assertThat(folder).isDirectoryContaining(file -> file.toString().endsWith("-copy.eml"));
            hand.key(KeyCode.F1).key(KeyCode.F4);
            assertThat(hand.has("handover-back"))
                    .as("no key leads away from the customer's page")
                    .isTrue();
            hand.press("handover-back").look("visit-1-pin").type("pin", "1111").press("pin-open");
            assertThat(hand.has("pin-open")).as("wrong digits keep the page").isTrue();
            hand.type("pin", "2468").press("pin-open");
            bill(hand, visit);
            assertThat(Files.list(folder))
                    .anyMatch(file -> file.getFileName().toString().startsWith("I-2026-0001"));
        }
    }

    private static void readings(Hand hand) {
        read(hand, "gas-static", "10.0");
        hand.press("instrument-fast-analogue");
        read(hand, "gas-firing", "9.0");
        hand.press("instrument-fast-analogue").press("condition-furnace-on").look("visit-1-reading");
        read(hand, "transformer-idle", "26.3");
        read(hand, "transformer-low", "21");
        read(hand, "line-volts", "121");
        read(hand, "valve-low", "15.7");
        hand.press("step-more")
                .type("more-search", "falls")
                .press("more-first-to-fall")
                .press("word-volts");
        read(hand, "flame-signal", "2.6");
        hand.press("condition-in-series");
        read(hand, "leak-high-limit", "22000");
        hand.press("condition-leads-lifted");
        read(hand, "leak-outlet", "31000");
        hand.press("condition-leads-lifted");
    }

    /** Takes a reading found by a few letters of its name and typed on the pad. */
    private static void read(Hand hand, String check, String value) {
        hand.press("step-more").press("more-" + check);
        for (var digit : value.split("")) {
            hand.press("key-" + (digit.equals(".") ? "point" : digit));
        }
    }

    private static void sign(Hand hand, int choice) {
        var quote = hand.model().work();
        assertThat(quote).isNotNull();
        hand.press(choiceId(hand, choice));
        for (var promise : promises(hand)) {
            hand.press(promise);
        }
        hand.look("visit-1-promises");
        hand.type("signer", "Marguerite Oduya")
                .draw("signature-pad")
                .look("visit-1-signing")
                .press("sign");
    }

    private static String choiceId(Hand hand, int place) {
        return Toolkit.on(() -> hand.scene().getRoot().lookupAll(".choice").stream()
                .map(node -> node.getId())
                .filter(id -> id != null && id.startsWith("take-"))
                .toList()
                .get(place));
    }

    private static java.util.List<String> promises(Hand hand) {
        return Toolkit.on(() -> hand.scene().getRoot().lookupAll(".toggle-button").stream()
                .map(node -> node.getId())
                .filter(id -> id != null && id.startsWith("promise-"))
                .distinct()
                .toList());
    }

    private static void bill(Hand hand, String visit) {
        hand.press("place-ledger").press("entry-" + visit).look("visit-1-ledger-signed");
        hand.press("section-bill").press("make-invoice").look("visit-1-held-back");
        assertThat(hand.model().work().entries(visit).get(0).next()).isEqualTo(NextStep.CANCEL_RUNS);
        hand.press("section-days").press("waiver");
        hand.type("waiver-words", "My mother needs the warm pool for her hip today.")
                .press("waive");
        hand.look("visit-1-waived").press("section-bill");
        for (var test : tests(hand)) {
            hand.type(test.replace("passed-", "test-"), "in order").press(test);
        }
        hand.press("make-invoice").look("visit-1-invoice");
        hand.press("method-cash").press("pay").look("visit-1-paid");
        var entry = hand.model().work().entries(visit).get(0);
        assertThat(entry.next()).isEqualTo(NextStep.NOTHING);
        assertThat(entry.amount()).contains(Money.parse("USD 0.00"));
        hand.press("verify");
        assertThat(hand.words("ledger-said")).contains("seal holds");
    }

    private static java.util.List<String> tests(Hand hand) {
        return Toolkit.on(() -> hand.scene().getRoot().lookupAll(".toggle-button").stream()
                .map(node -> node.getId())
                .filter(id -> id != null && id.startsWith("passed-"))
                .distinct()
                .sorted()
                .toList());
    }
}

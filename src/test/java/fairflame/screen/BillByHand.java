package fairflame.screen;

import static org.assertj.core.api.Assertions.assertThat;

import fairflame.visit.JobFile;
import fairflame.visit.NextStep;
import java.util.List;
import org.joda.money.Money;

/** Takes a signed visit's file from the permit to the paid invoice, as the office would with mouse and keyboard. */
final class BillByHand {
    private final Hand hand;
    private final String visit;

    /** A person in the office who looks after this visit. */
    BillByHand(Hand hand, String visit) {
        this.hand = hand;
        this.visit = visit;
    }

    /** Opens the visit's file in the ledger. */
    void open() {
        hand.press("place-ledger").press("entry-" + visit);
    }

    /** The group of the ledger in which the visit stands. */
    NextStep group() {
        return hand.model().work().entries(visit).get(0).next();
    }

    private JobFile job() {
        return hand.model().work().file(visit).job().orElseThrow();
    }

    void permitIssued(String number, String lastDay) {
        hand.press("section-permit").press("permit-to-applied").press("permit-take");
        hand.press("permit-to-issued")
                .type("permit-number", number)
                .type("permit-day", lastDay)
                .press("permit-take");
        assertThat(job().permit().permit().number()).isEqualTo(number);
    }

    void inspectionPassed(String day, String inspector) {
        hand.press("section-permit").type("permit-day", day).press("permit-take");
        hand.press("permit-to-passed").type("permit-words", inspector).press("permit-take");
        assertThat(hand.words("permit-state")).isEqualTo("Inspection passed");
    }

    /** Who did the gas work, and that new piping held 3 psi for 20 minutes. */
    void gasWork(String fitter, String licence, String ends) {
        hand.type("gas-fitter", fitter)
                .type("gas-licence", licence)
                .type("gas-ends", ends)
                .type("gas-psi", "3")
                .type("gas-minutes", "20")
                .type("gas-gauge", "15")
                .type("gas-witness", "A. Moss")
                .press("gas-held")
                .press("gas-keep");
        assertThat(job().permit().gasWork())
                .hasValueSatisfying(work -> assertThat(work.licence()).isEqualTo(licence));
    }

    /** The invoice is refused as long as something is missing. */
    void heldBack() {
        hand.press("section-bill").press("make-invoice");
        assertThat(job().papers()).as("no invoice yet").isEmpty();
    }

    /** Records every test that the work asks for and bills all of it; the invoice is what was signed, to the cent. */
    void invoice(Money signed, List<String> tests) {
        hand.press("section-bill");
        assertThat(job().agreed().tests()).containsExactlyInAnyOrderElementsOf(tests);
        for (var test : tests) {
            hand.type("test-" + test, "in order").press("passed-" + test);
        }
        hand.press("make-invoice");
        assertThat(job().papers()).singleElement().satisfies(invoice -> {
            assertThat(invoice.complete()).isTrue();
            assertThat(invoice.totals().total()).isEqualTo(signed);
        });
        assertThat(job().account().balance()).isEqualTo(signed);
        assertThat(group()).isEqualTo(NextStep.PAYMENT);
    }

    /** Pays what is open; nothing is left to do, and the account says so. */
    void payInFull(String method, String what) {
        hand.press("method-" + method).press("pay").look(what + "-paid");
        assertThat(job().account().balance().isZero()).isTrue();
        assertThat(group()).isEqualTo(NextStep.NOTHING);
        assertThat(hand.has("pay")).as("nothing is left to pay").isFalse();
        assertThat(hand.words("entry-" + visit)).endsWith(", Closed");
        hand.press("section-money").look(what + "-money");
        hand.press("verify");
        assertThat(hand.words("ledger-said")).contains("seal holds");
    }
}

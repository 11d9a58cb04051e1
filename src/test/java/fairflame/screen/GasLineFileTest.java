package fairflame.screen;

import static org.assertj.core.api.Assertions.assertThat;

import fairflame.quote.LineKind;
import fairflame.screen.look.Theme;
import fairflame.visit.JobFile;
import fairflame.visit.NextStep;
import fairflame.visit.Workplace;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.List;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** The gas line of the second demo visit, from the signature to the last refund, with nothing but the window. */
@ExtendWith(ScreenMachine.class)
class GasLineFileTest {
    private static final String VISIT = "V-2026-0602";
    private static final String QUOTE = "Q-2026-0001";

    @TempDir
    Path folder;

    private final MovingClock clock = new MovingClock();

    @Test
    void theOfficeDoesEverythingForOneVisitOnItsFile() {
        try (var workplace = Shop.in(folder, clock);
                var hand = new Hand(shop(workplace), 1280, 800, Theme.BRIGHT, "en")) {
            signs(hand);
            permit(hand, workplace);
            deposit(hand, workplace);
            booking(hand);
            clock.days(9);
            inspection(hand);
            gasWork(hand);
            actuals(hand, workplace);
            partBill(hand, workplace);
            changeOrder(hand, workplace);
            finalInvoice(hand, workplace);
            payment(hand, workplace);
            creditAndRefund(hand, workplace);
            hand.press("section-warranty").look("file-warranty");
            hand.press("verify");
            assertThat(hand.words("ledger-said")).contains("seal holds");
        }
    }

    private static WorkplaceScreens shop(Workplace workplace) {
        var work = new WorkplaceScreens(workplace, true);
        work.keep(Shop.demo(2));
        return work;
    }

    private static NextStep next(Hand hand) {
        return hand.model().work().entries(VISIT).get(0).next();
    }

    private static JobFile job(Workplace workplace) {
        return JobFile.of(workplace, QUOTE);
    }

    private static void signs(Hand hand) {
        hand.press("entry-" + VISIT).press("open-bench").press("hand-over").press("take-larger-line");
        for (var promise : ids(hand, ".toggle-button", "promise-")) {
            hand.press(promise);
        }
        hand.type("signer", "Tobias Renner").draw("signature-pad").press("sign");
        hand.press("handover-back").type("pin", "2468").press("pin-open");
        hand.press("place-ledger").press("entry-" + VISIT);
        assertThat(next(hand)).isEqualTo(NextStep.PERMIT);
    }

    private static List<String> ids(Hand hand, String style, String prefix) {
        return Toolkit.on(() -> hand.scene().getRoot().lookupAll(style).stream()
                .map(node -> node.getId())
                .filter(id -> id != null && id.startsWith(prefix))
                .distinct()
                .toList());
    }

    private static void permit(Hand hand, Workplace workplace) {
        hand.look("file-permit").press("permit-to-applied").press("permit-take").look("file-applied");
        assertThat(hand.words("permit-state")).isEqualTo("Applied for");
        hand.press("permit-to-issued").press("permit-take").look("file-permit-refused");
        assertThat(job(workplace).permit().permit().number()).isEmpty();
        hand.type("permit-number", "GP-26-0417")
                .type("permit-day", "2026-12-01")
                .press("permit-take");
        assertThat(job(workplace).permit().permit().number()).isEqualTo("GP-26-0417");
        assertThat(hand.model().work().entries("gp-26-0417")).hasSize(1);
        assertThat(next(hand)).isEqualTo(NextStep.CANCEL_RUNS);
    }

    private static void deposit(Hand hand, Workplace workplace) {
        hand.press("section-money")
                .type("deposit-amount", "9999")
                .press("take-deposit")
                .look("file-deposit-refused");
        assertThat(job(workplace).movements()).isEmpty();
        var most = job(workplace).deposit();
        hand.type("deposit-amount", most.getAmount().toPlainString()).press("take-deposit");
        assertThat(hand.words("file-said")).contains("Receipt: P-Q-");
        assertThat(workplace.papers())
                .isDirectoryContaining(file -> file.getFileName().toString().startsWith("P-Q-"));
        assertThat(job(workplace).movements()).singleElement().satisfies(movement -> {
            assertThat(movement.deposit()).isTrue();
            assertThat(movement.amount()).isEqualTo(most);
        });
    }

    private static void booking(Hand hand) {
        hand.press("section-days")
                .type("book-day", "2026-06-05")
                .type("book-crew", "Ned Garrow")
                .press("book");
        assertThat(hand.words("booked")).isEqualTo("No day is booked.");
        assertThat(hand.words("right-to-cancel")).contains("June 6, 2026");
        hand.look("file-booking-refused");
        hand.type("book-day", "2026-06-08").press("book").look("file-booked");
        assertThat(hand.words("booked")).contains("June 8, 2026", "Ned Garrow");
    }

    private static void inspection(Hand hand) {
        hand.press("section-permit").type("permit-day", "2026-06-13").press("permit-take");
        hand.press("permit-to-passed").type("permit-words", "A. Moss").press("permit-take");
        assertThat(hand.words("permit-state")).isEqualTo("Inspection passed");
    }

    private static void gasWork(Hand hand) {
        hand.type("gas-fitter", "Ned Garrow")
                .type("gas-licence", "GF-10377")
                .type("gas-ends", "2026-06-01")
                .type("gas-psi", "3")
                .type("gas-minutes", "20")
                .type("gas-gauge", "15")
                .type("gas-witness", "A. Moss")
                .press("gas-held")
                .press("gas-keep")
                .look("file-gas-refused");
        hand.type("gas-ends", "2027-01-31").press("gas-keep").look("file-gas");
        assertThat(next(hand)).isEqualTo(NextStep.INVOICE);
    }

    private static String part(Workplace workplace) {
        return job(workplace).agreed().lines().stream()
                .filter(line -> line.kind() == LineKind.PART && line.unit().equals("each"))
                .findFirst()
                .orElseThrow()
                .id();
    }

    /** One more of the first part than was signed: the invoice waits for a change order. */
    private static void actuals(Hand hand, Workplace workplace) {
        var part = part(workplace);
        var more = job(workplace).agreed().lines().stream()
                .filter(line -> line.id().equals(part))
                .findFirst()
                .orElseThrow()
                .quantity()
                .add(BigDecimal.ONE)
                .toBigInteger();
        hand.press("section-work")
                .type("actual-" + part, "many")
                .press("actual-keep")
                .look("file-actual-refused");
        assertThat(job(workplace).actuals().history()).isEmpty();
        hand.press("actual-pad").type("actual-" + part, "");
        for (var digit : more.toString().split("")) {
            hand.press("key-" + digit);
        }
        hand.press("actual-as-signed").press("actual-keep").look("file-actual");
        assertThat(job(workplace).actuals().work().beyond()).hasSize(1);
        assertThat(job(workplace).actuals().latest().orElseThrow().by()).isEqualTo("Ines Calloway");
    }

    private static void partBill(Hand hand, Workplace workplace) {
        var labour = job(workplace).agreed().lines().stream()
                .filter(line -> line.unit().equals("h"))
                .findFirst()
                .orElseThrow()
                .id();
        hand.press("section-bill")
                .press("part-bill")
                .type("part-" + labour, "999")
                .press("make-part");
        assertThat(job(workplace).papers()).isEmpty();
        hand.type("part-" + labour, "1").press("make-part").look("file-part");
        assertThat(job(workplace).papers()).hasSize(1);
        assertThat(next(hand)).isEqualTo(NextStep.PART_BILLED);
    }

    private static void changeOrder(Hand hand, Workplace workplace) {
        hand.press("make-invoice").look("file-invoice-held");
        assertThat(job(workplace).papers()).hasSize(1);
        hand.press("section-change").press("change-show");
        assertThat(hand.has("change-sign")).isFalse();
        hand.type("change-reason", "One more was needed behind the wall").press("change-show");
        hand.press("change-authorise").press("change-electronic");
        hand.type("change-name", "Tobias Renner")
                .draw("change-pad")
                .look("file-change")
                .press("change-sign");
        assertThat(job(workplace).agreed().orders()).singleElement().satisfies(order -> {
            assertThat(order.signature().name()).isEqualTo("Tobias Renner");
            assertThat(order.signature().strokes()).isNotEmpty();
        });
        assertThat(job(workplace).actuals().work().needsChangeOrder()).isEmpty();
    }

    private static void finalInvoice(Hand hand, Workplace workplace) {
        hand.press("section-bill");
        for (var test : ids(hand, ".toggle-button", "passed-").stream().sorted().toList()) {
            hand.type(test.replace("passed-", "test-"), "in order").press(test);
        }
        hand.press("make-invoice").look("file-invoice");
        var job = job(workplace);
        assertThat(job.papers()).hasSize(2);
        assertThat(job.papers().get(1).complete()).isTrue();
        assertThat(job.papers().stream().map(paper -> paper.totals().total()).reduce(Money::plus))
                .contains(job.agreed().totals().total());
        assertThat(job.warranty()).isNotEmpty();
    }

    private static void payment(Hand hand, Workplace workplace) {
        hand.type("pay-amount", "99999").press("pay").look("file-pay-refused");
        while (job(workplace).account().balance().isPositive()) {
            var open = job(workplace).account().items().stream()
                    .filter(item -> item.open().isPositive())
                    .reduce((one, other) -> other)
                    .orElseThrow()
                    .open();
            hand.type("pay-amount", open.getAmount().toPlainString())
                    .press("method-transfer")
                    .press("pay")
                    .look("file-paid");
            assertThat(hand.words("file-said")).contains("Receipt: P-I-");
        }
        assertThat(next(hand)).isEqualTo(NextStep.NOTHING);
    }

    private static void creditAndRefund(Hand hand, Workplace workplace) {
        var part = part(workplace);
        hand.press("credit-I-2026-0002").press("credit-part").look("file-credit-refused");
        hand.type("credit-" + part, "1")
                .type("credit-reason", "One came back unused")
                .press("credit-part");
        assertThat(job(workplace).papers()).hasSize(3);
        assertThat(next(hand)).isEqualTo(NextStep.REFUND);
        hand.look("file-credited").press("section-money").look("file-refund");
        hand.type("refund-reason", "Unused part").press("pay-back");
        assertThat(job(workplace).account().spare().isZero()).isTrue();
        assertThat(job(workplace).account().balance().isZero()).isTrue();
        assertThat(next(hand)).isEqualTo(NextStep.NOTHING);
    }
}

package fairflame.invoice;

import static fairflame.agreement.DemoAgreements.BOTH;
import static fairflame.agreement.DemoAgreements.CONSENT;
import static fairflame.agreement.DemoAgreements.act;
import static fairflame.invoice.DemoInvoices.SWITCHES_DONE;
import static fairflame.invoice.DemoInvoices.THREE_PARTS;
import static fairflame.invoice.DemoInvoices.completion;
import static fairflame.invoice.DemoInvoices.invoicing;
import static fairflame.invoice.DemoInvoices.issue;
import static fairflame.quote.DemoShop.USD;
import static fairflame.quote.DemoShop.dec;
import static fairflame.quote.DemoShop.usd;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fairflame.Refusal;
import fairflame.agreement.AddedLine;
import fairflame.agreement.Agreed;
import fairflame.agreement.CanonicalForm;
import fairflame.agreement.Change;
import fairflame.agreement.ChangeOrder;
import fairflame.agreement.Changing;
import fairflame.agreement.SignedRevision;
import fairflame.agreement.WorkedFigures;
import fairflame.money.Amounts;
import fairflame.quote.DemoQuotes;
import fairflame.quote.Duties;
import fairflame.quote.LineKind;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Sums worked by hand to the cent; document rules of EN 16931 (BR-CO) checked by {@link EnRules}. */
class InvoicingTest {
    private static final BigDecimal ONE = BigDecimal.ONE;

    private static ChangeOrder change(Agreed agreed, Change change) {
        var changing = new Changing(CONSENT);
        return changing.sign(agreed, changing.draft(agreed, change), act(Map.of()), agreed.seal());
    }

    private static Invoicing changed(SignedRevision signed, ChangeOrder... orders) {
        return new Invoicing(new Agreed(signed, List.of(orders)), DemoQuotes.CAUTIONS);
    }

    private static final AddedLine PART =
            new AddedLine(LineKind.PART, "SW-120", "third switch", dec("1"), "each", usd("48.35"), "found wet", "demo");

    @Test
    void theInvoiceHasTheSignedCents() {
        var invoice = invoicing(BOTH).complete(issue(1), SWITCHES_DONE, List.of());
        assertThat(invoice.lines()).isEqualTo(BOTH.taken().lines());
        assertThat(invoice.totals()).isEqualTo(BOTH.taken().totals());
        assertThat(invoice.kind()).isEqualTo(Invoice.Kind.FULL);
        assertThat(invoice.number()).isEqualTo("I-2026-0001");
        assertThat(invoice.seal()).isEqualTo(BOTH.seal().chain());
        assertThat(invoice.complete()).isTrue();
        assertThat(invoice.notes()).isEmpty();
        assertThat(invoice.balance()).isEqualTo(usd("389.86"));
        assertThat(EnRules.broken(invoice)).isEmpty();
        assertThat(EnRules.brokenTax(invoice)).isEmpty();
        assertThat(CanonicalForm.read(Invoice.class, CanonicalForm.write(invoice)))
                .isEqualTo(invoice);
    }

    @Test
    void aSignedChangeOrderChangesTheInvoice() {
        // 287.21 - 7.27 + 48.35 + 10.77
        var order = change(Agreed.of(WorkedFigures.SIGNED), Change.of("found wet", List.of(PART), List.of()));
        var invoice = changed(WorkedFigures.SIGNED, order).rest(issue(1), SWITCHES_DONE, List.of());
        assertThat(invoice.totals().total()).isEqualTo(usd("339.06"));
        assertThat(invoice.changeOrders()).containsExactly("Q-2026-0001-C1");
        assertThat(EnRules.broken(invoice)).isEmpty();
    }

    @Test
    void nothingIsBilledOnAnAlteredAgreement() {
        var altered = new SignedRevision(BOTH.quote(), "one", BOTH.declined(), BOTH.signature(), BOTH.seal());
        assertThatThrownBy(() -> invoicing(altered))
                .isInstanceOf(Refusal.NotAllowed.class)
                .hasMessageContaining("/choice: altered since it was sealed");
    }

    @Test
    void workThatIsNotCompleteIsNotCalledSo() {
        var undone = completion("B", "D", "E");
        assertThatThrownBy(() -> invoicing(BOTH).complete(issue(1), undone, List.of()))
                .isInstanceOf(Refusal.NotAllowed.class)
                .hasMessageContaining("The result of test H is missing.");
        var invoice = invoicing(BOTH).rest(issue(1), undone, List.of());
        assertThat(invoice.complete()).isFalse();
        assertThat(invoice.notes())
                .singleElement()
                .asString()
                .startsWith("Not cleared")
                .contains("test H is missing");
    }

    @Test
    void threePartBillsAddUpToTheTaxOfTheWhole() {
        // 36.39, 36.40, 36.40 at 7.25 %: 2.64 each, 7.92 on 109.19
        var papers = new ArrayList<Invoice>();
        for (int i = 1; i <= 3; i++) {
            papers.add(invoicing(THREE_PARTS).part(issue(i), completion(), papers, Map.of("L" + i, ONE)));
        }
        assertThat(papers)
                .extracting(paper -> paper.totals().tax())
                .containsExactly(usd("2.64"), usd("2.64"), usd("2.64"));
        assertThat(papers).extracting(Invoice::kind).containsOnly(Invoice.Kind.PART);
        assertThat(new Account(papers, List.of()).billed()).isEqualTo(usd("117.11"));
        assertThat(papers).allSatisfy(paper -> assertThat(EnRules.broken(paper)).isEmpty());
    }

    @Test
    void partBillsOfAnySplitLandOnTheSignedCents() {
        var seed = 16931L;
        var random = new Random(seed);
        var signed = List.of(BOTH, WorkedFigures.SIGNED, THREE_PARTS, DemoInvoices.PIPE);
        for (int i = 0; i < 150; i++) {
            var agreement = signed.get(random.nextInt(signed.size()));
            var papers = SplitPapers.of(agreement, random);
            var at = "seed " + seed + " case " + i;
            var whole = agreement.taken().totals();
            var account = new Account(papers, List.of());
            assertThat(account.billed()).as(at).isEqualTo(whole.total());
            assertThat(Amounts.sum(
                            USD,
                            papers.stream().map(paper -> paper.totals().tax()).toList()))
                    .as(at)
                    .isEqualTo(whole.tax());
            assertThat(papers)
                    .as(at)
                    .allSatisfy(paper -> assertThat(EnRules.broken(paper)).isEmpty());
        }
    }

    @Test
    void noMoreIsBilledThanWasSigned() {
        var first = invoicing(BOTH).part(issue(1), completion(), List.of(), Map.of("L4", dec("1.00")));
        assertThat(first.totals().subtotal()).isEqualTo(usd("145.00"));
        refused(
                "quantity of line L4 '0.36' is refused; allowed: up to 0.35",
                () -> invoicing(BOTH).part(issue(2), completion(), List.of(first), Map.of("L4", dec("0.36"))));
        refused("line to bill 'L9'", () -> invoicing(BOTH).part(issue(2), completion(), List.of(), Map.of("L9", ONE)));
        refused(
                "quantity of line L1",
                () -> invoicing(BOTH).part(issue(2), completion(), List.of(), Map.of("L1", BigDecimal.ZERO)));
        refused("work to bill", () -> invoicing(BOTH).part(issue(2), completion(), List.of(), Map.of()));
        var all = invoicing(BOTH).rest(issue(1), SWITCHES_DONE, List.of());
        refused("work to bill", () -> invoicing(BOTH).rest(issue(2), SWITCHES_DONE, List.of(all)));
        refused("of another agreement", () -> invoicing(THREE_PARTS).rest(issue(2), completion(), List.of(all)));
    }

    @Test
    void aLineBilledAndThenRemovedIsCreditedFirst() {
        var first = invoicing(BOTH).part(issue(1), completion(), List.of(), Map.of("L1", ONE));
        var order = change(Agreed.of(BOTH), Change.of("not needed", List.of(), List.of("L1")));
        refused(
                "line L1 'billed and then removed'",
                () -> changed(BOTH, order).rest(issue(2), SWITCHES_DONE, List.of(first)));
        var credit = Crediting.full(issue("C", 1), first, List.of(), "line removed");
        var rest = changed(BOTH, order).rest(issue(2), SWITCHES_DONE, List.of(first, credit));
        assertThat(new Account(List.of(first, credit, rest), List.of()).billed())
                .isEqualTo(new Agreed(BOTH, List.of(order)).totals().total());
    }

    @Test
    void addedWorkBringsItsDutiesAndTests() {
        var gas = new Change(
                "valve leaks",
                List.of(PART),
                List.of(),
                new Duties(true, fairflame.catalog.PermitNeed.YES, false),
                List.of("A"));
        var order = change(Agreed.of(BOTH), gas);
        assertThat(changed(BOTH, order).missing(SWITCHES_DONE))
                .containsExactly(
                        "The permit number is missing.",
                        "The name of the licensed gas fitter who did the gas work is missing.",
                        "The licence number of the licensed gas fitter is missing.",
                        "The result of test A is missing.");
    }

    @Test
    void daysAndNumberBelongTogether() {
        var day = LocalDate.of(2026, 12, 2);
        var number = new InvoiceNumber("I", 2026, 1);
        refused(
                "issued on 2027-01-01",
                () -> new Issue(number, LocalDate.of(2027, 1, 1), day, LocalDate.of(2027, 1, 9)));
        refused("day of the work", () -> new Issue(number, day, day.plusDays(1), day.plusDays(2)));
        refused("payment is due", () -> new Issue(number, day, day, day.minusDays(1)));
    }

    private static void refused(String words, org.assertj.core.api.ThrowableAssert.ThrowingCallable call) {
        assertThatThrownBy(call).isInstanceOf(Refusal.class).hasMessageContaining(words);
    }
}

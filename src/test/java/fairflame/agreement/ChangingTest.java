package fairflame.agreement;

import static fairflame.agreement.DemoAgreements.AT;
import static fairflame.agreement.DemoAgreements.BOTH;
import static fairflame.agreement.DemoAgreements.CONSENT;
import static fairflame.agreement.DemoAgreements.act;
import static fairflame.quote.DemoShop.dec;
import static fairflame.quote.DemoShop.usd;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fairflame.Refusal;
import fairflame.quote.Line;
import fairflame.quote.LineKind;
import java.util.List;
import java.util.Map;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;

class ChangingTest {
    private static final Changing CHANGING = new Changing(CONSENT);

    private static AddedLine part(String price) {
        return new AddedLine(
                LineKind.PART, "SW-120", "third switch", dec("1"), "each", usd(price), "found wet", "demo");
    }

    private static ChangeOrder signed(Agreed agreed, List<AddedLine> added, List<String> removed) {
        var draft = CHANGING.draft(agreed, Change.of("found wet when opened", added, removed));
        return CHANGING.sign(agreed, draft, act(Map.of()), agreed.seal());
    }

    @Test
    void theTotalsAfterAChangeAreComputedFromScratch() {
        // Agreed: 109.19 taxed, 195.75 untaxed, less 25.00: 287.21. One part of 48.35 more: base 148.59, tax 10.772775.
        var agreed = Agreed.of(WorkedFigures.SIGNED);
        assertThat(agreed.totals().total()).isEqualTo(usd("287.21"));
        var order = signed(agreed, List.of(part("48.35")), List.of());
        assertThat(order.before().total()).isEqualTo(usd("287.21"));
        assertThat(order.after().taxes().get(0).base()).isEqualTo(usd("148.59"));
        assertThat(order.after().tax()).isEqualTo(usd("10.77"));
        assertThat(order.after().total()).isEqualTo(usd("339.06"));
        assertThat(new Agreed(WorkedFigures.SIGNED, List.of(order)).totals()).isEqualTo(order.after());
    }

    @Test
    void aRemovedLineTakesItsShareOfTheDiscountWithIt() {
        var agreed = Agreed.of(WorkedFigures.SIGNED);
        var draft = CHANGING.draft(agreed, Change.of("not needed", List.of(), List.of("L2")));
        assertThat(draft.after().discount()).isEqualTo(usd("8.95"));
        assertThat(draft.after().total()).isEqualTo(usd("107.51"));
    }

    @Test
    void aChangeOrderIsSignedSealedAndChained() {
        var agreed = Agreed.of(BOTH);
        var first = signed(agreed, List.of(part("48.00")), List.of("L5"));
        assertThat(first.number()).isEqualTo("Q-2026-0001-C1");
        assertThat(first.agreement()).isEqualTo(BOTH.seal().chain());
        assertThat(first.seal().previous()).isEqualTo(BOTH.seal().chain());
        assertThat(first.signature().consent())
                .contains("authorise it")
                .contains(first.after().total().getAmount().toString());
        assertThat(Sealing.verify(first)).isEmpty();
        var changed = new Agreed(BOTH, List.of(first));
        assertThat(changed.lines()).extracting(Line::id).containsExactly("L1", "L2", "L3", "L4", "C1.1");
        var second = signed(changed, List.of(part("1.00"), part("2.00")), List.of("C1.1"));
        assertThat(second.number()).isEqualTo("Q-2026-0001-C2");
        assertThat(new Agreed(BOTH, List.of(first, second)).lines())
                .extracting(Line::id)
                .containsExactly("L1", "L2", "L3", "L4", "C2.1", "C2.2");
        assertThat(Sealing.verifyChain(List.of(BOTH.seal(), first.seal(), second.seal())))
                .isEmpty();
        var back = CanonicalForm.read(ChangeOrder.class, CanonicalForm.write(second));
        assertThat(back).isEqualTo(second);
        assertThatThrownBy(() -> new Agreed(BOTH, List.of(second)))
                .isInstanceOf(Refusal.NotAllowed.class)
                .hasMessageContaining("change order Q-2026-0001-C2");
    }

    @Test
    void anAlteredOrUnsignedPaperIsRefusedByTheNameOfTheField() {
        var order = signed(Agreed.of(BOTH), List.of(part("48.00")), List.of());
        var altered = new ChangeOrder(
                order.number(),
                order.quote(),
                order.revision(),
                order.agreement(),
                "another reason",
                order.added(),
                order.removed(),
                order.duties(),
                order.tests(),
                order.before(),
                order.after(),
                order.signature(),
                order.seal());
        assertThatThrownBy(() -> new Agreed(BOTH, List.of(altered)))
                .hasMessageContaining("/reason: altered since it was sealed");
        var other = new SignedRevision(BOTH.quote(), "one", BOTH.declined(), BOTH.signature(), BOTH.seal());
        assertThatThrownBy(() -> Agreed.of(other)).hasMessageContaining("Q-2026-0001 revision 1 '/choice: altered");
        var unsigned = new SignedRevision(
                BOTH.quote(), "both", BOTH.declined(), BOTH.signature(), new Seal("", "", "", Map.of()));
        assertThatThrownBy(() -> Agreed.of(unsigned)).isInstanceOf(Refusal.NotAllowed.class);
    }

    @Test
    void aChangeHasToChangeSomethingThatIsThere() {
        var agreed = Agreed.of(BOTH);
        refused(
                "reason of a change order",
                () -> CHANGING.draft(agreed, Change.of(" ", List.of(part("1.00")), List.of())));
        refused("change", () -> CHANGING.draft(agreed, Change.of("x", List.of(), List.of())));
        refused("line to remove 'L9'", () -> CHANGING.draft(agreed, Change.of("x", List.of(), List.of("L9"))));
        refused("line to remove 'L1'", () -> CHANGING.draft(agreed, Change.of("x", List.of(), List.of("L1", "L1"))));
        refused(
                "total after the change",
                () -> CHANGING.draft(agreed, Change.of("x", List.of(part("-999.00")), List.of())));
        var none = new AddedLine(LineKind.PART, "", "x", dec("0"), "each", usd("1.00"), "x", "demo");
        refused("quantity of 'x'", () -> CHANGING.draft(agreed, Change.of("x", List.of(none), List.of())));
        var euro = new AddedLine(LineKind.PART, "", "x", dec("1"), "each", Money.of(CurrencyUnit.EUR, 1), "x", "demo");
        refused("currency", () -> CHANGING.draft(agreed, Change.of("x", List.of(euro), List.of())));
    }

    @Test
    void aDraftIsSignedOnTheStateItWasMadeFor() {
        var agreed = Agreed.of(BOTH);
        var stale = CHANGING.draft(agreed, Change.of("x", List.of(part("1.00")), List.of()));
        var changed = new Agreed(BOTH, List.of(signed(agreed, List.of(part("2.00")), List.of())));
        refused("drafted on another state", () -> CHANGING.sign(changed, stale, act(Map.of()), changed.seal()));
        refused(
                "time of signing",
                () -> CHANGING.sign(agreed, stale, act(AT.minusSeconds(1), Map.of()), agreed.seal()));
        refused(
                "consent to 'authorise'",
                () -> CHANGING.sign(
                        agreed,
                        stale,
                        new SigningAct("Ida", "owner", AT, java.util.Set.of(), Map.of(), List.of(), ""),
                        agreed.seal()));
    }

    private static void refused(String words, org.assertj.core.api.ThrowableAssert.ThrowingCallable call) {
        assertThatThrownBy(call).isInstanceOf(Refusal.class).hasMessageContaining(words);
    }

    @Test
    void anAddedLineIsTaxedByTheRuleOfTheQuote() {
        var labour = new AddedLine(LineKind.LABOUR, "", "more work", dec("0.5"), "h", usd("145.00"), "x", "demo");
        var draft = CHANGING.draft(Agreed.of(BOTH), Change.of("x", List.of(part("10.00"), labour), List.of()));
        assertThat(draft.lines()).extracting(Line::taxable).containsExactly(true, false);
        assertThat(draft.lines()).extracting(Line::net).containsExactly(usd("10.00"), usd("72.50"));
    }
}

package fairflame.invoice.actual;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fairflame.Refusal;
import fairflame.agreement.Agreed;
import fairflame.agreement.CanonicalForm;
import fairflame.agreement.Change;
import fairflame.agreement.Changing;
import fairflame.agreement.DemoAgreements;
import fairflame.quote.Line;
import fairflame.quote.LineKind;
import java.math.BigDecimal;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;

class ActualsTest {
    private static final Agreed AGREED = Agreed.of(DemoAgreements.BOTH);
    private static final OffsetDateTime AT = DemoAgreements.AT.plusDays(5);
    private static final Changing CHANGING = new Changing(DemoAgreements.CONSENT);
    private static final Line PART = AGREED.lines().stream()
            .filter(line -> line.kind() == LineKind.PART)
            .findFirst()
            .orElseThrow();
    private static final Line LABOUR = AGREED.lines().stream()
            .filter(line -> line.kind() == LineKind.LABOUR)
            .findFirst()
            .orElseThrow();

    private static Actuals none() {
        return Actuals.none("Q-2026-0001", 1, AT);
    }

    private static Actuals told(Map<String, BigDecimal> quantities) {
        return none().after(ActualEntry.of(quantities, ""), "Ned Garrow", AT);
    }

    private static OutsideWork outside(String words, String worth, boolean borne) {
        return new OutsideWork(words, LineKind.PART, Money.parse("USD " + worth), borne);
    }

    private static Actuals with(OutsideWork... works) {
        return none().after(
                        new ActualEntry(Map.of(), List.of(works), Set.of(), Set.of(), Map.of(), ""), "Ned Garrow", AT);
    }

    private static Agreed changed(ActualWork compared) {
        var draft = CHANGING.draft(AGREED, Change.of("More was needed", compared.toSign(), List.of()));
        var order = CHANGING.sign(
                AGREED,
                draft,
                DemoAgreements.act(AT, Map.of()),
                AGREED.signed().seal().chain());
        return new Agreed(AGREED.signed(), List.of(order));
    }

    @Test
    void aSecondEntryAddsToTheFirstAndNamesWhoToldLast() {
        var first = told(Map.of(PART.id(), BigDecimal.ONE));
        var second = first.after(ActualEntry.of(Map.of(LABOUR.id(), new BigDecimal("1.5")), ""), "Ida Quill", AT);
        assertThat(second.quantities()).containsOnlyKeys(PART.id(), LABOUR.id());
        assertThat(second.by()).isEqualTo("Ida Quill");
        assertThat(first.quantities()).containsOnlyKeys(PART.id());
    }

    @Test
    void aFigureToldBeforeChangesOnlyWithANote() {
        var first = told(Map.of(PART.id(), BigDecimal.ONE));
        var other = Map.of(PART.id(), BigDecimal.TEN);
        assertThatThrownBy(() -> first.after(ActualEntry.of(other, " "), "Ida Quill", AT))
                .isInstanceOf(Refusal.NotAllowed.class)
                .hasMessageContaining("1 -> 10");
        var same = ActualEntry.of(Map.of(PART.id(), new BigDecimal("1.00")), "");
        assertThat(first.after(same, "Ida Quill", AT).told()).isTrue();
        assertThat(first.after(ActualEntry.of(other, "box counted again"), "Ida Quill", AT)
                        .quantities())
                .containsEntry(PART.id(), BigDecimal.TEN);
    }

    @Test
    void anEntryOfNothingIsRefused() {
        assertThatThrownBy(() -> told(Map.of())).isInstanceOf(Refusal.Missing.class);
        assertThatThrownBy(() -> told(Map.of(PART.id(), new BigDecimal("-1")))).isInstanceOf(Refusal.OutOfRange.class);
        assertThatThrownBy(() -> told(Map.of(PART.id(), new BigDecimal("0.00001"))))
                .isInstanceOf(Refusal.OutOfRange.class);
    }

    @Test
    void morePartsThanSignedAreCoveredByTheChangeOrderMadeFromThem() {
        var actuals = told(Map.of(PART.id(), PART.quantity().add(BigDecimal.ONE)));
        var before = ActualWork.of(AGREED, actuals);
        assertThat(before.needsChangeOrder()).hasSize(2);
        assertThat(before.toSign()).singleElement().satisfies(line -> {
            assertThat(line.item()).isEqualTo(PART.item());
            assertThat(line.quantity()).isEqualByComparingTo("1");
        });
        var after = ActualWork.of(changed(before), actuals);
        assertThat(after.needsChangeOrder()).isEmpty();
        assertThat(after.actual()).isEqualTo(after.signed()).isEqualTo(before.actual());
    }

    @Test
    void aChangeOrderForLessThanWasDoneCoversOnlyThat() {
        var actuals = told(Map.of(PART.id(), PART.quantity().add(BigDecimal.ONE)));
        var more = told(Map.of(PART.id(), PART.quantity().add(new BigDecimal("3"))));
        var compared = ActualWork.of(changed(ActualWork.of(AGREED, actuals)), more);
        assertThat(compared.beyond())
                .singleElement()
                .satisfies(row -> assertThat(row.beyond()).isEqualByComparingTo("2"));
    }

    @Test
    void workOutsideIsCoveredByAChangeOrderOfTheSameWords() {
        var actuals = with(outside("Rotted  union", "45.00", false));
        var before = ActualWork.of(AGREED, actuals);
        assertThat(before.needsChangeOrder()).containsExactly("Rotted  union, USD 45.00, stands in no signed line.");
        var agreed = changed(ActualWork.of(AGREED, with(outside("rotted union", "45.00", false))));
        assertThat(ActualWork.of(agreed, actuals).needsChangeOrder()).isEmpty();
        var dearer = with(outside("Rotted union", "45.01", false));
        assertThat(ActualWork.of(agreed, dearer).needsChangeOrder()).hasSize(1);
    }

    @Test
    void whatTheShopBearsNeedsNoSignatureAndIsNotCounted() {
        var entry = new ActualEntry(
                Map.of(LABOUR.id(), LABOUR.quantity().add(BigDecimal.TEN)),
                List.of(outside("Second trip", "89.00", true)),
                Set.of(LABOUR.id()),
                Set.of(),
                Map.of(),
                "");
        var compared = ActualWork.of(AGREED, none().after(entry, "Ned Garrow", AT));
        assertThat(compared.needsChangeOrder()).isEmpty();
        assertThat(compared.actual()).isEqualTo(compared.signed());
        var again = new ActualEntry(Map.of(), List.of(), Set.of(), Set.of(LABOUR.id()), Map.of(), "");
        assertThat(ActualWork.of(AGREED, none().after(entry, "Ned", AT).after(again, "Ida", AT))
                        .beyond())
                .hasSize(1);
    }

    @Test
    void aLineOfWhichNothingWasDoneIsNamed() {
        assertThat(ActualWork.of(AGREED, told(Map.of(PART.id(), BigDecimal.ZERO)))
                        .undone())
                .singleElement()
                .satisfies(row -> assertThat(row.line()).isEqualTo(PART));
        assertThat(ActualWork.of(AGREED, none()).undone()).isEmpty();
    }

    @Test
    void workOutsideOfNoWorthTakesItBack() {
        var first = with(outside("Second valve", "30.00", false));
        var back = new ActualEntry(
                Map.of(), List.of(outside("second valve", "0.00", false)), Set.of(), Set.of(), Map.of(), "not fitted");
        assertThat(first.after(back, "Ida Quill", AT).outside()).isEmpty();
    }

    @Test
    void theRecordIsReadBackAsItWas() {
        var actuals = with(outside("Second valve", "30.00", false));
        assertThat(CanonicalForm.read(Actuals.class, CanonicalForm.write(actuals)))
                .isEqualTo(actuals);
    }
}

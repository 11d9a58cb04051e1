package fairflame.invoice.actual;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fairflame.Refusal;
import fairflame.agreement.Agreed;
import fairflame.agreement.DemoAgreements;
import java.math.BigDecimal;
import java.util.Map;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;

class ActualWorkTest {
    private static final Agreed AGREED = Agreed.of(DemoAgreements.BOTH);

    @Test
    void workDoneAsSignedNeedsNothing() {
        var compared = ActualWork.of(AGREED, Map.of(), Map.of());
        assertThat(compared.actual())
                .isEqualTo(compared.signed())
                .isEqualTo(AGREED.totals().subtotal());
        assertThat(compared.needsChangeOrder()).isEmpty();
    }

    @Test
    void moreThanThePlaceAllowsNeedsAChangeOrderAndLessDoesNot() {
        var line = AGREED.lines().get(0);
        var more = ActualWork.of(AGREED, Map.of(line.id(), line.quantity().add(BigDecimal.ONE)), Map.of());
        assertThat(more.actual()).isEqualTo(more.signed().plus(line.unitPrice()));
        assertThat(more.needsChangeOrder()).hasSize(2).first().asString().contains("Line " + line.id(), "1 beyond");
        var less = ActualWork.of(AGREED, Map.of(line.id(), BigDecimal.ZERO), Map.of());
        assertThat(less.needsChangeOrder()).isEmpty();
    }

    @Test
    void workInNoSignedLineAlwaysNeedsOne() {
        var line = AGREED.lines().get(0);
        var compared = ActualWork.of(
                AGREED, Map.of(line.id(), BigDecimal.ZERO), Map.of("Second valve", Money.parse("USD 1.00")));
        assertThat(compared.needsChangeOrder()).containsExactly("Second valve, USD 1.00, stands in no signed line.");
    }

    @Test
    void aLineThatWasNotSignedIsRefused() {
        assertThatThrownBy(() -> ActualWork.of(AGREED, Map.of("L99", BigDecimal.ONE), Map.of()))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("L99");
    }
}

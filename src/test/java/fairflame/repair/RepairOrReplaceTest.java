package fairflame.repair;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fairflame.Refusal;
import fairflame.money.Percent;
import java.math.BigDecimal;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;

/** Figures worked by hand; the factor is i / (1 - (1 + i)^-n). Prices invented for the demo. */
class RepairOrReplaceTest {
    @Test
    void aSumIsSpreadOverItsYearsByTheCapitalRecoveryFactor() {
        // 0.36721 and 0.12039 also stand in any printed table of the factor at 5 %, for 3 and 11 years.
        assertThat(spread("900.00", 3).factor()).isBetween(new BigDecimal("0.367205"), new BigDecimal("0.367215"));
        assertThat(spread("900.00", 3).perYear()).isEqualTo(usd("330.49"));
        assertThat(spread("5200.00", 11).factor()).isBetween(new BigDecimal("0.120385"), new BigDecimal("0.120395"));
        assertThat(spread("5200.00", 11).perYear()).isEqualTo(usd("626.02"));
    }

    @Test
    void withoutInterestAYearIsASimpleShare() {
        assertThat(new YearlyCost(usd("900.00"), 3, Percent.ZERO).perYear()).isEqualTo(usd("300.00"));
    }

    @Test
    void aBetterEfficiencySavesItsShareOfTheGas() {
        assertThat(gas("78", "82").saving()).isEqualTo(usd("58.54"));
        assertThat(gas("82", "95").saving()).isEqualTo(usd("164.21"));
    }

    @Test
    void aRepairThatLastsThreeYearsWinsByEightySixNinetyNine() {
        var choice = new RepairOrReplace(spread("900.00", 3), spread("5200.00", 11), gas("78", "82"), usd("150.00"));

        assertThat(choice.keeping()).isEqualTo(usd("480.49"));
        assertThat(choice.replacing()).isEqualTo(usd("567.48"));
        assertThat(choice.replaceIsCheaper()).isFalse();
        assertThat(choice.replacing().minus(choice.keeping())).isEqualTo(usd("86.99"));
    }

    @Test
    void aRepairThatLastsOneYearLoses() {
        var choice = new RepairOrReplace(spread("900.00", 1), spread("5200.00", 11), gas("78", "82"), usd("150.00"));

        assertThat(choice.repair().perYear()).isEqualTo(usd("945.00"));
        assertThat(choice.keeping()).isEqualTo(usd("1095.00"));
        assertThat(choice.replaceIsCheaper()).isTrue();
    }

    @Test
    void theBreakEvenLifeIsWhereBothCostTheSame() {
        var choice = new RepairOrReplace(spread("900.00", 3), spread("5200.00", 11), gas("78", "82"), usd("150.00"));

        // What is left for the repair is 417.48 a year: n = -ln(1 - 45 / 417.48) / ln(1.05) = 2.337.
        assertThat(choice.breakEvenYears()).contains(new BigDecimal("2.3"));
        assertThat(choice.sentences().get(1)).contains("2.3 years");
    }

    @Test
    void aRepairThatNeverPaysSaysSo() {
        var choice = new RepairOrReplace(spread("4000.00", 3), spread("2000.00", 11), gas("78", "82"), usd("150.00"));

        assertThat(choice.breakEvenYears()).isEmpty();
        assertThat(choice.sentences().get(1)).contains("however long");
    }

    @Test
    void withoutInterestTheBreakEvenLifeIsAQuotient() {
        var choice = new RepairOrReplace(
                new YearlyCost(usd("900.00"), 3, Percent.ZERO),
                new YearlyCost(usd("4400.00"), 11, Percent.ZERO),
                gas("80", "80"),
                usd("100.00"));

        assertThat(choice.breakEvenYears()).contains(new BigDecimal("3.0"));
    }

    @Test
    void bothAreShownWhenTheRepairIsDearAndTheHeaterOld() {
        var dear = new RepairOrReplace(spread("2700.00", 5), spread("5200.00", 11), gas("78", "82"), usd("0.00"));
        var cheap = new RepairOrReplace(spread("2600.00", 5), spread("5200.00", 11), gas("78", "82"), usd("0.00"));

        assertThat(dear.showBoth(8)).isTrue();
        assertThat(dear.showBoth(7)).isFalse();
        assertThat(cheap.showBoth(8)).isFalse();
    }

    @Test
    void everyAssumptionIsPrinted() {
        var choice = new RepairOrReplace(spread("900.00", 3), spread("5200.00", 11), gas("78", "82"), usd("150.00"));

        assertThat(choice.sentences().get(0))
                .contains("480.49 USD", "567.48 USD", "the repair is cheaper by 86.99 USD");
        assertThat(choice.sentences().get(2)).contains("3 years", "11", "5 %", "1200.00 USD", "78 %", "82 %", "150.00");
    }

    @Test
    void impossibleInputIsRefused() {
        assertThatThrownBy(() -> spread("900.00", 0)).isInstanceOf(Refusal.OutOfRange.class);
        assertThatThrownBy(() -> spread("-1.00", 3)).isInstanceOf(Refusal.OutOfRange.class);
        assertThatThrownBy(() -> new YearlyCost(usd("900.00"), 3, Percent.parse("31")))
                .isInstanceOf(Refusal.OutOfRange.class)
                .hasMessageContaining("31 %");
        assertThatThrownBy(() -> gas("0", "82")).isInstanceOf(Refusal.OutOfRange.class);
    }

    private static YearlyCost spread(String amount, int years) {
        return new YearlyCost(usd(amount), years, Percent.parse("5"));
    }

    private static RepairOrReplace.GasUse gas(String before, String after) {
        return new RepairOrReplace.GasUse(usd("1200.00"), Percent.parse(before), Percent.parse(after));
    }

    private static Money usd(String amount) {
        return Money.of(CurrencyUnit.USD, new BigDecimal(amount));
    }
}

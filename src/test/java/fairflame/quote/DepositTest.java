package fairflame.quote;

import static fairflame.quote.DemoShop.pct;
import static fairflame.quote.DemoShop.usd;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fairflame.Refusal;
import fairflame.catalog.DepositRule;
import java.util.Optional;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Caps as read in state law: California, lesser of 10 % and 1,000; Maryland, at most one third. */
class DepositTest {
    @ParameterizedTest(name = "of {0}: {1}")
    @CsvSource({"9800.00, 980.00", "14500.00, 1000.00", "287.21, 28.72", "0.00, 0.00"})
    void theLesserOfTenPercentAndAThousand(String contract, String most) {
        assertThat(Deposit.of(DemoShop.TENTH, usd(contract))).isEqualTo(usd(most));
    }

    @Test
    void oneThirdIsRoundedDown() {
        // 1,333.34 would be above a third
        assertThat(Deposit.of(DemoShop.STRICT.deposit(), usd("4000.00"))).isEqualTo(usd("1333.33"));
    }

    @Test
    void aShopThatAsksNothingGetsNothing() {
        var none = new DepositRule(pct("0"), Optional.of(pct("10")), Optional.empty(), "invented for the demo");
        assertThat(Deposit.of(none, usd("640.00"))).isEqualTo(usd("0.00"));
    }

    @Test
    void aShopMayAskLessThanTheCap() {
        var less = new DepositRule(pct("5"), Optional.of(pct("10")), Optional.empty(), "invented for the demo");
        assertThat(Deposit.of(less, usd("99.99"))).isEqualTo(usd("4.99"));
        assertThat(Deposit.words(less))
                .isEqualTo(
                        "the shop asks 5 % of the total, the place allows at most 10 %; the least counts, rounded down");
        assertThat(Deposit.words(DemoShop.TENTH)).contains("at most 10 %, the place allows at most USD 1000.00;");
    }

    @Test
    void aCapOfAnotherCurrencyIsRefused() {
        var euro = new DepositRule(
                pct("5"), Optional.empty(), Optional.of(Money.of(CurrencyUnit.EUR, 1000)), "invented for the demo");
        assertThatThrownBy(() -> Deposit.of(euro, usd("10.00"))).isInstanceOf(Refusal.NotAllowed.class);
    }
}

package fairflame.money;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fairflame.Refusal;
import java.math.BigDecimal;
import java.util.Random;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RoundingTest {
    private static final CurrencyUnit USD = CurrencyUnit.USD;

    // Streamlined Sales and Use Tax Agreement, section 324: to the third decimal, up when that is above 4. A tie such
    // as
    // 10.005 goes up; a credit mirrors it.
    @ParameterizedTest(name = "{0} is {1}")
    @CsvSource(textBlock = """
        10.004,    10.00
        10.0049,   10.00
        10.005,    10.01
        10.015,    10.02
        1.49495,    1.49
        -10.005,  -10.01
        -10.004,  -10.00
        """)
    void theNearestCentWithTiesAwayFromZero(BigDecimal exact, BigDecimal cents) {
        assertThat(Rounding.NEAREST.apply(USD, exact)).isEqualTo(Money.of(USD, cents));
    }

    @ParameterizedTest(name = "{0} is {1}")
    @CsvSource({"1333.339, 1333.33", "0.009, 0.00", "-0.009, 0.00", "6.586, 6.58"})
    void downIsTowardsZero(BigDecimal exact, BigDecimal cents) {
        assertThat(Rounding.DOWN.apply(USD, exact)).isEqualTo(Money.of(USD, cents));
    }

    @Test
    void roundingTwiceWouldBeWrong() {
        // 20.62 x 7.25 % = 1.49495: once 1.49; by way of three places 1.495 and then 1.50
        assertThat(Rounding.NEAREST.times(Money.of(USD, new BigDecimal("20.62")), new BigDecimal("0.0725")))
                .isEqualTo(Money.of(USD, new BigDecimal("1.49")));
    }

    @Test
    void aCreditMirrorsItsInvoice() {
        var seed = 324L;
        var random = new Random(seed);
        for (int i = 0; i < 5_000; i++) {
            var exact = BigDecimal.valueOf(random.nextInt(1_000_000), 1 + random.nextInt(6));
            for (var rounding : Rounding.values()) {
                assertThat(rounding.apply(USD, exact)
                                .plus(rounding.apply(USD, exact.negate()))
                                .isZero())
                        .as("seed %d case %d: %s %s", seed, i, rounding, exact)
                        .isTrue();
            }
        }
    }

    @Test
    void readsItsName() {
        assertThat(Rounding.parse(" Nearest ")).isEqualTo(Rounding.NEAREST);
        assertThat(Rounding.parse("down")).isEqualTo(Rounding.DOWN);
        assertThatThrownBy(() -> Rounding.parse("bankers"))
                .isInstanceOf(Refusal.Unknown.class)
                .hasMessageContaining("nearest, down");
    }
}

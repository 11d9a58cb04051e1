package fairflame.repair;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fairflame.Refusal;
import fairflame.money.Percent;
import java.math.BigDecimal;
import java.util.Random;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Figures worked by hand at 145.00 an hour, part 48.00, trip 89.00; prices invented for the demo. */
class PairArithmeticTest {
    private final PairArithmetic pair = visits("0.00");

    @Test
    void bothCostNinetyOneFiftyMoreThanOne() {
        assertThat(pair.one()).isEqualTo(usd("200.25"));
        assertThat(pair.both()).isEqualTo(usd("291.75"));
        assertThat(pair.later()).isEqualTo(usd("289.25"));
        assertThat(pair.difference()).isEqualTo(usd("91.50"));
    }

    @Test
    void theBreakEvenIsTheDifferenceOverTheLaterVisit() {
        assertThat(pair.breakEven()).isEqualTo("0.316");
        assertThat(visits("120.00").breakEven()).isEqualTo("0.224");
    }

    @Test
    void countingTheAccessTwiceGivesTheWrongAnswer() {
        // Two switches at 1.05 h each instead of 1.35 h together: 304.50 + 96.00 = 400.50.
        var wrong = new PairArithmetic(usd("200.25"), usd("400.50"), usd("289.25"), BigDecimal.ONE, usd("0.00"));

        assertThat(wrong.difference()).isEqualTo(usd("200.25"));
        assertThat(wrong.breakEven()).isEqualTo("0.692");
    }

    @ParameterizedTest(name = "at a chance of {0} % the later visit costs {1} on average")
    @CsvSource({"10, 28.93, ONE", "30, 86.78, ONE", "32, 92.56, BOTH", "60, 173.55, BOTH"})
    void theChanceDecides(String chance, String expected, PairArithmetic.Cheaper cheaper) {
        assertThat(pair.expectedLater(Percent.parse(chance))).isEqualTo(usd(expected));
        assertThat(pair.cheaper(Percent.parse(chance))).isEqualTo(cheaper);
    }

    @Test
    void atSixtyInAHundredBothSaveEightyTwoOhFive() {
        var saved = pair.expectedLater(Percent.parse("60")).minus(pair.difference());

        assertThat(saved).isEqualTo(usd("82.05"));
    }

    @Test
    void aBreakEvenAboveOneNeverPaysAndOneBelowZeroAlwaysDoes() {
        var never = new PairArithmetic(usd("100.00"), usd("400.00"), usd("200.00"), BigDecimal.ONE, usd("0.00"));
        var always = new PairArithmetic(usd("100.00"), usd("90.00"), usd("200.00"), BigDecimal.ONE, usd("0.00"));

        assertThat(never.sentences().get(1)).contains("never pay");
        assertThat(never.cheaper(Percent.parse("100"))).isEqualTo(PairArithmetic.Cheaper.ONE);
        assertThat(always.sentences().get(1)).contains("never dearer");
        assertThat(always.cheaper(Percent.ZERO)).isEqualTo(PairArithmetic.Cheaper.BOTH);
    }

    @Test
    void anEvenResultKeepsTheGoodPart() {
        var even = new PairArithmetic(usd("100.00"), usd("150.00"), usd("100.00"), BigDecimal.ONE, usd("0.00"));
        var certain = new PairArithmetic(usd("100.00"), usd("200.00"), usd("100.00"), BigDecimal.ONE, usd("0.00"));

        assertThat(even.cheaper(Percent.parse("50"))).isEqualTo(PairArithmetic.Cheaper.ONE);
        assertThat(certain.sentences().get(1)).contains("above 1.000");
        assertThat(certain.expectedLater(Percent.parse("100"))).isEqualTo(usd("100.00"));
        assertThat(certain.expectedLater(Percent.ZERO)).isEqualTo(usd("0.00"));
    }

    @Test
    void laterMoneyAndColdDaysMoveTheBreakEven() {
        var discounted =
                new PairArithmetic(usd("200.25"), usd("291.75"), usd("289.25"), new BigDecimal("0.9"), usd("50.00"));

        // 91.50 / (0.9 x 289.25 + 50.00) = 91.50 / 310.325
        assertThat(discounted.breakEven()).isEqualTo("0.295");
        assertThat(discounted.sentences().get(2)).contains("counted at 0.9", "without heat valued at 50.00 USD");
        assertThat(pair.sentences().get(2)).contains("counted in full", "days without heat not counted");
    }

    @Test
    void theSentencesNameTheBreakEvenAndWhatWasAssumed() {
        assertThat(pair.sentences().get(1)).contains("0.316").contains("32 in 100");
        assertThat(pair.sentences().get(2)).startsWith("Assumed").contains("replaced whatever this says");
    }

    @Test
    void cheaperChangesSidesExactlyAtTheBreakEven() {
        var random = new Random(20260301);
        for (int i = 0; i < 500; i++) {
            var one = Money.ofMinor(CurrencyUnit.USD, 5_000 + random.nextInt(50_000));
            var both = one.plusMinor(1 + random.nextInt(30_000));
            var later = Money.ofMinor(CurrencyUnit.USD, 10_000 + random.nextInt(60_000));
            var chance = new Percent(BigDecimal.valueOf(random.nextInt(101)));
            var drawn = new PairArithmetic(one, both, later, BigDecimal.ONE, usd("0.00"));
            var worth = later.getAmount()
                            .multiply(chance.factor())
                            .compareTo(drawn.difference().getAmount())
                    > 0;

            assertThat(drawn.cheaper(chance) == PairArithmetic.Cheaper.BOTH)
                    .as("seed 20260301, draw %d: %s at %s", i, drawn, chance)
                    .isEqualTo(worth);
        }
    }

    @Test
    void impossibleInputIsRefused() {
        assertThatThrownBy(() -> pair.cheaper(Percent.parse("101")))
                .isInstanceOf(Refusal.OutOfRange.class)
                .hasMessageContaining("101 %");
        assertThatThrownBy(() ->
                        new PairArithmetic(usd("1.00"), usd("2.00"), usd("3.00"), new BigDecimal("1.1"), usd("0.00")))
                .isInstanceOf(Refusal.OutOfRange.class)
                .hasMessageContaining("discount factor");
        assertThatThrownBy(() -> new PairArithmetic(usd("1.00"), usd("2.00"), usd("0.00"), BigDecimal.ONE, usd("0.00")))
                .isInstanceOf(Refusal.OutOfRange.class)
                .hasMessageContaining("later visit");
    }

    private static PairArithmetic visits(String diagnosis) {
        return PairArithmetic.ofVisits(usd("152.25"), usd("195.75"), usd("48.00"), usd("89.00"), usd(diagnosis));
    }

    private static Money usd(String amount) {
        return Money.of(CurrencyUnit.USD, new BigDecimal(amount));
    }
}

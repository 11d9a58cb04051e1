package fairflame.money;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fairflame.Refusal;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class AmountsTest {
    private static final CurrencyUnit USD = CurrencyUnit.USD;

    private static Money usd(String amount) {
        return Money.of(USD, new BigDecimal(amount));
    }

    private static List<BigDecimal> weights(String... digits) {
        return Stream.of(digits).map(BigDecimal::new).toList();
    }

    @Test
    void readsAndWritesPlainDigits() {
        assertThat(Amounts.parse(USD, " 1250.5 ")).isEqualTo(usd("1250.50"));
        assertThat(Amounts.parse(USD, "-3")).isEqualTo(usd("-3.00"));
        assertThat(Amounts.plain(usd("1250.5"))).isEqualTo("1250.50");
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "1,250.00", "12.345", "$5", "1e3", "NaN", "1234567890123"})
    void refusesTextThatIsNoAmount(String text) {
        assertThatThrownBy(() -> Amounts.parse(USD, text))
                .isInstanceOf(Refusal.Malformed.class)
                .hasMessageContaining("amount of money");
    }

    @Test
    void addsWithinOneCurrencyOnly() {
        assertThat(Amounts.sum(USD, List.of())).isEqualTo(usd("0.00"));
        assertThat(Amounts.sum(USD, List.of(usd("0.10"), usd("0.20")))).isEqualTo(usd("0.30"));
        assertThatThrownBy(() -> Amounts.sum(USD, List.of(Money.of(CurrencyUnit.EUR, 1))))
                .isInstanceOf(Refusal.NotAllowed.class)
                .hasMessageContaining("EUR")
                .hasMessageContaining("USD");
    }

    @Test
    void sharesAddUpAndTheLargestRemainderGetsTheCent() {
        // 25 x 109.19 / 304.94 = 8.9518, 25 x 195.75 / 304.94 = 16.0482: worked by hand
        assertThat(Amounts.allocate(usd("25.00"), weights("109.19", "195.75")))
                .containsExactly(usd("8.95"), usd("16.05"));
        assertThat(Amounts.allocate(usd("100.00"), weights("1", "1", "1")))
                .containsExactly(usd("33.34"), usd("33.33"), usd("33.33"));
        assertThat(Amounts.allocate(usd("0.05"), weights("3", "7"))).containsExactly(usd("0.02"), usd("0.03"));
        assertThat(Amounts.allocate(usd("-100.00"), weights("1", "1", "1")))
                .containsExactly(usd("-33.34"), usd("-33.33"), usd("-33.33"));
        assertThat(Amounts.allocate(usd("1.00"), weights("0", "1"))).containsExactly(usd("0.00"), usd("1.00"));
    }

    @Test
    void nothingCanBeSharedAmongNobody() {
        assertThat(Amounts.allocate(usd("0.00"), weights("0", "0"))).containsExactly(usd("0.00"), usd("0.00"));
        assertThatThrownBy(() -> Amounts.allocate(usd("1.00"), weights("0", "0")))
                .isInstanceOf(Refusal.NotAllowed.class);
        assertThatThrownBy(() -> Amounts.allocate(usd("0.00"), List.of())).isInstanceOf(Refusal.NotAllowed.class);
        assertThatThrownBy(() -> Amounts.allocate(usd("1.00"), weights("2", "-1")))
                .isInstanceOf(Refusal.OutOfRange.class)
                .hasMessageContaining("weight");
    }

    @Test
    void everyShareLiesWithinACentOfItsExactValueAndTheSumIsExact() {
        var seed = 724L;
        var random = new Random(seed);
        for (int i = 0; i < 5_000; i++) {
            var amount = Money.ofMinor(USD, random.nextInt(2_000_001) - 1_000_000);
            var weights = IntStream.rangeClosed(0, random.nextInt(12))
                    .mapToObj(any -> BigDecimal.valueOf(random.nextInt(1_000_000), random.nextInt(4)))
                    .toList();
            var total = weights.stream().reduce(BigDecimal.ZERO, BigDecimal::add);
            if (total.signum() == 0) {
                continue;
            }
            var shares = Amounts.allocate(amount, weights);
            var at = "seed " + seed + " case " + i + ": " + amount + " over " + weights;
            assertThat(Amounts.sum(USD, shares)).as(at).isEqualTo(amount);
            for (int s = 0; s < shares.size(); s++) {
                var exact = amount.getAmount().multiply(weights.get(s)).divide(total, MathContext.DECIMAL128);
                assertThat(shares.get(s).getAmount().subtract(exact).abs())
                        .as(at)
                        .isLessThan(new BigDecimal("0.01"));
            }
        }
    }

    @Test
    void aLargerWeightNeverGetsLess() {
        var seed = 725L;
        var random = new Random(seed);
        for (int i = 0; i < 2_000; i++) {
            var weights = new ArrayList<>(IntStream.rangeClosed(0, 5)
                    .mapToObj(any -> BigDecimal.valueOf(1 + random.nextInt(1_000)))
                    .toList());
            var amount = Money.ofMinor(USD, random.nextInt(100_000));
            Collections.sort(weights, Collections.reverseOrder());
            var shares = Amounts.allocate(amount, weights);
            assertThat(shares)
                    .as("seed %d case %d: %s over %s", seed, i, amount, weights)
                    .isSortedAccordingTo(Collections.reverseOrder());
        }
    }
}

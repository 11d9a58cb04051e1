package fairflame.money;

import fairflame.Refusal;
import java.math.BigDecimal;

/**
 * A percentage kept exactly: 7.25 is 7.25 %.
 *
 * @param value percent, -100 to 10,000
 */
public record Percent(BigDecimal value) {
    private static final BigDecimal LOWEST = BigDecimal.valueOf(-100);
    private static final BigDecimal HIGHEST = BigDecimal.valueOf(10_000);
    public static final Percent ZERO = new Percent(BigDecimal.ZERO);

    public Percent {
        if (value.compareTo(LOWEST) < 0 || value.compareTo(HIGHEST) > 0) {
            throw Refusal.outOfRange("percentage", value.toPlainString() + " %", "-100 to 10000 %");
        }
        value = value.signum() == 0 ? BigDecimal.ZERO : value.stripTrailingZeros();
    }

    /** Reads digits without the sign, such as {@code 7.25}; a sign at the end is accepted. */
    public static Percent parse(String text) {
        var digits = text.strip().replaceFirst("\\s*%$", "");
        if (!digits.matches("-?\\d{1,5}(\\.\\d{1,6})?")) {
            throw Refusal.malformed("percentage", text, "digits such as 7.25");
        }
        return new Percent(new BigDecimal(digits));
    }

    /** As a factor: 7.25 % is 0.0725. */
    public BigDecimal factor() {
        return value.movePointLeft(2);
    }

    public Percent plus(Percent other) {
        return new Percent(value.add(other.value));
    }

    @Override
    public String toString() {
        return value.toPlainString() + " %";
    }
}

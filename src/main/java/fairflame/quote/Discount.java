package fairflame.quote;

import fairflame.Refusal;
import fairflame.money.Percent;
import fairflame.money.Rounding;
import java.math.BigDecimal;
import java.util.Optional;
import org.joda.money.Money;

/**
 * Something taken off before tax: a percentage or an amount.
 *
 * @param reason printed beside it
 * @param percent 0 to 100 %, zero when an amount is given
 * @param amount zero or more
 */
public record Discount(String reason, Percent percent, Optional<Money> amount) {
    public Discount {
        if (percent.value().signum() < 0 || percent.factor().compareTo(BigDecimal.ONE) > 0) {
            throw Refusal.outOfRange("discount", percent, "0 to 100 %");
        }
        if (amount.isPresent() && amount.get().isNegative()) {
            throw Refusal.outOfRange("discount", amount.get(), "zero or more");
        }
        if (amount.isPresent() && percent.value().signum() != 0) {
            throw Refusal.notAllowed("discount", percent + " and " + amount.get(), "a percentage or an amount");
        }
        if (reason.isBlank()) {
            throw Refusal.missing("reason of a discount", "a few words that the customer can read");
        }
    }

    public static Discount ofPercent(String reason, Percent percent) {
        return new Discount(reason, percent, Optional.empty());
    }

    public static Discount ofAmount(String reason, Money amount) {
        return new Discount(reason, Percent.ZERO, Optional.of(amount));
    }

    /** What it takes off a base, rounded once; refused when it takes more than there is. */
    Money from(Money base) {
        var off = amount.orElseGet(() -> Rounding.NEAREST.times(base, percent.factor()));
        if (off.isGreaterThan(base)) {
            throw Refusal.outOfRange("discount", off, "at most " + base + ", what may be discounted");
        }
        return off;
    }

    /** As printed, such as "10 %" or "USD 25.00". */
    String size() {
        return amount.map(Money::toString).orElseGet(percent::toString);
    }
}

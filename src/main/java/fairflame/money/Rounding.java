package fairflame.money;

import fairflame.Refusal;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/** How an exact amount becomes whole cents. Applied once, to the exact amount, never to one already rounded. */
public enum Rounding {
    /**
     * To the nearest cent, a tie away from zero, so that a credit mirrors its invoice. Satisfies the rule of the
     * Streamlined Sales and Use Tax Agreement, section 324 (up when the third decimal is above 4).
     */
    NEAREST(RoundingMode.HALF_UP),
    /** To the cent below in size. UK VAT, internal manual VATREC12010: the tax total of an invoice; deposit caps. */
    DOWN(RoundingMode.DOWN);

    private final RoundingMode mode;

    Rounding(RoundingMode mode) {
        this.mode = mode;
    }

    /** An exact amount in whole cents. */
    public Money apply(CurrencyUnit currency, BigDecimal exact) {
        return Money.of(currency, exact, mode);
    }

    /** An amount times an exact factor, in whole cents. */
    public Money times(Money amount, BigDecimal factor) {
        return amount.multipliedBy(factor, mode);
    }

    /** Reads the name as written in a shop's files. */
    public static Rounding parse(String text) {
        return switch (text.strip().toLowerCase(Locale.ROOT)) {
            case "nearest" -> NEAREST;
            case "down" -> DOWN;
            default -> throw Refusal.unknown("rounding", text, "nearest, down");
        };
    }
}

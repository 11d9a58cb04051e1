package fairflame.quantity;

import fairflame.Refusal;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.regex.Pattern;

/**
 * A number with its unit, kept as it was typed: a reading comes back in the digits and the unit of the instrument.
 *
 * @param value the digits as typed; finite by construction
 * @param unit the unit as typed
 */
public record Measure(BigDecimal value, Unit unit) {
    // Commas only between thousands: a comma before a decimal part would otherwise be read as a tenfold value.
    private static final Pattern TEXT = Pattern.compile(
            "\\s*([+-]?(?:\\d{1,3}(?:,\\d{3}){1,3}|\\d{1,12})?(?:\\.\\d{1,9})?)\\s*((?:[^\\d\\s.,]\\S*)?)\\s*");

    /** Reads text such as {@code 10.1 inwc}, {@code 60ft} or {@code 22kilohm}; the unit must be there. */
    public static Measure parse(Dimension dimension, String text) {
        var match = TEXT.matcher(text);
        if (!match.matches() || match.group(1).chars().noneMatch(Character::isDigit)) {
            throw Refusal.malformed(
                    dimension.words(),
                    text,
                    "a number and a unit (" + Unit.allowed(dimension) + "), such as 7"
                            + Unit.baseOf(dimension).spelling());
        }
        if (match.group(2).isEmpty()) {
            throw Refusal.missing(
                    "unit of " + dimension.words() + " in '" + text.strip() + "'", Unit.allowed(dimension));
        }
        return new Measure(new BigDecimal(match.group(1).replace(",", "")), Unit.of(dimension, match.group(2)));
    }

    /** The value in another unit of the same dimension. */
    public double in(Unit other) {
        if (other.dimension() != unit.dimension()) {
            throw Refusal.notAllowed(
                    "unit", other.symbol(), "a unit of " + unit.dimension().words());
        }
        return other == unit ? value.doubleValue() : other.fromBase(unit.toBase(value.doubleValue()));
    }

    /** A computed value, to twelve digits. */
    public static Measure of(double value, Unit unit) {
        if (!Double.isFinite(value)) {
            throw Refusal.outOfRange(unit.dimension().words(), value, "a finite number");
        }
        return new Measure(new BigDecimal(value, new MathContext(12)).stripTrailingZeros(), unit);
    }

    /** Digits and printed unit, such as {@code 10.1 in w.c.}. */
    @Override
    public String toString() {
        return value.toPlainString() + " " + unit.symbol();
    }
}

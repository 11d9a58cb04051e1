package fairflame.diagnosis;

import fairflame.Refusal;
import java.math.BigDecimal;
import java.util.regex.Pattern;

/**
 * Both ends included; the upper one may be infinite.
 *
 * @param lowest in the unit of the check
 * @param highest in the unit of the check
 */
public record Range(double lowest, double highest) {
    private static final Pattern TEXT = Pattern.compile("\\s*(-?\\d+(?:\\.\\d+)?) to (-?\\d+(?:\\.\\d+)?|open)\\s*");

    public Range {
        if (!(lowest <= highest)) {
            throw Refusal.malformed("range", lowest + " to " + highest, "the lower end first");
        }
    }

    /** Reads {@code 0 to 60} or {@code 0 to open}. */
    static Range parse(String text) {
        var match = TEXT.matcher(text);
        if (!match.matches()) {
            throw Refusal.malformed("range", text, "such as '0 to 60' or '0 to open'");
        }
        var end = match.group(2);
        return new Range(
                Double.parseDouble(match.group(1)),
                end.equals("open") ? Double.POSITIVE_INFINITY : Double.parseDouble(end));
    }

    boolean covers(double value) {
        return value >= lowest && value <= highest;
    }

    private static String plain(double end) {
        return new BigDecimal(String.valueOf(end)).stripTrailingZeros().toPlainString();
    }

    @Override
    public String toString() {
        return plain(lowest) + (Double.isInfinite(highest) ? " and more" : " to " + plain(highest));
    }
}

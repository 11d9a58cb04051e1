package fairflame.store;

import fairflame.Refusal;
import java.util.Locale;
import java.util.regex.Pattern;

/**
 * A number of a series that starts again each year, such as {@code I-2026-0001}.
 *
 * @param series one capital letter, then up to eleven capitals or digits
 * @param year four digits
 * @param sequence from 1, written with four digits or more
 */
record SerialNumber(String series, int year, long sequence) {
    private static final Pattern SHAPE = Pattern.compile("([A-Z][A-Z0-9]{0,11})-(\\d{4})-(\\d{4}|[1-9]\\d{4,9})");

    SerialNumber {
        if (!series.matches("[A-Z][A-Z0-9]{0,11}")) {
            throw Refusal.malformed(
                    "series of numbers", series, "a capital letter, then capitals or digits, such as I");
        }
        if (year < 1000 || year > 9999) {
            throw Refusal.outOfRange("year of a number", year, "1000 to 9999");
        }
        if (sequence < 1) {
            throw Refusal.outOfRange("running number", sequence, "1 or more");
        }
    }

    /** Reads what {@link #toString} writes. */
    static SerialNumber parse(String text) {
        var match = SHAPE.matcher(text);
        if (!match.matches()) {
            throw Refusal.malformed("number", text, "series, year and running number, such as Q-2026-0001");
        }
        return new SerialNumber(match.group(1), Integer.parseInt(match.group(2)), Long.parseLong(match.group(3)));
    }

    @Override
    public String toString() {
        return String.format(Locale.ROOT, "%s-%04d-%04d", series, year, sequence);
    }
}

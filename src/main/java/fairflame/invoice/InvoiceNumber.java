package fairflame.invoice;

import fairflame.Refusal;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * A number without gaps in its series and year, such as {@code I-2026-0001}. Given at issue and never used again.
 *
 * @param series a capital letter, then up to eleven capitals or digits
 * @param year four digits
 * @param sequence from 1, written with four digits or more
 */
public record InvoiceNumber(String series, int year, long sequence) {
    private static final Pattern SHAPE = Pattern.compile("([A-Z][A-Z0-9]{0,11})-(\\d{4})-(\\d{4}|[1-9]\\d{4,9})");

    public InvoiceNumber {
        if (!series.matches("[A-Z][A-Z0-9]{0,11}")) {
            throw Refusal.malformed(
                    "series of invoices", series, "a capital letter, then capitals or digits, such as I");
        }
        if (year < 1000 || year > 9999) {
            throw Refusal.outOfRange("year of an invoice number", year, "1000 to 9999");
        }
        if (sequence < 1) {
            throw Refusal.outOfRange("sequence of an invoice number", sequence, "1 or more");
        }
    }

    /** Reads what {@link #toString} writes. */
    public static InvoiceNumber parse(String text) {
        var match = SHAPE.matcher(text);
        if (!match.matches()) {
            throw Refusal.malformed("invoice number", text, "series, year and sequence, such as I-2026-0001");
        }
        return new InvoiceNumber(match.group(1), Integer.parseInt(match.group(2)), Long.parseLong(match.group(3)));
    }

    /**
     * The number after the last one of this series and year; 1 when there is none yet.
     *
     * @param last the last number given in this series and year
     */
    public static InvoiceNumber next(Optional<InvoiceNumber> last, String series, int year) {
        last.ifPresent(number -> {
            if (!number.series.equals(series) || number.year != year) {
                throw Refusal.notAllowed(
                        "last invoice number", number, "a number of series " + series + " and year " + year);
            }
        });
        return new InvoiceNumber(series, year, last.map(InvoiceNumber::sequence).orElse(0L) + 1);
    }

    @Override
    public String toString() {
        return String.format(Locale.ROOT, "%s-%04d-%04d", series, year, sequence);
    }
}

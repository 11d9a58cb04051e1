package fairflame.catalog;

import fairflame.Refusal;
import fairflame.money.Amounts;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/** What the text of one field can be read as. Each refusal says value and allowed; the caller adds the place. */
final class Fields {
    private Fields() {}

    static String filled(String text) {
        if (text.isBlank()) {
            throw Refusal.missing("value", "some text");
        }
        return text.strip();
    }

    /** A plain decimal number inside a range, both ends included. */
    static BigDecimal decimal(String text, String lowest, String highest) {
        if (!text.strip().matches("-?\\d{1,9}(\\.\\d{1,6})?")) {
            throw Refusal.malformed("number", text, "digits such as 0.25, " + lowest + " to " + highest);
        }
        var value = new BigDecimal(text.strip());
        if (value.compareTo(new BigDecimal(lowest)) < 0 || value.compareTo(new BigDecimal(highest)) > 0) {
            throw Refusal.outOfRange("number", text.strip(), lowest + " to " + highest);
        }
        return value;
    }

    static int whole(String text, int lowest, int highest) {
        if (!text.strip().matches("-?\\d{1,9}")) {
            throw Refusal.malformed("number", text, "a whole number, " + lowest + " to " + highest);
        }
        var value = Integer.parseInt(text.strip());
        if (value < lowest || value > highest) {
            throw Refusal.outOfRange("number", value, lowest + " to " + highest);
        }
        return value;
    }

    /** An amount of zero or more, in plain digits with at most two decimals. */
    static Money money(String text, CurrencyUnit currency) {
        var amount = Amounts.parse(currency, text);
        if (amount.isNegative()) {
            throw Refusal.outOfRange("amount of money", text.strip(), "zero or more");
        }
        return amount;
    }

    static boolean flag(String text) {
        return switch (text.strip().toLowerCase(Locale.ROOT)) {
            case "yes", "true" -> true;
            case "no", "false" -> false;
            default -> throw Refusal.malformed("answer", text, "yes, no");
        };
    }

    /** Words divided by blanks, commas or semicolons; none for a blank text. */
    static List<String> words(String text) {
        return Arrays.stream(text.strip().split("[\\s,;]+"))
                .filter(word -> !word.isEmpty())
                .toList();
    }

    /** A short name for use as a key: letters, digits and dashes. */
    static String id(String text) {
        if (!text.strip().matches("[A-Za-z0-9][A-Za-z0-9._-]{0,59}")) {
            throw Refusal.malformed("id", text, "up to 60 letters, digits, dots and dashes");
        }
        return text.strip();
    }

    static CurrencyUnit currency(String text) {
        var code = text.strip();
        return CurrencyUnit.registeredCurrencies().stream()
                .filter(unit -> unit.getCode().equals(code))
                .findFirst()
                .orElseThrow(() -> Refusal.unknown("currency", text, "a three-letter code of ISO 4217, such as USD"));
    }
}

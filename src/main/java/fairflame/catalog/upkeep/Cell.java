package fairflame.catalog.upkeep;

import fairflame.Refusal;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;
import java.util.regex.Pattern;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/** Reads the text of a cell; a refusal tells what is allowed. */
final class Cell {
    private static final Pattern AMOUNT =
            Pattern.compile("[^\\d\\s.,-]{0,3}\\s?(\\d{1,9}|\\d{1,3}(,\\d{3}){1,2})(\\.\\d+)?");
    // Spreadsheets store binary numbers: 48.35 may come as 48.350000000000001. Beyond this decimal there is only noise.
    private static final int NOISE = 9;

    private Cell() {}

    /** An amount above zero in whole cents; thousands commas and a currency sign in front are passed over. */
    static Money money(String what, String text, CurrencyUnit currency) {
        if (!AMOUNT.matcher(text).matches()) {
            throw Refusal.malformed(what, text, "an amount such as 48.35 or 1,250.00");
        }
        var exact = new BigDecimal(text.replaceAll("[^\\d.]", ""))
                .setScale(NOISE, RoundingMode.HALF_UP)
                .stripTrailingZeros();
        if (exact.scale() > currency.getDecimalPlaces()) {
            throw Refusal.malformed(what, text, "whole cents");
        }
        if (exact.signum() == 0) {
            throw Refusal.outOfRange(what, text, "above zero");
        }
        return Money.of(currency, exact);
    }

    static String number(String text) {
        // A spreadsheet that took a part number for a number writes 1042 as 1042.0.
        var plain = text.matches("\\d{1,15}\\.0") ? text.substring(0, text.length() - 2) : text;
        if (!plain.matches("[A-Za-z0-9][A-Za-z0-9._/-]{0,59}")) {
            throw Refusal.malformed("part number", text, "up to 60 letters, digits, dots, dashes and slashes");
        }
        return plain;
    }

    static String words(String what, String text) {
        if (text.length() > 300 || text.chars().anyMatch(Character::isISOControl)) {
            throw Refusal.malformed(
                    what,
                    text.length() > 60 ? text.substring(0, 60) + "..." : text,
                    "up to 300 printable characters in one line");
        }
        return text;
    }

    static boolean flag(String what, String text) {
        return switch (text.toLowerCase(Locale.ROOT)) {
            case "yes", "y", "true", "1" -> true;
            case "no", "n", "false", "0" -> false;
            default -> throw Refusal.malformed(what, text, "yes, no");
        };
    }

    static int months(String text) {
        if (!text.matches("\\d{1,3}(\\.0)?") || Double.parseDouble(text) > 600) {
            throw Refusal.outOfRange("warranty months", text, "0 to 600");
        }
        return (int) Double.parseDouble(text);
    }
}

package fairflame.document;

import fairflame.Refusal;
import fairflame.money.Percent;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/**
 * Numbers, money and dates as a layout file writes them. Nothing here depends on the machine's own language.
 *
 * @param decimal between units and decimals
 * @param group between thousands
 * @param currencies sign by currency code; a currency without a sign is printed with its code
 * @param percent sentence with {@code {rate}}
 * @param date sentence with {@code {year}}, {@code {month}} and {@code {day}}
 * @param months twelve names
 */
record Figures(
        String decimal,
        String group,
        Map<String, String> currencies,
        String percent,
        String date,
        List<String> months) {
    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);

    Figures {
        currencies = Map.copyOf(currencies);
        months = List.copyOf(months);
    }

    static Figures parse(Yaml yaml) {
        var numbers = yaml.named("numbers");
        var months = yaml.texts("months");
        if (months.size() != 12) {
            throw Refusal.outOfRange("months", months.size() + " names", "12 names")
                    .at(yaml.file());
        }
        return new Figures(
                numbers.getOrDefault("decimal", "."),
                numbers.getOrDefault("group", ","),
                yaml.named("currencies"),
                yaml.text("percent"),
                yaml.text("date"),
                months);
    }

    /** All decimals that the number carries, thousands grouped. */
    String number(BigDecimal value) {
        var plain = value.abs().toPlainString();
        int point = plain.indexOf('.');
        var whole = point < 0 ? plain : plain.substring(0, point);
        var grouped = new StringBuilder(whole);
        for (int i = whole.length() - 3; i > 0; i -= 3) {
            grouped.insert(i, group);
        }
        var decimals = point < 0 ? "" : decimal + plain.substring(point + 1);
        // U+2212, the minus sign: as wide as a figure, not as short as a hyphen.
        return (value.signum() < 0 ? "\u2212" : "") + grouped + decimals;
    }

    /** With no decimals beyond those that say something: 13.70 is 13.7. */
    String shortest(BigDecimal value) {
        var stripped = value.signum() == 0 ? BigDecimal.ZERO : value.stripTrailingZeros();
        return number(stripped.scale() < 0 ? stripped.setScale(0) : stripped);
    }

    /** With the sign or code of the currency. */
    String money(Money amount) {
        var figures = number(amount.getAmount().abs());
        return (amount.isNegative() ? "\u2212" : "") + sign(amount.getCurrencyUnit()) + figures;
    }

    /** What stands before an amount. */
    String sign(CurrencyUnit currency) {
        return currencies.getOrDefault(currency.getCode(), currency.getCode() + "\u00A0");
    }

    /** Without sign or code, for columns. */
    String plain(Money amount) {
        return number(amount.getAmount());
    }

    String percent(Percent rate) {
        return percent.replace("{rate}", shortest(rate.value()));
    }

    String date(LocalDate day) {
        return date.replace("{year}", Integer.toString(day.getYear()))
                .replace("{month}", months.get(day.getMonthValue() - 1))
                .replace("{day}", Integer.toString(day.getDayOfMonth()));
    }

    String clock(OffsetDateTime time) {
        return CLOCK.format(time);
    }

    /** Offset from universal time: {@code UTC-05:00}. */
    String zone(OffsetDateTime time) {
        var offset = time.getOffset().getId();
        return offset.equals("Z") ? "UTC" : "UTC" + offset;
    }
}

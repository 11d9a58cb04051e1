package fairflame.screen.look;

import java.text.MessageFormat;
import java.text.NumberFormat;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import java.util.Currency;
import java.util.List;
import java.util.Locale;
import java.util.MissingResourceException;
import java.util.PropertyResourceBundle;
import java.util.ResourceBundle;
import org.joda.money.Money;

/** All texts of the screens in one language, with dates and money as that language writes them in this country. */
public final class Words {
    /** Languages with a file of words. */
    public static final List<String> LANGUAGES = List.of("en", "es");

    private static final String COUNTRY = "US";

    private final Locale locale;
    private final ResourceBundle bundle;

    private Words(Locale locale, ResourceBundle bundle) {
        this.locale = locale;
        this.bundle = bundle;
    }

    /** The words of a language, {@code en} or {@code es}. */
    public static Words in(String language) {
        var file = "/fairflame/screen/words_" + language + ".properties";
        try (var stream = Words.class.getResourceAsStream(file)) {
            if (stream == null) {
                throw new MissingResourceException("no words file", file, language);
            }
            var reader = new java.io.InputStreamReader(stream, java.nio.charset.StandardCharsets.UTF_8);
            return new Words(
                    new Locale.Builder()
                            .setLanguage(language)
                            .setRegion(COUNTRY)
                            .build(),
                    new PropertyResourceBundle(reader));
        } catch (java.io.IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    public String language() {
        return locale.getLanguage();
    }

    public Locale locale() {
        return locale;
    }

    /** The text of a key with its values filled in; a key without a text is a bug. */
    public String say(String key, Object... values) {
        var pattern = bundle.getString(key);
        return values.length == 0 && pattern.indexOf('\'') < 0 && pattern.indexOf('{') < 0
                ? pattern
                : new MessageFormat(pattern.replace("'", "''"), locale).format(values);
    }

    /** The text of a key, or other words where the file has none, for texts that a shop's own data may bring. */
    public String sayOr(String key, String otherwise) {
        return bundle.containsKey(key) ? say(key) : otherwise;
    }

    /** Every key of the file. */
    public java.util.Set<String> keys() {
        return bundle.keySet();
    }

    /** An amount with its sign, such as {@code $389.86}. */
    public String money(Money amount) {
        var format = NumberFormat.getCurrencyInstance(locale);
        format.setCurrency(Currency.getInstance(amount.getCurrencyUnit().getCode()));
        return format.format(amount.getAmount());
    }

    /** An amount without its sign, for columns, such as {@code 1,389.86}. */
    public String amount(Money amount) {
        var format = NumberFormat.getNumberInstance(locale);
        format.setMinimumFractionDigits(amount.getCurrencyUnit().getDecimalPlaces());
        return format.format(amount.getAmount());
    }

    /** A number as this language writes it, such as {@code 1,350.5}. */
    public String number(java.math.BigDecimal number) {
        var format = NumberFormat.getNumberInstance(locale);
        format.setMaximumFractionDigits(6);
        return format.format(number);
    }

    /** A day, such as {@code June 3, 2026}. */
    public String day(LocalDate day) {
        return day.format(DateTimeFormatter.ofLocalizedDate(FormatStyle.LONG).withLocale(locale));
    }

    /** A moment, such as {@code Jun 3, 2026, 2:05 PM}. */
    public String moment(OffsetDateTime moment) {
        return moment.format(DateTimeFormatter.ofLocalizedDateTime(FormatStyle.MEDIUM, FormatStyle.SHORT)
                .withLocale(locale));
    }
}

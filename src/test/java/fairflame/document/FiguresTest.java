package fairflame.document;

import static org.assertj.core.api.Assertions.assertThat;

import fairflame.money.Percent;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.Locale;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FiguresTest {
    private static final Figures EN = Papers.text("en").figures();
    private static final Figures ES = Papers.text("es").figures();

    @ParameterizedTest
    @CsvSource({
        "0, 0",
        "0.00, 0.00",
        "999.95, 999.95",
        "'1000', '1,000'",
        "'1234567.8', '1,234,567.8'",
        "13.70, 13.70",
        "'-1234.50', '\u22121,234.50'",
        "-0.05, \u22120.05"
    })
    void groupsThousandsAndKeepsEveryDecimal(BigDecimal value, String printed) {
        assertThat(EN.number(value)).isEqualTo(printed);
    }

    @ParameterizedTest
    @CsvSource({"14.00, 14", "10.50, 10.5", "20.4, 20.4", "1E+3, '1,000'", "0.000, 0"})
    void leavesDecimalsOutThatSayNothing(BigDecimal value, String printed) {
        assertThat(EN.shortest(value)).isEqualTo(printed);
    }

    @Test
    void setsTheSignOfTheCurrencyOrItsCode() {
        assertThat(EN.money(Papers.usd("1986.50"))).isEqualTo("$1,986.50");
        assertThat(EN.money(Papers.usd("-12.00"))).isEqualTo("\u2212$12.00");
        assertThat(EN.money(Money.of(CurrencyUnit.GBP, 7))).isEqualTo("GBP\u00A07.00");
        assertThat(EN.money(Money.ofMajor(CurrencyUnit.JPY, 1200))).isEqualTo("JPY\u00A01,200");
    }

    @Test
    void writesDatesAndRatesOfTheLanguageWhateverTheMachineSpeaks() {
        var before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag("ar-EG"));
            assertThat(EN.date(LocalDate.of(2026, 5, 4))).isEqualTo("May 4, 2026");
            assertThat(ES.date(LocalDate.of(2026, 12, 31))).isEqualTo("31 de diciembre de 2026");
            assertThat(EN.percent(Percent.parse("7.25"))).isEqualTo("7.25 %");
            var at = OffsetDateTime.parse("2026-05-14T08:05:00-05:00");
            assertThat(EN.clock(at)).isEqualTo("08:05");
            assertThat(EN.zone(at)).isEqualTo("UTC-05:00");
            assertThat(EN.zone(OffsetDateTime.parse("2026-05-14T08:05:00Z"))).isEqualTo("UTC");
        } finally {
            Locale.setDefault(before);
        }
    }
}

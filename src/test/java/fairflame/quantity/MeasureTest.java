package fairflame.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assertions.assertEquals;

import fairflame.Refusal;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class MeasureTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "10.1 inwc | 10.1 | INCH_WATER",
                "10.10inwc | 10.10 | INCH_WATER",
                "2PSI | 2 | PSI",
                ".5 psi | .5 | PSI",
                "+3kPa | 3 | KILOPASCAL",
                "1,250.5 Pa | 1250.5 | PASCAL",
                "1,234,567 pa | 1234567 | PASCAL",
            })
    void readsANumberAndItsUnitAsTyped(String text, String digits, Unit unit) {
        var measure = Measure.parse(Dimension.PRESSURE, text);
        assertEquals(new BigDecimal(digits), measure.value());
        assertEquals(unit, measure.unit());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                " ",
                "inwc",
                "-",
                ".",
                "7..1inwc",
                "7.1.2inwc",
                "--7inwc",
                "1e3inwc",
                "0x7inwc",
                "7 7inwc",
                "NaNinwc",
                "1,5inwc",
                "12,34inwc",
                "1,23,456inwc",
                "1234,567inwc",
                "7,inwc",
                "1234567890123inwc",
                "1.1234567890inwc",
                "Infinityinwc",
                "7bar",
                "7ft",
                "7inwcc",
                "7 in w.c."
            })
    void refusesWhatIsNoNumberWithAUnit(String text) {
        assertThatThrownBy(() -> Measure.parse(Dimension.PRESSURE, text))
                .as(text)
                .isInstanceOf(Refusal.class);
    }

    @Test
    void aMissingUnitIsNamed() {
        assertThatThrownBy(() -> Measure.parse(Dimension.LENGTH, "60"))
                .isInstanceOf(Refusal.Missing.class)
                .hasMessage("unit of length in '60' 'nothing' is refused; allowed: ft, in, m, mm");
        assertThatThrownBy(() -> Measure.parse(Dimension.LENGTH, "sixty ft"))
                .isInstanceOf(Refusal.Malformed.class)
                .hasMessageContaining("such as 7ft");
    }

    @Test
    void aReadingComesBackInItsDigits() {
        assertEquals(
                "10.10 in w.c.", Measure.parse(Dimension.PRESSURE, "10.10inwc").toString());
        assertEquals("22 kilohm", Measure.parse(Dimension.RESISTANCE, "22kohm").toString());
        assertEquals(10.1, Measure.parse(Dimension.PRESSURE, "10.10inwc").in(Unit.INCH_WATER));
    }

    @Test
    void anotherDimensionIsRefused() {
        assertThatThrownBy(() -> Measure.parse(Dimension.PRESSURE, "7psi").in(Unit.FOOT))
                .isInstanceOf(Refusal.NotAllowed.class)
                .hasMessageContaining("a unit of pressure");
    }

    @Test
    void computedValuesKeepTwelveDigits() {
        assertEquals("0.333333333333 ft", Measure.of(1 / 3.0, Unit.FOOT).toString());
        assertEquals("400 ft", Measure.of(400, Unit.FOOT).toString());
        for (var value : new double[] {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY}) {
            assertThatThrownBy(() -> Measure.of(value, Unit.FOOT)).isInstanceOf(Refusal.OutOfRange.class);
        }
    }

    @Test
    void valuesOutsideOfTheirKindAreRefused() {
        var refused = Map.<Function<String, Object>, List<String>>of(
                Pressure::parse, List.of("-1inwc", "101psi"),
                Length::parse, List.of("-1ft", "100001ft"),
                GasFlow::parse, List.of("-1cfh", "10000001cfh"),
                HeatRate::parse, List.of("-1btu/h", "10000001kbtu/h"),
                HeatingValue::parse, List.of("99btu/ft3", "4001btu/ft3"),
                Voltage::parse, List.of("-1v", "1001v"),
                Current::parse, List.of("-1001a", "1001a"),
                Resistance::parse, List.of("-1ohm"),
                Temperature::parse, List.of("-101f", "3001f"),
                WaterFlow::parse, List.of("-1gpm", "10001gpm"));
        refused.forEach((reading, texts) -> texts.forEach(
                text -> assertThatThrownBy(() -> reading.apply(text)).as(text).isInstanceOf(Refusal.OutOfRange.class)));
    }

    @Test
    void whatIsNotANumberIsRefusedByEveryKind() {
        var makers = List.<Function<Double, Object>>of(
                Pressure::ofInchesWater,
                Length::ofFeet,
                GasFlow::ofCubicFeetPerHour,
                HeatRate::ofBtuPerHour,
                HeatingValue::ofBtuPerCubicFoot,
                Voltage::ofVolts,
                Current::ofAmperes,
                Resistance::ofOhms,
                Temperature::ofFahrenheit,
                WaterFlow::ofGallonsPerMinute);
        makers.forEach(
                maker -> assertThatThrownBy(() -> maker.apply(Double.NaN)).isInstanceOf(Refusal.OutOfRange.class));
    }

    @Test
    void kindsAtTheirEndsAreAccepted() {
        assertEquals(0, Pressure.parse("0inwc").inchesWater());
        assertEquals(100_000, Length.parse("100000ft").feet());
        assertEquals(-100, Temperature.parse("-100f").fahrenheit());
        assertEquals(100, HeatingValue.parse("100btu/ft3").btuPerCubicFoot());
        assertEquals(Double.POSITIVE_INFINITY, Resistance.open().ohms());
        assertEquals(-1000, Current.ofAmperes(-1000).amperes());
        assertEquals(2.6e-6, Current.ofMicroamperes(2.6).amperes(), 1e-18);
        assertEquals(22_000, Resistance.ofKilohms(22).ohms());
    }

    @Test
    void kindsAddSubtractAndCompare() {
        var ten = Pressure.ofInchesWater(10);
        assertEquals(3.8, ten.dropTo(Pressure.ofInchesWater(6.2)).inchesWater(), 1e-12);
        assertThatThrownBy(() -> Pressure.ofInchesWater(6.2).dropTo(ten)).isInstanceOf(Refusal.OutOfRange.class);
        assertEquals(2, Pressure.ofPsi(2).psi(), 1e-12);
        assertThat(Pressure.ofPsi(1)).isGreaterThan(ten.dropTo(Pressure.ofInchesWater(0)));
        assertEquals(7, Length.ofFeet(3).plus(Length.ofFeet(4)).feet());
        assertEquals(18, Length.ofFeet(1.5).inches(), 1e-12);
        assertEquals(1.5, Length.ofInches(18).feet(), 1e-12);
        assertEquals(
                30,
                GasFlow.ofCubicFeetPerHour(10)
                        .plus(GasFlow.ofCubicFeetPerHour(20))
                        .cubicFeetPerHour());
        assertEquals(
                30, HeatRate.ofBtuPerHour(10).plus(HeatRate.ofBtuPerHour(20)).btuPerHour());
        var gas = HeatingValue.ofBtuPerCubicFoot(1030);
        assertEquals(385_220, GasFlow.ofCubicFeetPerHour(374).heat(gas).btuPerHour(), 1e-9);
        assertEquals(374, HeatRate.ofBtuPerHour(385_220).flow(gas).cubicFeetPerHour(), 1e-9);
        assertThat(Length.ofFeet(2)).isGreaterThan(Length.ofInches(23));
        assertThat(Temperature.ofFahrenheit(80)).isLessThan(Temperature.parse("30c"));
        assertThat(Voltage.ofVolts(24)).isEqualByComparingTo(Voltage.parse("24000mv"));
        assertThat(WaterFlow.ofGallonsPerMinute(65)).isGreaterThan(WaterFlow.parse("100lpm"));
        assertThat(Current.parse("2ua")).isLessThan(Current.parse("1ma"));
        assertThat(Resistance.parse("1megohm")).isLessThan(Resistance.open());
        assertThat(GasFlow.parse("1m3/h")).isGreaterThan(GasFlow.ofCubicFeetPerHour(35));
        assertThat(HeatRate.parse("1kw")).isGreaterThan(HeatRate.ofBtuPerHour(3412));
        assertThat(gas).isGreaterThan(HeatingValue.ofBtuPerCubicFoot(1000));
    }
}

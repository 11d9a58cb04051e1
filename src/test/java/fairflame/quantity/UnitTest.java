package fairflame.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assertions.assertEquals;

import fairflame.Refusal;
import java.util.List;
import java.util.stream.Stream;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import systems.uom.common.USCustomary;
import tech.units.indriya.unit.Units;

/** Conversions against a reference library of units (indriya and systems-common). */
class UnitTest {
    private static final double[] VALUES = {0.3, 1, 7, 40, 1234.5};

    /** Everything in SI, by the reference library; energies and forces that it lacks are built from its own units. */
    static Stream<Arguments> pairs() {
        // 1 lbf = 0.45359237 kg x 9.80665 m/s2, exact
        var psi = 0.45359237 * 9.80665 / Math.pow(metres(USCustomary.INCH), 2);
        // International table Btu: 1055.05585262 J, exact (pound and Fahrenheit degree times 2326 J/kg)
        var btuPerHour = 1055.05585262 / Units.HOUR.getConverterTo(Units.SECOND).convert(1.0);
        var foot3 = USCustomary.CUBIC_FOOT.getConverterTo(Units.CUBIC_METRE).convert(1.0);
        var gallon = USCustomary.GALLON_LIQUID.getConverterTo(Units.CUBIC_METRE).convert(1.0);
        var litre = Units.LITRE.getConverterTo(Units.CUBIC_METRE).convert(1.0);
        return Stream.of(
                Arguments.of(Unit.PSI, Unit.PASCAL, psi),
                Arguments.of(Unit.PSI, Unit.KILOPASCAL, psi / 1000),
                Arguments.of(Unit.MILLIBAR, Unit.PASCAL, 100),
                Arguments.of(Unit.KILOPASCAL, Unit.MILLIBAR, 10),
                Arguments.of(Unit.FOOT, Unit.METRE, metres(USCustomary.FOOT)),
                Arguments.of(Unit.INCH, Unit.MILLIMETRE, 1000 * metres(USCustomary.INCH)),
                Arguments.of(Unit.FOOT, Unit.INCH, metres(USCustomary.FOOT) / metres(USCustomary.INCH)),
                Arguments.of(Unit.CUBIC_FOOT, Unit.CUBIC_METRE, foot3),
                Arguments.of(Unit.CUBIC_FOOT_PER_HOUR, Unit.CUBIC_METRE_PER_HOUR, foot3),
                Arguments.of(Unit.KILOWATT, Unit.BTU_PER_HOUR, 1000 / btuPerHour),
                Arguments.of(Unit.KBTU_PER_HOUR, Unit.KILOWATT, btuPerHour),
                Arguments.of(Unit.GALLON, Unit.LITRE, gallon / litre),
                Arguments.of(Unit.GALLON_PER_MINUTE, Unit.LITRE_PER_MINUTE, gallon / litre),
                Arguments.of(
                        Unit.HOUR,
                        Unit.SECOND,
                        Units.HOUR.getConverterTo(Units.SECOND).convert(1.0)),
                Arguments.of(
                        Unit.MINUTE,
                        Unit.SECOND,
                        Units.MINUTE.getConverterTo(Units.SECOND).convert(1.0)),
                Arguments.of(
                        Unit.YEAR,
                        Unit.HOUR,
                        Units.YEAR.getConverterTo(Units.HOUR).convert(1.0)));
    }

    private static double metres(javax.measure.Unit<javax.measure.quantity.Length> unit) {
        return unit.getConverterTo(Units.METRE).convert(1.0);
    }

    @ParameterizedTest(name = "1 {0} is {2} {1}")
    @MethodSource("pairs")
    void convertsAsTheReferenceLibrary(Unit from, Unit to, double factor) {
        for (var value : VALUES) {
            // NIST SP 811 prints seven digits for psi and kilowatt; a Gregorian and a Julian year differ by 0.002 %.
            var tolerance = from == Unit.YEAR ? 0.003 : 2e-5;
            assertThat(Measure.of(value, from).in(to)).isCloseTo(value * factor, Percentage.withPercentage(tolerance));
            assertThat(Measure.of(value, to).in(from)).isCloseTo(value / factor, Percentage.withPercentage(tolerance));
        }
    }

    @Test
    void temperaturesConvertAsTheReferenceLibrary() {
        var converter = USCustomary.FAHRENHEIT
                .asType(javax.measure.quantity.Temperature.class)
                .getConverterTo(Units.CELSIUS);
        for (var fahrenheit : new double[] {-40, 0, 32, 72.5, 104, 212}) {
            var celsius = Measure.of(fahrenheit, Unit.FAHRENHEIT).in(Unit.CELSIUS);
            assertThat(celsius).isCloseTo(converter.convert(fahrenheit), org.assertj.core.data.Offset.offset(1e-9));
            assertThat(Measure.of(celsius, Unit.CELSIUS).in(Unit.FAHRENHEIT))
                    .isCloseTo(fahrenheit, org.assertj.core.data.Offset.offset(1e-9));
        }
    }

    @Test
    void aRiseHasNoOffset() {
        assertEquals(18, Measure.of(10, Unit.CELSIUS_RISE).in(Unit.FAHRENHEIT_RISE), 1e-12);
        assertEquals(0, Measure.of(0, Unit.CELSIUS_RISE).in(Unit.FAHRENHEIT_RISE), 1e-12);
        assertEquals(50, Measure.of(10, Unit.CELSIUS).in(Unit.FAHRENHEIT), 1e-12);
    }

    /** NIST SP 811 (2008), B.8: 249.0889 Pa to the conventional inch of water, 6894.757 Pa to the psi. */
    @Test
    void inchesOfWaterAreConventional() {
        assertEquals(249.0889, Measure.of(1, Unit.INCH_WATER).in(Unit.PASCAL), 1e-9);
        assertEquals(27.6799, Measure.of(1, Unit.PSI).in(Unit.INCH_WATER), 5e-5);
        assertEquals(2.490889, Measure.of(1, Unit.INCH_WATER).in(Unit.MILLIBAR), 1e-9);
    }

    @Test
    void electricalUnitsStepByThousands() {
        assertEquals(2.6e-6, Measure.of(2.6, Unit.MICROAMPERE).in(Unit.AMPERE), 1e-18);
        assertEquals(2600, Measure.of(2.6, Unit.MILLIAMPERE).in(Unit.MICROAMPERE), 1e-9);
        assertEquals(20_000, Measure.of(20, Unit.MEGOHM).in(Unit.KILOHM), 1e-9);
        assertEquals(0.02, Measure.of(20, Unit.MILLIVOLT).in(Unit.VOLT), 1e-15);
        assertEquals(2.5, Measure.of(250_000, Unit.BTU).in(Unit.THERM), 1e-12);
    }

    @ParameterizedTest
    @EnumSource(Unit.class)
    void everyUnitIsFoundByWhatItPrintsAndByWhatItIsTyped(Unit unit) {
        assertEquals(unit, Unit.of(unit.dimension(), unit.symbol()));
        assertEquals(unit, Unit.of(unit.dimension(), " " + unit.spelling().toUpperCase(java.util.Locale.ROOT) + " "));
        assertThat(Unit.allowed(unit.dimension())).contains(unit.spelling());
    }

    @ParameterizedTest
    @EnumSource(Dimension.class)
    void everyDimensionHasABaseOfFactorOne(Dimension dimension) {
        var base = Unit.baseOf(dimension);
        assertEquals(dimension, base.dimension());
        assertEquals(5, base.toBase(5));
        assertThat(dimension.words()).isNotBlank();
    }

    @Test
    void theSameSpellingMeansItsOwnDimension() {
        assertEquals(Unit.FAHRENHEIT, Unit.of(Dimension.TEMPERATURE, "f"));
        assertEquals(Unit.FAHRENHEIT_RISE, Unit.of(Dimension.TEMPERATURE_RISE, "f"));
        assertEquals(Unit.METRE, Unit.of(Dimension.LENGTH, "M"));
        assertEquals(Unit.PSI, Unit.of(Dimension.PRESSURE, "PSIG"));
    }

    @Test
    void unknownUnitsAreRefusedWithTheKnownOnes() {
        assertThatThrownBy(() -> Unit.of(Dimension.PRESSURE, "bar"))
                .isInstanceOf(Refusal.Unknown.class)
                .hasMessage("unit of pressure 'bar' is refused; allowed: inwc, psi, kpa, pa, mbar");
        for (var text : List.of("", "feet ", "psi")) {
            assertThatThrownBy(() -> Unit.of(Dimension.VOLTAGE, text)).isInstanceOf(Refusal.class);
        }
    }
}

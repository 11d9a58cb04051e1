package fairflame.quantity;

import fairflame.Refusal;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/**
 * The units that can be typed and printed. Within a dimension the first unit is the base; a factor says how many base
 * units one of this unit is. Temperatures have an offset as well.
 *
 * <p>Factors are exact by definition unless a line names its source.
 */
public enum Unit {
    INCH_WATER(Dimension.PRESSURE, 1, "in w.c.", "inwc", "inh2o", "\"wc"),
    // 6894.757 Pa per psi, 249.0889 Pa per conventional inch of water: NIST SP 811 (2008), appendix B.8. The fuel gas
    // codes print 27.7 in w.c. to the psi in their sizing text; that constant stays with their equations.
    PSI(Dimension.PRESSURE, 6894.757 / 249.0889, "psi", "psi", "psig"),
    KILOPASCAL(Dimension.PRESSURE, 1000 / 249.0889, "kPa", "kpa"),
    PASCAL(Dimension.PRESSURE, 1 / 249.0889, "Pa", "pa"),
    MILLIBAR(Dimension.PRESSURE, 100 / 249.0889, "mbar", "mbar"),

    FOOT(Dimension.LENGTH, 1, "ft", "ft", "feet"),
    INCH(Dimension.LENGTH, 1.0 / 12, "in", "in", "inch"),
    METRE(Dimension.LENGTH, 1 / 0.3048, "m", "m"),
    MILLIMETRE(Dimension.LENGTH, 1 / 304.8, "mm", "mm"),

    CUBIC_FOOT_PER_HOUR(Dimension.GAS_FLOW, 1, "ft\u00B3/h", "cfh", "ft3/h"),
    // 1 ft = 0.3048 m exactly
    CUBIC_METRE_PER_HOUR(Dimension.GAS_FLOW, 1 / (0.3048 * 0.3048 * 0.3048), "m\u00B3/h", "m3/h"),

    CUBIC_FOOT(Dimension.GAS_VOLUME, 1, "ft\u00B3", "ft3", "cf"),
    CUBIC_METRE(Dimension.GAS_VOLUME, 1 / (0.3048 * 0.3048 * 0.3048), "m\u00B3", "m3"),

    BTU_PER_HOUR(Dimension.HEAT_RATE, 1, "Btu/h", "btu/h", "btuh"),
    KBTU_PER_HOUR(Dimension.HEAT_RATE, 1000, "kBtu/h", "kbtu/h", "kbtuh", "mbh"),
    // 0.2930711 W per Btu(IT)/h: NIST SP 811 (2008), appendix B.8
    KILOWATT(Dimension.HEAT_RATE, 1000 / 0.2930711, "kW", "kw"),

    BTU(Dimension.ENERGY, 1, "Btu", "btu"),
    // US therm of 100,000 Btu
    THERM(Dimension.ENERGY, 100_000, "therm", "therm", "therms"),

    BTU_PER_CUBIC_FOOT(Dimension.HEATING_VALUE, 1, "Btu/ft\u00B3", "btu/ft3", "btu/cf"),

    FAHRENHEIT(Dimension.TEMPERATURE, 1, "\u00B0F", "f", "degf", "\u00B0f"),
    CELSIUS(Dimension.TEMPERATURE, 1.8, 32, "\u00B0C", "c", "degc", "\u00B0c"),

    FAHRENHEIT_RISE(Dimension.TEMPERATURE_RISE, 1, "\u00B0F", "fdelta", "f", "degf", "\u00B0f"),
    CELSIUS_RISE(Dimension.TEMPERATURE_RISE, 1.8, "\u00B0C", "k", "c", "degc", "\u00B0c"),

    VOLT(Dimension.VOLTAGE, 1, "V", "v", "vac", "volt", "volts"),
    MILLIVOLT(Dimension.VOLTAGE, 0.001, "mV", "mv"),

    AMPERE(Dimension.CURRENT, 1, "A", "a", "amp"),
    MILLIAMPERE(Dimension.CURRENT, 1e-3, "mA", "ma"),
    // U+03BC, because the bundled fonts lack U+00B5
    MICROAMPERE(Dimension.CURRENT, 1e-6, "\u03BCA", "ua", "\u03BCa", "\u00B5a"),

    OHM(Dimension.RESISTANCE, 1, "ohm", "ohm", "ohms"),
    KILOHM(Dimension.RESISTANCE, 1e3, "kilohm", "kilohm", "kohm"),
    MEGOHM(Dimension.RESISTANCE, 1e6, "megohm", "megohm", "mohm"),

    VOLT_AMPERE(Dimension.APPARENT_POWER, 1, "VA", "va"),

    GALLON_PER_MINUTE(Dimension.WATER_FLOW, 1, "gpm", "gpm"),
    // 1 US gallon = 3.785411784 L exactly (231 cubic inches)
    LITRE_PER_MINUTE(Dimension.WATER_FLOW, 1 / 3.785411784, "L/min", "l/min", "lpm"),

    GALLON(Dimension.WATER_VOLUME, 1, "gal", "gal"),
    LITRE(Dimension.WATER_VOLUME, 1 / 3.785411784, "L", "l"),

    SECOND(Dimension.TIME, 1, "s", "s", "sec"),
    MINUTE(Dimension.TIME, 60, "min", "min"),
    HOUR(Dimension.TIME, 3600, "h", "h", "hr"),
    YEAR(Dimension.TIME, 365.25 * 86_400, "years", "years", "year", "yr"),

    PARTS_PER_MILLION(Dimension.CONCENTRATION, 1, "ppm", "ppm"),
    PERCENT(Dimension.SHARE, 1, "%", "%", "percent"),
    TIMES(Dimension.COUNT, 1, "times", "times", "count");

    private final Dimension dimension;
    private final double factor;
    private final double offset;
    private final String symbol;
    private final List<String> spellings;

    Unit(Dimension dimension, double factor, String symbol, String... spellings) {
        this(dimension, factor, 0, symbol, spellings);
    }

    Unit(Dimension dimension, double factor, double offset, String symbol, String... spellings) {
        this.dimension = dimension;
        this.factor = factor;
        this.offset = offset;
        this.symbol = symbol;
        this.spellings = List.of(spellings);
    }

    public Dimension dimension() {
        return dimension;
    }

    /** As printed on paper and screen. */
    public String symbol() {
        return symbol;
    }

    /** As typed, the first of the accepted spellings. */
    public String spelling() {
        return spellings.get(0);
    }

    double toBase(double value) {
        return value * factor + offset;
    }

    double fromBase(double base) {
        return (base - offset) / factor;
    }

    /** The unit that values of a dimension are kept in. */
    public static Unit baseOf(Dimension dimension) {
        return Arrays.stream(values())
                .filter(unit -> unit.dimension == dimension)
                .findFirst()
                .orElseThrow();
    }

    /** The unit of this dimension with this spelling, in any letter case. */
    public static Unit of(Dimension dimension, String text) {
        var wanted = text.strip().toLowerCase(Locale.ROOT);
        return Arrays.stream(values())
                .filter(unit -> unit.dimension == dimension)
                .filter(unit -> unit.spellings.contains(wanted)
                        || unit.symbol.toLowerCase(Locale.ROOT).equals(wanted))
                .findFirst()
                .orElseThrow(() -> Refusal.unknown("unit of " + dimension.words(), text, allowed(dimension)));
    }

    /** The accepted first spellings of a dimension, for a message. */
    public static String allowed(Dimension dimension) {
        return Arrays.stream(values())
                .filter(unit -> unit.dimension == dimension)
                .map(Unit::spelling)
                .collect(Collectors.joining(", "));
    }
}

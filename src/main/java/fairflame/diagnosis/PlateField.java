package fairflame.diagnosis;

import fairflame.Refusal;
import fairflame.quantity.Dimension;
import fairflame.quantity.HeatRate;
import fairflame.quantity.Pressure;
import fairflame.quantity.Unit;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Collectors;

/** A number on the data plate that a rule can compare a reading with, named {@code plate.inlet-minimum} and so on. */
enum PlateField {
    INPUT("input", Unit.BTU_PER_HOUR, plate -> heat(plate.input())),
    INLET_MINIMUM("inlet-minimum", Unit.INCH_WATER, plate -> pressure(plate.inletMinimum())),
    INLET_MAXIMUM("inlet-maximum", Unit.INCH_WATER, plate -> pressure(plate.inletMaximum())),
    MANIFOLD("manifold", Unit.INCH_WATER, plate -> pressure(plate.manifold())),
    FLAME_MINIMUM("flame-minimum", Unit.MICROAMPERE, plate -> decimal(plate.flameMinimum(), 1e-6)),
    RISE_MAXIMUM("rise-maximum", Unit.FAHRENHEIT_RISE, plate -> decimal(plate.riseMaximum(), 1)),
    EFFICIENCY("efficiency", Unit.PERCENT, plate -> decimal(plate.efficiency(), 1)),
    AGE("age", Unit.YEAR, plate -> years(plate.ageYears()));

    private static final double SECONDS_PER_YEAR = 365.25 * 86_400;

    private final String word;
    private final Unit unit;
    private final Function<RatingPlate, OptionalDouble> reader;

    PlateField(String word, Unit unit, Function<RatingPlate, OptionalDouble> reader) {
        this.word = word;
        this.unit = unit;
        this.reader = reader;
    }

    Dimension dimension() {
        return unit.dimension();
    }

    /** As it is printed. */
    Unit unit() {
        return unit;
    }

    String word() {
        return word;
    }

    /** The number on this plate, in the base unit; empty when it was not entered. */
    Optional<Amount> on(RatingPlate plate) {
        var value = reader.apply(plate);
        return value.isPresent() ? Optional.of(new Amount(value.getAsDouble(), dimension())) : Optional.empty();
    }

    static PlateField of(String word) {
        return Arrays.stream(values())
                .filter(field -> field.word.equals(word))
                .findFirst()
                .orElseThrow(() -> Refusal.unknown(
                        "plate field",
                        word,
                        Arrays.stream(values()).map(PlateField::word).collect(Collectors.joining(", "))));
    }

    private static OptionalDouble heat(Optional<HeatRate> rate) {
        return rate.isPresent() ? OptionalDouble.of(rate.get().btuPerHour()) : OptionalDouble.empty();
    }

    private static OptionalDouble pressure(Optional<Pressure> pressure) {
        return pressure.isPresent() ? OptionalDouble.of(pressure.get().inchesWater()) : OptionalDouble.empty();
    }

    private static OptionalDouble decimal(Optional<BigDecimal> number, double factor) {
        return number.isPresent() ? OptionalDouble.of(number.get().doubleValue() * factor) : OptionalDouble.empty();
    }

    private static OptionalDouble years(Optional<Integer> years) {
        return years.isPresent() ? OptionalDouble.of(years.get() * SECONDS_PER_YEAR) : OptionalDouble.empty();
    }
}

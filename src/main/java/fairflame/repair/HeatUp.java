package fairflame.repair;

import fairflame.Refusal;
import fairflame.money.Percent;
import fairflame.quantity.Dimension;
import fairflame.quantity.HeatRate;
import fairflame.quantity.Measure;
import fairflame.quantity.Unit;
import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * How long a body of water takes to warm up.
 *
 * @param water volume, 1 to 1,000,000 gal
 * @param rise by how much it is to warm, above 0 to 100 F
 * @param input what the burner takes in
 * @param efficiency share of it that reaches the water
 * @param losses what the water gives off meanwhile
 */
public record HeatUp(Measure water, Measure rise, HeatRate input, Percent efficiency, HeatRate losses) {
    /** Weight of a US gallon of water, pounds; a pound takes a Btu for each degree Fahrenheit. From memory, not checked. */
    private static final double POUNDS_PER_GALLON = 8.34;

    public HeatUp {
        inRange("volume of water", water, Dimension.WATER_VOLUME, Unit.GALLON, 1, 1_000_000);
        inRange("rise of the water", rise, Dimension.TEMPERATURE_RISE, Unit.FAHRENHEIT_RISE, 0.1, 100);
        if (!(efficiency.value().doubleValue() > 0 && efficiency.value().doubleValue() <= 100)) {
            throw Refusal.outOfRange("efficiency", efficiency, "above 0 to 100 %");
        }
    }

    private static void inRange(
            String what, Measure measure, Dimension dimension, Unit unit, double lowest, double highest) {
        if (measure.unit().dimension() != dimension) {
            throw Refusal.notAllowed("unit of " + what, measure.unit().symbol(), Unit.allowed(dimension));
        }
        var value = measure.in(unit);
        if (!(value >= lowest && value <= highest)) {
            throw Refusal.outOfRange(what, measure, lowest + " to " + highest + " " + unit.symbol());
        }
    }

    /** Without losses: the shortest time there is. */
    public static HeatUp withoutLosses(Measure water, Measure rise, HeatRate input, Percent efficiency) {
        return new HeatUp(water, rise, input, efficiency, HeatRate.ofBtuPerHour(0));
    }

    /** The same water with another burner input. */
    public HeatUp at(HeatRate other) {
        return new HeatUp(water, rise, other, efficiency, losses);
    }

    /** Heat that has to go into the water. */
    public Measure energy() {
        return Measure.of(water.in(Unit.GALLON) * POUNDS_PER_GALLON * rise.in(Unit.FAHRENHEIT_RISE), Unit.BTU);
    }

    /** Heat that reaches the water in an hour. */
    public HeatRate output() {
        return HeatRate.ofBtuPerHour(input.btuPerHour() * efficiency.factor().doubleValue());
    }

    /** The time; empty when the losses eat all of the output, so that the water never gets there. */
    public Optional<Measure> time() {
        var gain = output().btuPerHour() - losses.btuPerHour();
        return gain > 0 ? Optional.of(Measure.of(energy().in(Unit.BTU) / gain, Unit.HOUR)) : Optional.empty();
    }

    /** The result and what was assumed, a sentence each. */
    public List<String> sentences() {
        var body = volume(water) + " warmed by " + rise;
        return List.of(
                time().map(time -> body + " take " + hours(time) + ".")
                        .orElse(body + " are never reached: the water loses heat as fast as it gets it."),
                "Assumed: burner input " + rate(input) + ", efficiency " + efficiency + ", losses " + rate(losses)
                        + ".");
    }

    /** Hours with one decimal, or minutes below an hour. */
    static String hours(Measure time) {
        var hours = time.in(Unit.HOUR);
        return hours < 1
                ? String.format(Locale.ROOT, "%.0f minutes", hours * 60)
                : String.format(Locale.ROOT, "%.1f hours", hours);
    }

    private static String volume(Measure water) {
        var number = new DecimalFormat("#,##0.###", DecimalFormatSymbols.getInstance(Locale.ROOT));
        return number.format(water.value()) + " " + water.unit().symbol();
    }

    private static String rate(HeatRate rate) {
        return String.format(Locale.ROOT, "%,.0f Btu/h", rate.btuPerHour());
    }
}

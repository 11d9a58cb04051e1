package fairflame.diagnosis;

import fairflame.gas.Fuel;
import fairflame.quantity.GasFlow;
import fairflame.quantity.HeatRate;
import fairflame.quantity.HeatingValue;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;
import java.util.Optional;

/**
 * How hard the heater really burns: by the meter, and as a second estimate by what the water takes up.
 *
 * @param expected plate input, reduced for altitude; empty without a plate input
 * @param clocked heat input by the gas meter
 * @param byWater heat input by temperature rise, water flow and the plate's efficiency
 * @param heatingValue of the gas
 * @param assumed true when the heating value was not asked of the supplier
 */
public record FiringRate(
        Optional<HeatRate> expected,
        Optional<HeatRate> clocked,
        Optional<HeatRate> byWater,
        HeatingValue heatingValue,
        boolean assumed) {
    /** Usual acceptance around the plate input, percent; from memory, not checked. */
    public static final double WITHIN_PERCENT = 5;

    /**
     * How far the two estimates may lie apart, percent of the clocked one: two thermometers of half a degree each on a
     * rise of ten, a flow reading of five percent and an efficiency read off the plate; invented for the demo.
     */
    public static final double ESTIMATES_WITHIN_PERCENT = 20;

    // about 1,000 Btu per cubic foot, ask the utility: meter clocking note [S-CLOCK]
    private static final HeatingValue NATURAL = HeatingValue.ofBtuPerCubicFoot(1_000);
    // 2,500 Btu per cubic foot: state utility conversion guide; other lists say 2,516 and 2,570
    private static final HeatingValue PROPANE = HeatingValue.ofBtuPerCubicFoot(2_500);
    // 8.34 lb/gal x 60 min/h x 1 Btu/lb F, rounded as the trade uses it; from memory, not checked
    private static final double BTU_PER_GPM_DEGREE = 500;
    private static final double SECONDS_PER_HOUR = 3_600;

    /** What the readings of a visit say about the firing rate; refuses words that the knowledge does not have. */
    public static FiringRate of(Knowledge knowledge, CaseFile file) {
        return of(Facts.of(file, knowledge.vocabulary()));
    }

    static FiringRate of(Facts facts) {
        var plate = facts.plate();
        var asked = facts.first("heating-value");
        var value = asked.map(amount -> HeatingValue.ofBtuPerCubicFoot(amount.base()))
                .orElse(plate.fuel() == Fuel.NATURAL ? NATURAL : PROPANE);
        double altitude = facts.first("altitude").map(Amount::base).orElse(0.0);
        return new FiringRate(
                plate.input().map(input -> HeatRate.ofBtuPerHour(input.btuPerHour() * derating(altitude))),
                clocked(facts, value),
                byWater(facts),
                value,
                asked.isEmpty());
    }

    /**
     * The share of the plate input that is right at an altitude in feet: 4 percent less for each 1,000 ft above sea
     * level once the site is above 2,000 ft (NFPA 54-2015, table E.1.1(d)); the maker's instructions come first.
     */
    static double derating(double feet) {
        return feet > 2_000 ? Math.max(0, 1 - 0.04 * feet / 1_000) : 1;
    }

    /** Gas flow from a volume on the dial and the seconds it took: ft3/h = 3600 x ft3 / s [S-CLOCK]. */
    static GasFlow flow(double cubicFeet, double seconds) {
        return GasFlow.ofCubicFeetPerHour(SECONDS_PER_HOUR * cubicFeet / seconds);
    }

    private static Optional<HeatRate> clocked(Facts facts, HeatingValue value) {
        var timed = facts.first("clock-volume")
                .flatMap(volume -> facts.first("clock-seconds").map(seconds -> flow(volume.base(), seconds.base())))
                .or(() -> facts.first("clocked-flow").map(flow -> GasFlow.ofCubicFeetPerHour(flow.base())));
        return timed.map(flow -> flow.heat(value))
                .or(() -> facts.first("clocked-input").map(heat -> HeatRate.ofBtuPerHour(heat.base())));
    }

    private static Optional<HeatRate> byWater(Facts facts) {
        var efficiency = PlateField.EFFICIENCY.on(facts.plate());
        return Computed.RISE
                .from(facts)
                .filter(rise -> rise.base() > 0)
                .flatMap(rise -> facts.first("water-flow")
                        .flatMap(flow -> efficiency.map(share -> HeatRate.ofBtuPerHour(
                                BTU_PER_GPM_DEGREE * flow.base() * rise.base() / (share.base() / 100)))));
    }

    /** Clocked input as a share of the expected one, percent. */
    public Optional<BigDecimal> share() {
        return expected.filter(plate -> plate.btuPerHour() > 0)
                .flatMap(plate -> clocked.map(heat -> percent(heat, plate)));
    }

    /** How far the estimate by water lies from the clocked one, percent of the clocked one; negative when below. */
    public Optional<BigDecimal> apart() {
        return clocked.filter(heat -> heat.btuPerHour() > 0)
                .flatMap(heat -> byWater.map(water -> percent(water, heat).subtract(new BigDecimal(100))));
    }

    /** Whether the two estimates tell the same story; empty when there are not two. */
    public Optional<Boolean> agree() {
        return apart().map(gap -> gap.abs().doubleValue() <= ESTIMATES_WITHIN_PERCENT);
    }

    /** One sentence with the numbers; empty when nothing was clocked. */
    public Optional<String> words() {
        return clocked.map(heat -> "Clocked input " + whole(heat)
                + share().map(share -> ", " + share.setScale(0, RoundingMode.HALF_UP) + " % of the plate's "
                                + whole(expected.orElseThrow()))
                        .orElse("")
                + (assumed ? ", with an assumed heating value" : "")
                + byWater.map(water -> "; by water flow and rise " + whole(water))
                        .orElse("") + ".");
    }

    private static BigDecimal percent(HeatRate part, HeatRate whole) {
        return BigDecimal.valueOf(100 * part.btuPerHour() / whole.btuPerHour()).setScale(1, RoundingMode.HALF_UP);
    }

    private static String whole(HeatRate heat) {
        return String.format(Locale.ROOT, "%,.0f Btu/h", heat.btuPerHour());
    }
}

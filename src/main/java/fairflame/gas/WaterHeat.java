package fairflame.gas;

import fairflame.Refusal;
import fairflame.quantity.Dimension;
import fairflame.quantity.HeatRate;
import fairflame.quantity.Measure;
import fairflame.quantity.Unit;
import fairflame.quantity.WaterFlow;

/**
 * Heat that goes into the water, from its flow and the rise of its temperature.
 *
 * @param rise between inlet and outlet, above 0 and up to 150 F
 */
public record WaterHeat(WaterFlow flow, Measure rise) {
    // 8.34 lb to the gallon near 60 F (from memory, not checked; pool-trade pages say 8.33) times 60 minutes
    private static final double BTU_PER_GPM_AND_DEGREE = 8.34 * 60;
    private static final double GREATEST_RISE = 150;

    public WaterHeat {
        var degrees = rise.in(Unit.FAHRENHEIT_RISE);
        if (!(degrees > 0 && degrees <= GREATEST_RISE)) {
            throw Refusal.outOfRange("temperature rise", rise, "above 0 and up to 150 F");
        }
    }

    /** Reads both, such as {@code 65gpm} and {@code 11f}. */
    public static WaterHeat parse(String flow, String rise) {
        return new WaterHeat(WaterFlow.parse(flow), Measure.parse(Dimension.TEMPERATURE_RISE, rise));
    }

    public HeatRate output() {
        return HeatRate.ofBtuPerHour(BTU_PER_GPM_AND_DEGREE * flow.gallonsPerMinute() * rise.in(Unit.FAHRENHEIT_RISE));
    }

    /**
     * Input that gives this output.
     *
     * @param efficiency thermal efficiency of the plate, 0.3 to 1
     */
    public HeatRate input(double efficiency) {
        if (!(efficiency >= 0.3 && efficiency <= 1)) {
            throw Refusal.outOfRange("thermal efficiency", Figures.percent(efficiency), "30 to 100 %");
        }
        return HeatRate.ofBtuPerHour(output().btuPerHour() / efficiency);
    }

    /** The flow that an output and a rise speak for: an estimate where no flow meter is. */
    public static WaterFlow flowFor(HeatRate output, Measure rise) {
        var checked = new WaterHeat(WaterFlow.ofGallonsPerMinute(0), rise);
        return WaterFlow.ofGallonsPerMinute(
                output.btuPerHour() / BTU_PER_GPM_AND_DEGREE / checked.rise.in(Unit.FAHRENHEIT_RISE));
    }
}

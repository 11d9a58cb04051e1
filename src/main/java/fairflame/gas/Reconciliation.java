package fairflame.gas;

import fairflame.quantity.GasFlow;
import fairflame.quantity.Pressure;
import java.util.List;

/**
 * The measured dip at the heater held against the dip that the pipe predicts.
 *
 * @param verdict whether pipe size explains the fault
 * @param measured where the meter was read while firing, its pressure less the heater's; else static less lowest
 *     pressure while firing
 * @param predicted computed drop in the pipe at the flow of the moment
 * @param lowest lower end of the predicted band: lengths and fittings are estimates
 * @param highest upper end of the predicted band
 * @param lookAt what else to examine, most likely first; empty when pipe size explains all
 * @param words the comparison in one sentence with its numbers
 */
public record Reconciliation(
        Verdict verdict,
        Pressure measured,
        Pressure predicted,
        Pressure lowest,
        Pressure highest,
        List<String> lookAt,
        String words) {
    public Reconciliation {
        lookAt = List.copyOf(lookAt);
    }

    /** Does pipe size explain the measured dip? Only the first answer lets pipe be sold. */
    public enum Verdict {
        EXPLAINS,
        EXPLAINS_PART,
        DOES_NOT_EXPLAIN
    }

    /** An appliance that fires alone, at its clocked flow or else its plate's, with the usual tolerance. */
    public static Reconciliation of(GasTables tables, Layout layout, String appliance, Measured measured) {
        return of(tables, layout, appliance, Firing.alone(layout, appliance), measured, Tolerance.usual());
    }

    /**
     * Holds readings against a layout.
     *
     * @param firing all that burned during the reading; a clocked flow replaces the appliance's own
     */
    public static Reconciliation of(
            GasTables tables, Layout layout, String appliance, Firing firing, Measured measured, Tolerance tolerance) {
        var burning =
                measured.clocked().map(flow -> firing.with(appliance, flow)).orElse(firing);
        var share = measured.clocked().isPresent() ? tolerance.clockedFlow() : tolerance.plateFlow();
        var run = new PredictedLoss(tables, layout, appliance, burning);
        var gauges = tolerance.gauges().inchesWater();
        var predicted = run.loss(1, 1);
        var lowest = Math.max(0, run.loss(1 - tolerance.lengths(), 1 - share) - gauges);
        var highest = run.loss(1 + tolerance.lengths(), 1 + share) + gauges;
        var band = new Band(predicted, lowest, highest, run.flow());
        return new ReconciliationRule(layout, measured, band).judge();
    }

    /** Predicted losses in inches of water at a flow. */
    record Band(double predicted, double lowest, double highest, GasFlow flow) {}
}

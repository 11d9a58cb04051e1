package fairflame.gas;

import fairflame.quantity.Pressure;
import java.util.List;

/**
 * The measured dip at the heater held against the dip that the pipe tables predict.
 *
 * @param verdict whether pipe size explains the fault
 * @param measured static less lowest pressure while firing
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
}

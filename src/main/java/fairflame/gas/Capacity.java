package fairflame.gas;

import fairflame.quantity.GasFlow;
import fairflame.quantity.HeatRate;
import java.util.ArrayList;
import java.util.List;

/**
 * What a run of pipe carries, and what says so.
 *
 * @param flow not rounded where an equation computed it, the printed number where a table did
 * @param heat the flow times the heating value of the gas
 * @param basis what kind of answer it is
 * @param by the table with its number and row, or the equation with the inside diameter
 * @param notes what else the reader has to know: assumptions, warnings, what the other way would have said
 */
public record Capacity(GasFlow flow, HeatRate heat, Basis basis, String by, List<String> notes) {
    public Capacity {
        notes = List.copyOf(notes);
    }

    /** What kind of answer a capacity is. */
    public enum Basis {
        /** A printed row. */
        TABLE,
        /** The sizing equation of the code. */
        EQUATION,
        /** A printed row of another gas times the code's multiplier. */
        DERIVED,
        /** Beyond the rows of a table that the equation does not follow. */
        EXTRAPOLATED
    }

    /**
     * The capacity of a run: the printed row if the length is one, the equation between and beyond rows, never more than
     * the next shorter row allows; where row and equation disagree, the less.
     */
    public static Capacity of(GasTables tables, Run run) {
        return new TableOrEquation(tables, false).capacity(run);
    }

    /** As the sizing methods read the tables: between two rows the longer one counts. */
    public static Capacity forSizing(GasTables tables, Run run) {
        return new TableOrEquation(tables, true).capacity(run);
    }

    static Capacity of(Run run, double cubicFeetPerHour, Basis basis, String by, List<String> notes) {
        var flow = GasFlow.ofCubicFeetPerHour(cubicFeetPerHour);
        var all = new ArrayList<>(notes);
        all.addAll(run.gas().assumed());
        return new Capacity(flow, flow.heat(run.gas().heatingValue()), basis, by, all);
    }

    /** Whether a flow is carried; a billionth is forgiven to the sums of loads. */
    boolean carries(double cubicFeetPerHour) {
        return cubicFeetPerHour <= flow.cubicFeetPerHour() * (1 + 1e-9);
    }
}

package fairflame.gas;

import fairflame.Refusal;
import fairflame.quantity.Length;
import java.util.Map;
import java.util.NavigableMap;

/**
 * Potential that a flow loses in a pipe. By the code's equation where the pipe has a bore. CSST has none: its capacity
 * table says at which length a flow loses 0.5 in w.c., and loss is taken in proportion to length. Between rows and
 * outside of them the logarithms of flow and length are taken as a straight line: an estimate for looking at pressures,
 * never for sizing.
 */
final class PressureLoss {
    // With a single row the flow is taken to go as the square root of pressure over length.
    private static final double ONE_ROW = -2;

    private final GasTables tables;
    private final Gas gas;

    PressureLoss(GasTables tables, Gas gas) {
        this.tables = tables;
        this.gas = gas;
    }

    double of(FlowEquation form, Pipe pipe, Length equivalent, double cubicFeetPerHour) {
        if (cubicFeetPerHour <= 0) {
            return 0;
        }
        var bore = tables.bore(pipe);
        if (bore.isPresent()) {
            return form.loss(gas, bore.get().inches(), equivalent.feet(), cubicFeetPerHour);
        }
        if (form == FlowEquation.HIGH) {
            throw Refusal.notAllowed(
                    "CSST at 1.5 psi or more", pipe.words(), "another pipe: no table at hand; use the maker's");
        }
        return byTable(pipe, equivalent.feet(), cubicFeetPerHour);
    }

    private double byTable(Pipe pipe, double feet, double cubicFeetPerHour) {
        var table = tables.tables()
                .filter(candidate -> candidate.conditions().material() == pipe.material()
                        && candidate.conditions().fuel() == Fuel.NATURAL
                        && candidate.column(pipe.size()).isPresent())
                .reduce((earlier, later) -> later)
                .orElseThrow(() -> Refusal.unknown("table", pipe.words(), "a CSST table with this size"));
        // Rows of natural gas, read at the flow of that gas which loses as much: the code's gravity rule.
        var alike = cubicFeetPerHour
                * tables.gravityMultiplier(Gas.ofCode(Fuel.NATURAL).specificGravity())
                / tables.gravityMultiplier(gas.specificGravity());
        var column = table.column(pipe.size()).orElseThrow();
        return table.conditions().drop().inchesWater() * feet / lengthFor(column, alike);
    }

    /** The length at which a flow loses what the column is printed for. */
    private static double lengthFor(NavigableMap<Double, CapacityTable.Cell> column, double flow) {
        Map.Entry<Double, CapacityTable.Cell> shorter = column.firstEntry();
        Map.Entry<Double, CapacityTable.Cell> longer = column.higherEntry(shorter.getKey());
        if (longer == null) {
            return shorter.getKey() * Math.pow(flow / shorter.getValue().cubicFeetPerHour(), ONE_ROW);
        }
        while (longer.getValue().cubicFeetPerHour() > flow && column.higherEntry(longer.getKey()) != null) {
            shorter = longer;
            longer = column.higherEntry(longer.getKey());
        }
        var slope = Math.log(longer.getKey() / shorter.getKey())
                / Math.log(longer.getValue().cubicFeetPerHour()
                        / shorter.getValue().cubicFeetPerHour());
        return shorter.getKey() * Math.pow(flow / shorter.getValue().cubicFeetPerHour(), slope);
    }
}

package fairflame.screen.line;

import fairflame.quantity.Unit;
import java.util.List;

/** Units that the fields of a gas line can be written in, the usual one first. */
final class LineUnits {
    private LineUnits() {}

    /** None for a field that is counted. */
    static List<Unit> of(String field) {
        return switch (field) {
            case "length" -> List.of(Unit.FOOT, Unit.METRE, Unit.INCH);
            case "pressure", "firing", "minimum", "maximum", "drop.low" ->
                List.of(Unit.INCH_WATER, Unit.PSI, Unit.KILOPASCAL, Unit.MILLIBAR);
            case "input" -> List.of(Unit.BTU_PER_HOUR, Unit.KBTU_PER_HOUR, Unit.KILOWATT);
            case "capacity" -> List.of(Unit.CUBIC_FOOT_PER_HOUR, Unit.CUBIC_METRE_PER_HOUR);
            case "gas.heatingValue" -> List.of(Unit.BTU_PER_CUBIC_FOOT);
            default -> List.of();
        };
    }
}

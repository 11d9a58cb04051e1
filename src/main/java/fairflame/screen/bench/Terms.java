package fairflame.screen.bench;

import fairflame.quantity.Unit;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Fields of the draft that say what the repair and the customer's decision depend on. */
final class Terms {
    static final List<String> FITTER = List.of("repair.fitter.name", "repair.fitter.licence", "repair.fitter.expires");
    static final List<String> FITTER_NEEDS = List.of("repair.fitter.name", "repair.fitter.licence");
    static final List<String> WARM_UP = List.of(
            "decision.warmUp.water",
            "decision.warmUp.rise",
            "decision.warmUp.losses",
            "decision.warmUp.fuelPrice",
            "decision.warmUp.aMonth",
            "decision.warmUp.months");
    static final List<String> WARM_UP_NEEDS =
            List.of("decision.warmUp.water", "decision.warmUp.rise", "decision.warmUp.fuelPrice");
    static final List<String> NEW_HEATER = List.of(
            "decision.newHeater.price",
            "decision.newHeater.years",
            "decision.newHeater.efficiency",
            "decision.newHeater.repairYears",
            "decision.newHeater.interest",
            "decision.newHeater.yearlyGas",
            "decision.newHeater.furtherRepairs");
    /** Fields that take whole numbers without a unit. */
    static final Set<String> WHOLE = Set.of(
            "decision.warmUp.aMonth",
            "decision.warmUp.months",
            "decision.newHeater.years",
            "decision.newHeater.repairYears");

    private static final Map<String, Unit> UNITS = units();

    private Terms() {}

    /** The unit that a field is typed in; empty where it has none. */
    static String symbol(String field) {
        var unit = UNITS.get(field);
        return unit == null ? "" : unit.symbol();
    }

    /** A draft whose fields know the unit that they are typed in. */
    static Draft withUnits(Draft draft) {
        return draft.withUnits(UNITS);
    }

    private static Map<String, Unit> units() {
        var units = new LinkedHashMap<String, Unit>();
        units.put("repair.raisedDelivery", Unit.PSI);
        units.put("decision.warmUp.water", Unit.GALLON);
        units.put("decision.warmUp.rise", Unit.FAHRENHEIT_RISE);
        units.put("decision.warmUp.losses", Unit.BTU_PER_HOUR);
        units.put("decision.newHeater.efficiency", Unit.PERCENT);
        units.put("decision.newHeater.interest", Unit.PERCENT);
        return units;
    }
}

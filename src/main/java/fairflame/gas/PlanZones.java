package fairflame.gas;

import fairflame.quantity.Pressure;

/** Budgets of potential in a zone: what may be lost before an appliance or a regulator. */
final class PlanZones {
    private PlanZones() {}

    /** The zone that starts at the source, on the present delivery or on the raised one. */
    static Zone source(Layout layout, PlanRules rules, PlanScope scope) {
        if (!scope.raised()) {
            return Zone.of(layout);
        }
        var pressure = rules.raised().orElseThrow();
        return new Zone("raised delivery", pressure, layout.drop().under(pressure));
    }

    static Zone behindNewRegulator(Layout layout, PlanRules rules) {
        return new Zone("new line regulator", rules.lineOutlet(), layout.drop().low());
    }

    /** Whether an appliance bears the pressure of a zone with no gas flowing. */
    static boolean fits(Appliance appliance, Zone zone) {
        return zone.supply().inchesWater() <= appliance.inlet().maximum().inchesWater() + 1e-6;
    }

    /** Up to the appliance's minimum or the allowed drop, whichever comes first; negative when the supply is too low. */
    static double budget(Appliance appliance, Zone zone) {
        return downTo(zone, appliance.inlet().minimum());
    }

    static double regulatorBudget(Zone zone, Pressure outlet) {
        return downTo(zone, LineRegulator.minimumInletFor(outlet));
    }

    static double downTo(Zone zone, Pressure least) {
        var form = zone.equation();
        var supply = zone.supply().inchesWater();
        var lowest = Math.max(least.inchesWater(), supply - zone.allowed().inchesWater());
        return form.potential(supply) - form.potential(lowest);
    }

    /** What an excess-flow valve at the source takes; nothing where none is asked for. */
    static double valveLoss(Zone zone, PlanRules rules) {
        var form = zone.equation();
        var supply = zone.supply().inchesWater();
        return rules.excessFlow()
                .map(loss -> form.potential(supply) - form.potential(supply - loss.inchesWater()))
                .orElse(0.0);
    }
}

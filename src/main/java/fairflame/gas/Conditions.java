package fairflame.gas;

import fairflame.quantity.Pressure;

/**
 * What a capacity table is printed for.
 *
 * @param below whether the inlet pressure is an upper limit (not reached) rather than the very pressure
 */
record Conditions(Fuel fuel, Material material, Pressure inlet, boolean below, Pressure drop) {
    // Forgives a unit conversion that was rounded to three figures, as the tables themselves are; a choice, no source.
    private static final double SAME = 0.005;

    static Conditions parse(CsvRows.Row row) {
        var inlet = row.text("inlet");
        var below = inlet.startsWith("<");
        return new Conditions(
                Fuel.parse(row.text("gas")),
                Material.parse(row.text("material")),
                Pressure.parse(below ? inlet.substring(1) : inlet),
                below,
                Pressure.parse(row.text("drop")));
    }

    boolean fit(Fuel gas, Material pipe, Pressure supply, Pressure allowed) {
        return fuel == gas && material == pipe && fitsInlet(supply) && same(drop, allowed);
    }

    private boolean fitsInlet(Pressure supply) {
        return below ? supply.inchesWater() < inlet.inchesWater() * (1 - 1e-9) : same(inlet, supply);
    }

    private static boolean same(Pressure printed, Pressure given) {
        return Math.abs(given.inchesWater() - printed.inchesWater()) <= SAME * printed.inchesWater();
    }

    FlowEquation equation() {
        return FlowEquation.at(below ? Pressure.ofInchesWater(0) : inlet);
    }

    String words() {
        return fuel.word() + " gas, " + material.word() + ", inlet " + (below ? "below " : "") + in(inlet) + ", drop "
                + in(drop);
    }

    private static String in(Pressure pressure) {
        return Figures.pressure(pressure);
    }
}

package fairflame.visit;

import fairflame.diagnosis.CaseFile;
import fairflame.diagnosis.Reading;
import fairflame.diagnosis.Value;
import fairflame.gas.Firing;
import fairflame.gas.GasTables;
import fairflame.gas.Layout;
import fairflame.gas.Measured;
import fairflame.gas.Reconciliation;
import fairflame.gas.Tolerance;
import fairflame.quantity.GasFlow;
import fairflame.quantity.Measure;
import fairflame.quantity.Pressure;
import java.util.Comparator;
import java.util.Optional;

/** Brings the computed gas line into a case: the measured dip held against the predicted one. */
final class GasEvidence {
    // Instruments that average over a second hide a short dip; the knowledge marks them as slow.
    private static final String SLOW = "slow-digital";
    private static final String ALL_ON = "furnace-on";

    private final CaseFile file;
    private final Layout layout;
    private final GasTables tables;

    private GasEvidence(CaseFile file, Layout layout, GasTables tables) {
        this.file = file;
        this.layout = layout;
        this.tables = tables;
    }

    /** The case with the reconciliation, where static and firing pressure were read with a fast instrument. */
    static CaseFile added(CaseFile file, Layout layout, GasTables tables) {
        return new GasEvidence(file, layout, tables)
                .reconciliation()
                .map(file::withPipe)
                .orElse(file);
    }

    private Optional<Reconciliation> reconciliation() {
        var still = pressure("gas-static");
        var firing = lowest("gas-firing");
        if (still.isEmpty() || firing.isEmpty()) {
            return Optional.empty();
        }
        var burning = pressure(firing.get());
        if (burning.compareTo(still.get()) > 0) {
            // A contradiction that the diagnosis names; nothing can be computed from it.
            return Optional.empty();
        }
        var meter = lowest("gas-meter-firing").map(GasEvidence::pressure);
        var measured = new Measured(still.get(), burning, meter, clocked());
        var heater = layout.largest().id();
        var state = firing.get().conditions().contains(ALL_ON) ? Firing.all(layout) : Firing.alone(layout, heater);
        return Optional.of(Reconciliation.of(tables, layout, heater, state, measured, Tolerance.usual()));
    }

    private Optional<Pressure> pressure(String check) {
        return lowest(check).map(GasEvidence::pressure);
    }

    private Optional<Reading> lowest(String check) {
        return file.readings().stream()
                .filter(reading -> reading.check().equals(check))
                .filter(reading -> !reading.instrument().equals(SLOW))
                .filter(reading -> reading.value() instanceof Value.Measured)
                .min(Comparator.comparing(GasEvidence::pressure));
    }

    private Optional<GasFlow> clocked() {
        return file.readings().stream()
                .filter(reading -> reading.check().equals("clocked-flow"))
                .flatMap(reading -> measure(reading).stream())
                .map(GasFlow::of)
                .findFirst();
    }

    private static Pressure pressure(Reading reading) {
        return Pressure.of(measure(reading).orElseThrow());
    }

    private static Optional<Measure> measure(Reading reading) {
        return reading.value() instanceof Value.Measured measured ? Optional.of(measured.measure()) : Optional.empty();
    }
}

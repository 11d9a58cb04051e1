package fairflame.diagnosis;

import fairflame.quantity.Dimension;
import fairflame.quantity.Resistance;
import fairflame.quantity.Voltage;
import java.util.Optional;

/** The leak circuit that the readings of a visit describe. */
final class LeakReadings {
    // Valve and module of the worked figures; invented, the valve's sheet says its own
    private static final Resistance COIL = Resistance.ofOhms(48);
    // Below half a volt the loss over the contacts is within the meters' error and tells nothing.
    private static final double LEAST_LOSS = 0.5;

    private LeakReadings() {}

    /**
     * The circuit with the leak that the recorded minimum implies. Needs the transformer at rest and under load, the
     * valve's minimum and the resistance of both contacts.
     */
    static Optional<LeakCircuit> circuit(Facts facts) {
        var contacts = facts.first("contact-high-limit")
                .flatMap(one -> facts.first("contact-outlet").map(one::plus))
                .filter(sum -> Double.isFinite(sum.base()) && sum.base() > 0);
        return facts.first("transformer-idle")
                .flatMap(idle -> facts.first("transformer-low")
                        .flatMap(low -> facts.first("valve-low")
                                .flatMap(valve -> contacts.flatMap(sum -> implied(idle, low, valve, sum)))));
    }

    private static Optional<LeakCircuit> implied(Amount idle, Amount low, Amount valve, Amount contacts) {
        double loss = low.base() - valve.base();
        double amperes = loss / contacts.base();
        if (loss < LEAST_LOSS || idle.base() < low.base()) {
            return Optional.empty();
        }
        var dry = new LeakCircuit(
                new LeakCircuit.Supply(
                        Voltage.ofVolts(idle.base()), Resistance.ofOhms((idle.base() - low.base()) / amperes)),
                Resistance.ofOhms(contacts.base()),
                LeakCircuit.Coil.of(COIL),
                Resistance.open());
        return Optional.of(dry.withLeak(dry.leakFor(Voltage.ofVolts(valve.base()))));
    }

    /** The leak that the readings imply; empty when none is needed to explain them. */
    static Optional<Amount> leak(Facts facts) {
        return circuit(facts)
                .map(LeakCircuit::leak)
                .filter(leak -> Double.isFinite(leak.ohms()))
                .map(leak -> new Amount(leak.ohms(), Dimension.RESISTANCE));
    }

    /** What the contacts alone would leave at the valve. */
    static Optional<Amount> withoutLeak(Facts facts) {
        return circuit(facts)
                .map(circuit -> circuit.withLeak(Resistance.open()).at(LeakCircuit.Phase.HELD))
                .map(point -> new Amount(point.valve().volts(), Dimension.VOLTAGE));
    }
}

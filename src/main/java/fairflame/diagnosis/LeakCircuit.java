package fairflame.diagnosis;

import fairflame.Refusal;
import fairflame.quantity.Current;
import fairflame.quantity.Resistance;
import fairflame.quantity.Voltage;
import java.util.Optional;

/**
 * The control circuit with a leak to ground: a transformer with its own resistance, the contacts of the safety string in
 * series, and behind them the coil of valve and module beside the leak. One leg of the transformer is bonded to the
 * chassis; all is taken as resistive. Ohm's and Kirchhoff's laws.
 *
 * @param supply the transformer
 * @param contacts resistance of all contacts in series
 * @param coil valve and module
 * @param leak from the hot side behind the contacts to ground; open when dry
 */
public record LeakCircuit(Supply supply, Resistance contacts, Coil coil, Resistance leak) {
    /**
     * A transformer.
     *
     * @param openCircuit voltage at rest
     * @param internal resistance of its windings, seen from the secondary
     */
    public record Supply(Voltage openCircuit, Resistance internal) {
        /** From the rating: at its rated load in volt-amperes it still gives its rated voltage. */
        public static Supply rated(Voltage openCircuit, Voltage rated, double voltAmperes) {
            if (!(voltAmperes > 0 && voltAmperes <= 300)) {
                throw Refusal.outOfRange("rating of the transformer", voltAmperes + " VA", "above 0 to 300 VA");
            }
            if (openCircuit.compareTo(rated) < 0) {
                throw Refusal.outOfRange("voltage at rest", openCircuit, "the rated voltage or more");
            }
            double amperes = voltAmperes / rated.volts();
            return new Supply(openCircuit, Resistance.ofOhms((openCircuit.volts() - rated.volts()) / amperes));
        }
    }

    /**
     * The coil of the gas valve with what hangs beside it.
     *
     * @param pullingIn resistance while it pulls in
     * @param held resistance once it is in
     */
    public record Coil(Resistance pullingIn, Resistance held) {
        public Coil {
            if (pullingIn.ohms() <= 0 || held.ohms() <= 0) {
                throw Refusal.outOfRange("coil", "0 ohm", "more than 0 ohm");
            }
        }

        /** A coil that draws the same before and after. */
        public static Coil of(Resistance both) {
            return new Coil(both, both);
        }
    }

    /** What the valve is doing. */
    public enum Phase {
        /** No call: the coil is not connected and a meter draws nothing. */
        REST,
        PULLING_IN,
        HELD
    }

    /**
     * Voltages and current at one moment.
     *
     * @param valve at the valve
     * @param transformer at the transformer's terminals
     * @param current drawn from the transformer
     */
    public record Point(Voltage valve, Voltage transformer, Current current) {}

    /**
     * Voltages that a valve needs; they differ from valve to valve, its sheet says them.
     *
     * @param pullIn lowest that opens it
     * @param holdIn lowest that keeps it open; not above pull-in
     */
    public record Limits(Voltage pullIn, Voltage holdIn) {
        public Limits {
            if (holdIn.compareTo(pullIn) > 0) {
                throw Refusal.outOfRange("hold-in voltage", holdIn, "at most the pull-in voltage " + pullIn);
            }
        }
    }

    /** What the valve does at these voltages. */
    public enum Outcome {
        HOLDS,
        /** It opens and lets go again. */
        LETS_GO,
        NEVER_OPENS
    }

    public LeakCircuit {
        if (Double.isInfinite(contacts.ohms())
                || Double.isInfinite(supply.internal().ohms())) {
            throw Refusal.outOfRange("contacts", "open line", "a closed string");
        }
        if (leak.ohms() <= 0) {
            throw Refusal.outOfRange("leak", leak.ohms() + " ohm", "more than 0 ohm, or open");
        }
    }

    /**
     * The circuit that the readings of a visit describe, with the leak that the recorded minimum implies. Needs the
     * transformer at rest and under load, the valve's minimum and both contacts; empty otherwise.
     */
    public static Optional<LeakCircuit> of(Knowledge knowledge, CaseFile file) {
        return LeakReadings.circuit(Facts.of(file, knowledge.vocabulary()));
    }

    public Point at(Phase phase) {
        double coilOhms = switch (phase) {
            case REST -> Double.POSITIVE_INFINITY;
            case PULLING_IN -> coil.pullingIn().ohms();
            case HELD -> coil.held().ohms();
        };
        double open = supply.openCircuit().volts();
        double conductance = 1 / leak.ohms() + 1 / coilOhms;
        double series = supply.internal().ohms() + contacts.ohms();
        double valve = open / (1 + series * conductance);
        double amperes = valve * conductance;
        return new Point(
                Voltage.ofVolts(valve),
                Voltage.ofVolts(open - amperes * supply.internal().ohms()),
                Current.ofAmperes(amperes));
    }

    /**
     * Whether the valve opens at this leak and stays open when the leak has fallen as the header warms. A valve that
     * opened cold lets go once the warm leak leaves less than its hold-in voltage.
     *
     * @param warmLeak the leak with the header warm; the same as the cold one when it does not change
     */
    public Outcome outcome(Limits limits, Resistance warmLeak) {
        if (at(Phase.PULLING_IN).valve().compareTo(limits.pullIn()) < 0) {
            return Outcome.NEVER_OPENS;
        }
        var warm = withLeak(warmLeak).at(Phase.HELD);
        return warm.valve().compareTo(limits.holdIn()) < 0 ? Outcome.LETS_GO : Outcome.HOLDS;
    }

    /** The leak that would leave this voltage at the held valve; open when no leak is needed. */
    public Resistance leakFor(Voltage valve) {
        double series = supply.internal().ohms() + contacts.ohms();
        double lost = supply.openCircuit().volts() - valve.volts();
        double leaking = lost / series - valve.volts() / coil.held().ohms();
        return leaking > 0 ? Resistance.ofOhms(valve.volts() / leaking) : Resistance.open();
    }

    /** The same circuit with another leak. */
    public LeakCircuit withLeak(Resistance other) {
        return new LeakCircuit(supply, contacts, coil, other);
    }
}

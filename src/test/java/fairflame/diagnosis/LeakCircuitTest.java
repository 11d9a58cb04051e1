package fairflame.diagnosis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import fairflame.Refusal;
import fairflame.diagnosis.LeakCircuit.Coil;
import fairflame.diagnosis.LeakCircuit.Limits;
import fairflame.diagnosis.LeakCircuit.Outcome;
import fairflame.diagnosis.LeakCircuit.Phase;
import fairflame.diagnosis.LeakCircuit.Supply;
import fairflame.quantity.Resistance;
import fairflame.quantity.Voltage;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.ojalgo.matrix.decomposition.LU;
import org.ojalgo.matrix.store.RawStore;

class LeakCircuitTest {
    private static LeakCircuit circuit(double contacts, double leak) {
        return new LeakCircuit(
                new Supply(Voltage.ofVolts(26.5), Resistance.ofOhms(1.5)),
                Resistance.ofOhms(contacts),
                Coil.of(Resistance.ofOhms(48)),
                leak == 0 ? Resistance.open() : Resistance.ofOhms(leak));
    }

    private static Limits limits(double pullIn, double holdIn) {
        return new Limits(Voltage.ofVolts(pullIn), Voltage.ofVolts(holdIn));
    }

    // Worked by hand with Ohm's law: 26.5 V at rest, transformer 1.5 ohm, valve and module 48 ohm; printed to one
    // decimal of a volt and two of an ampere.
    @ParameterizedTest(name = "{0}: {3} V, {4} A")
    @CsvSource(textBlock = """
        healthy,             0.2,   0, 25.6, 0.53
        corroded only,       8.0,   0, 22.1, 0.46
        leak only,           0.2,  40, 24.6, 1.13
        both cold,           8.0, 200, 21.3, 0.55
        both warming,        8.0,  40, 18.5, 0.85
        both hot,            8.0,  20, 15.8, 1.12
        both hot and wetter, 8.0,  15, 14.5, 1.27
        """)
    void agreesWithTheWorkedFigures(String state, double contacts, double leak, double volts, double amperes) {
        var held = circuit(contacts, leak).at(Phase.HELD);

        assertThat(held.valve().volts()).as(state).isEqualTo(volts, within(0.05));
        assertThat(held.current().amperes()).as(state).isEqualTo(amperes, within(0.005));
    }

    /** The same circuit as conductances between nodes, solved by a general linear algebra library. */
    private static double[] nodes(LeakCircuit circuit, double coilOhms) {
        double supply = 1 / circuit.supply().internal().ohms();
        double contacts = 1 / circuit.contacts().ohms();
        double ground = 1 / circuit.leak().ohms() + 1 / coilOhms;
        var conductances =
                RawStore.wrap(new double[][] {{supply + contacts, -contacts}, {-contacts, contacts + ground}});
        var currents = RawStore.wrap(
                new double[][] {{supply * circuit.supply().openCircuit().volts()}, {0}});
        var volts = LU.R064.make(2, 2);
        if (!volts.decompose(conductances)) {
            throw new AssertionError("singular: " + circuit);
        }
        var solved = volts.getSolution(currents);
        return new double[] {solved.doubleValue(0, 0), solved.doubleValue(1, 0)};
    }

    @Test
    void agreesWithNodalAnalysisOnRandomCircuits() {
        long seed = 20261125;
        var random = new Random(seed);
        for (int i = 0; i < 2_000; i++) {
            var circuit = new LeakCircuit(
                    new Supply(Voltage.ofVolts(20 + 10 * random.nextDouble()), ohms(0.2, 12, random)),
                    ohms(0.05, 40, random),
                    new Coil(ohms(15, 80, random), ohms(30, 150, random)),
                    ohms(5, 1_000_000, random));
            for (var phase : Phase.values()) {
                double coil = switch (phase) {
                    case REST -> Double.POSITIVE_INFINITY;
                    case PULLING_IN -> circuit.coil().pullingIn().ohms();
                    case HELD -> circuit.coil().held().ohms();
                };
                var expected = nodes(circuit, coil);
                var point = circuit.at(phase);
                var what = "seed " + seed + " case " + i + " " + phase + " " + circuit;
                assertThat(point.transformer().volts()).as(what).isEqualTo(expected[0], within(1e-9));
                assertThat(point.valve().volts()).as(what).isEqualTo(expected[1], within(1e-9));
            }
        }
    }

    private static Resistance ohms(double low, double high, Random random) {
        return Resistance.ofOhms(low * Math.pow(high / low, random.nextDouble()));
    }

    @Test
    void atRestEverySwitchPassesAlthoughItLeaks() {
        assertThat(circuit(8, 20_000).at(Phase.REST).valve().volts()).isGreaterThan(26.4);
    }

    @Test
    void neitherFaultAloneDropsTheValveOutButBothDo() {
        var limits = limits(18, 16);
        var hot = Resistance.ofOhms(20);

        assertThat(circuit(8, 0).outcome(limits, Resistance.open())).isEqualTo(Outcome.HOLDS);
        assertThat(circuit(0.2, 200).outcome(limits, hot)).isEqualTo(Outcome.HOLDS);
        assertThat(circuit(8, 200).outcome(limits, Resistance.ofOhms(40))).isEqualTo(Outcome.HOLDS);
        assertThat(circuit(8, 200).outcome(limits, hot)).isEqualTo(Outcome.LETS_GO);
        assertThat(circuit(8, 20).outcome(limits, hot)).isEqualTo(Outcome.NEVER_OPENS);
    }

    @Test
    void aCoilThatDrawsMoreWhilePullingInMayNeverOpen() {
        var weak = new LeakCircuit(
                new Supply(Voltage.ofVolts(26.5), Resistance.ofOhms(1.5)),
                Resistance.ofOhms(8),
                new Coil(Resistance.ofOhms(12), Resistance.ofOhms(48)),
                Resistance.open());

        assertThat(weak.at(Phase.PULLING_IN).valve())
                .isLessThan(weak.at(Phase.HELD).valve());
        assertThat(weak.outcome(limits(18, 12), Resistance.open())).isEqualTo(Outcome.NEVER_OPENS);
    }

    @Test
    void theLeakThatExplainsAVoltageGivesThatVoltageBack() {
        var dry = circuit(8, 0);
        var leak = dry.leakFor(Voltage.ofVolts(15.8));

        assertThat(leak.ohms()).isEqualTo(20, within(0.2));
        assertThat(dry.withLeak(leak).at(Phase.HELD).valve().volts()).isEqualTo(15.8, within(1e-9));
        assertThat(dry.leakFor(Voltage.ofVolts(24))).isEqualTo(Resistance.open());
    }

    @Test
    void aRatingGivesTheResistanceOfTheTransformer() {
        // 40 VA at 24 V is 1.67 A; from 26.5 V at rest 2.5 V are lost in the windings: 1.5 ohm.
        var supply = Supply.rated(Voltage.ofVolts(26.5), Voltage.ofVolts(24), 40);

        assertThat(supply.internal().ohms()).isEqualTo(1.5, within(1e-9));
    }

    @Test
    void refusesWhatNoCircuitHas() {
        assertThatThrownBy(() -> limits(14, 16)).isInstanceOf(Refusal.class).hasMessageContaining("hold-in");
        assertThatThrownBy(() -> circuit(Double.POSITIVE_INFINITY, 0)).isInstanceOf(Refusal.class);
        assertThatThrownBy(() -> Coil.of(Resistance.ofOhms(0))).isInstanceOf(Refusal.class);
        assertThatThrownBy(() -> circuit(1, 1).withLeak(Resistance.ofOhms(0))).isInstanceOf(Refusal.class);
        assertThatThrownBy(() -> Supply.rated(Voltage.ofVolts(24), Voltage.ofVolts(24), 0))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("VA");
        assertThatThrownBy(() -> Supply.rated(Voltage.ofVolts(20), Voltage.ofVolts(24), 40))
                .isInstanceOf(Refusal.class);
    }

    @Test
    void theReadingsOfTheFlagshipImplyALeakWhileItFires() {
        // 21 - 15.7 V over 10 ohm of contacts is 0.53 A; the coil takes 15.7/48 = 0.327 A, so 0.203 A leak: 77 ohm.
        var facts = Facts.of(
                Visit.of("drops-out")
                        .read(
                                "transformer-idle 26.3 v",
                                "transformer-low 21 v",
                                "valve-low 15.7 v",
                                "contact-high-limit 6 ohm",
                                "contact-outlet 4 ohm")
                        .file(),
                Visit.KNOWLEDGE.vocabulary());

        assertThat(LeakReadings.leak(facts).orElseThrow().base()).isEqualTo(77.4, within(0.1));
        assertThat(LeakReadings.withoutLeak(facts).orElseThrow().base()).isEqualTo(18.6, within(0.1));
    }

    @Test
    void readingsThatNeedNoLeakImplyNone() {
        var contactsOnly = Visit.of("drops-out")
                .read(
                        "transformer-idle 26.3 v",
                        "transformer-low 25.6 v",
                        "valve-low 22.0 v",
                        "contact-high-limit 8 ohm",
                        "contact-outlet 0.2 ohm");
        var lossless = Visit.of("drops-out")
                .read(
                        "transformer-idle 26.3 v",
                        "transformer-low 25.6 v",
                        "valve-low 25.5 v",
                        "contact-high-limit 0.1 ohm",
                        "contact-outlet 0.1 ohm");

        assertThat(LeakReadings.leak(Facts.of(contactsOnly.file(), Visit.KNOWLEDGE.vocabulary())))
                .isEmpty();
        assertThat(LeakReadings.circuit(Facts.of(lossless.file(), Visit.KNOWLEDGE.vocabulary())))
                .isEmpty();
    }
}

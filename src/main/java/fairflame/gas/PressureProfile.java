package fairflame.gas;

import fairflame.Refusal;
import fairflame.quantity.GasFlow;
import fairflame.quantity.Length;
import fairflame.quantity.Pressure;
import java.util.List;
import java.util.Optional;

/**
 * Flow and pressure in every part of a layout for one way of firing, by the code's equations with all fittings counted.
 *
 * @param segments in the order of the flow
 */
public record PressureProfile(
        Firing firing, List<SegmentState> segments, List<OutletState> appliances, List<RegulatorState> regulators) {
    public PressureProfile {
        segments = List.copyOf(segments);
        appliances = List.copyOf(appliances);
        regulators = List.copyOf(regulators);
    }

    public static PressureProfile of(GasTables tables, Layout layout, Firing firing) {
        return new ProfileWalk(tables, layout, firing).profile();
    }

    public SegmentState segment(String id) {
        return segments.stream()
                .filter(state -> state.id().equals(id))
                .findFirst()
                .orElseThrow(() -> Refusal.unknown("segment", id, "a segment of the layout"));
    }

    public OutletState appliance(String id) {
        return appliances.stream()
                .filter(state -> state.id().equals(id))
                .findFirst()
                .orElseThrow(() -> Refusal.unknown("appliance", id, "an appliance of the layout"));
    }

    /** Whether every firing appliance has its minimum and every regulator what it needs. */
    public boolean enough() {
        return appliances.stream().allMatch(OutletState::enough)
                && regulators.stream().allMatch(RegulatorState::enough);
    }

    /**
     * State of one segment.
     *
     * @param equivalent length with all fittings
     * @param to never below 0: a pipe that cannot carry its flow shows 0
     */
    public record SegmentState(String id, GasFlow flow, Length equivalent, Pressure from, Pressure to) {
        public Pressure drop() {
            return from.dropTo(to);
        }
    }

    /**
     * State at one appliance's inlet.
     *
     * @param pressure at the appliance's inlet
     * @param supply the pressure that its zone starts from
     * @param zone what its zone starts from, in words
     */
    public record OutletState(
            String id, GasFlow flow, Pressure pressure, InletRange inlet, Pressure supply, String zone) {
        /** Loss from the head of its zone. */
        public Pressure drop() {
            return supply.dropTo(pressure);
        }

        /** At or above the minimum; a millionth of an inch is forgiven to the arithmetic. An idle appliance has enough. */
        public boolean enough() {
            return flow.cubicFeetPerHour() == 0
                    || pressure.inchesWater() >= inlet.minimum().inchesWater() - 1e-6;
        }

        /** Whether the pressure with no flow could exceed the plate's maximum. */
        public boolean supplyTooHigh() {
            return supply.inchesWater() > inlet.maximum().inchesWater() + 1e-6;
        }
    }

    /**
     * State of one line regulator.
     *
     * @param inlet pressure in front of it
     * @param outlet its setting, or the inlet where that is lower
     */
    public record RegulatorState(String id, GasFlow flow, Pressure inlet, Pressure outlet, LineRegulator regulator) {
        public boolean overRating() {
            return flow.cubicFeetPerHour() > regulator.capacity().cubicFeetPerHour() * (1 + 1e-9);
        }

        public boolean starved() {
            return flow.cubicFeetPerHour() > 0
                    && inlet.inchesWater() < regulator.minimumInlet().inchesWater() - 1e-6;
        }

        public boolean enough() {
            return !overRating() && !starved();
        }

        /** What is wrong with it, for the reader. */
        public Optional<String> trouble() {
            if (overRating()) {
                return Optional.of("regulator " + id + " passes " + Figures.cfh(flow.cubicFeetPerHour()) + ", rated "
                        + Figures.cfh(regulator.capacity().cubicFeetPerHour()));
            }
            return starved()
                    ? Optional.of("regulator " + id + " has " + Figures.pressure(inlet) + " in front, needs "
                            + Figures.pressure(regulator.minimumInlet()))
                    : Optional.empty();
        }
    }
}

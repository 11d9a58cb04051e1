package fairflame.gas;

import fairflame.quantity.GasFlow;
import fairflame.quantity.HeatRate;
import fairflame.quantity.Length;
import fairflame.quantity.Pressure;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Short ways to write layouts in tests. Everything in steel unless said. */
final class Sites {
    static final GasTables TABLES = GasTables.shipped();

    private final List<Segment> segments = new ArrayList<>();
    private final List<LineRegulator> regulators = new ArrayList<>();
    private final List<Appliance> appliances = new ArrayList<>();
    private Gas gas = Gas.ofCode(Fuel.NATURAL);
    private Source source = meter("7inwc");
    private DesignDrop drop = DesignDrop.ofCode();
    private Length altitude = Length.ofFeet(0);
    private Optional<Diversity> diversity = Optional.empty();

    static Sites site() {
        return new Sites();
    }

    static Source meter(String pressure) {
        return new Source(
                Source.Kind.METER,
                "m",
                Pressure.parse(pressure),
                Optional.empty(),
                Optional.of(GasFlow.parse("100000cfh")));
    }

    static Pipe steel(String size) {
        return new Pipe(Material.STEEL_SCHEDULE_40, size);
    }

    Sites pipe(String id, String from, String to, String size, double feet) {
        return pipe(id, from, to, steel(size), feet, Fittings.none());
    }

    Sites pipe(String id, String from, String to, Pipe pipe, double feet, Fittings fittings) {
        segments.add(new Segment(id, from, to, pipe, new Route(Length.ofFeet(feet), fittings, Place.OUTDOORS)));
        return this;
    }

    Sites appliance(String id, String node, double btuPerHour, String minimum) {
        return appliance(new Appliance(
                id,
                node,
                HeatRate.ofBtuPerHour(btuPerHour),
                new InletRange(Pressure.parse(minimum), Pressure.parse("14inwc"))));
    }

    Sites appliance(Appliance appliance) {
        appliances.add(appliance);
        return this;
    }

    Sites regulator(String id, String before, String outlet, String capacity) {
        var set = Pressure.parse(outlet);
        regulators.add(new LineRegulator(id, before, set, GasFlow.parse(capacity), LineRegulator.minimumInletFor(set)));
        return this;
    }

    Sites of(Gas other) {
        gas = other;
        return this;
    }

    Sites from(Source other) {
        source = other;
        return this;
    }

    Sites drop(String low) {
        drop = new DesignDrop(Pressure.parse(low), drop.elevated());
        return this;
    }

    Sites at(double feet) {
        altitude = Length.ofFeet(feet);
        return this;
    }

    Sites diversity(double share, String reason) {
        diversity = Optional.of(new Diversity(share, reason));
        return this;
    }

    Layout build() {
        return new Layout("test site", gas, altitude, source, segments, regulators, appliances, drop, diversity);
    }
}

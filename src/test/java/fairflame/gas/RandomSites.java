package fairflame.gas;

import fairflame.quantity.GasFlow;
import fairflame.quantity.HeatRate;
import fairflame.quantity.Length;
import fairflame.quantity.Pressure;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;

/** Random trees of pipe, the same for the same seed. */
final class RandomSites {
    private static final String[] SIZES = {"1/2", "3/4", "1", "1-1/4", "1-1/2"};
    private static final double[] INPUTS = {35_000, 40_000, 60_000, 75_000, 100_000, 125_000, 250_000, 400_000};

    private final Random random;

    RandomSites(long seed) {
        random = new Random(seed);
    }

    /** A broad tree: each segment leaves any node that is there, as in a large house or a small hotel. */
    Layout broad(int count, double longest) {
        return grown(count, longest, Integer.MAX_VALUE);
    }

    /** A deep tree of so many steel segments; every dead end and some inner nodes have an appliance. */
    Layout tree(int count, double longest) {
        // Mostly near the last nodes, so that runs of some depth come about.
        return grown(count, longest, 4);
    }

    /** One long header with a short branch at every piece, as along a row of cabins. */
    Layout header(int count) {
        var wide = new String[] {"2", "2-1/2", "3", "4"};
        var segments = new ArrayList<Segment>();
        var appliances = new ArrayList<Appliance>();
        for (int i = 0; i < count / 2; i++) {
            var from = i == 0 ? "m" : "n" + (i - 1);
            segments.add(new Segment(
                    "h" + i,
                    from,
                    "n" + i,
                    Sites.steel(wide[random.nextInt(4)]),
                    new Route(Length.ofFeet(1 + random.nextInt(3)), Fittings.none(), Place.OUTDOORS)));
            segments.add(new Segment(
                    "b" + i,
                    "n" + i,
                    "e" + i,
                    Sites.steel(SIZES[random.nextInt(3)]),
                    new Route(Length.ofFeet(3 + random.nextInt(20)), Fittings.none(), Place.OUTDOORS)));
            appliances.add(new Appliance(
                    "a" + i,
                    "e" + i,
                    HeatRate.ofBtuPerHour(12_000 + 1000 * random.nextInt(20)),
                    new InletRange(Pressure.ofInchesWater(4), Pressure.ofInchesWater(14))));
        }
        return site(segments, appliances);
    }

    /** A deep tree of short wide pieces with small appliances, so that something can be done about it. */
    Layout light(int count) {
        var wide = new String[] {"1-1/2", "2", "2-1/2", "3", "4"};
        var deep = grown(count, 3, 4);
        var segments = deep.segments().stream()
                .map(one -> new Segment(
                        one.id(), one.from(), one.to(), Sites.steel(wide[random.nextInt(wide.length)]), one.route()))
                .toList();
        var appliances = deep.appliances().stream()
                .map(one -> new Appliance(one.id(), one.node(), HeatRate.ofBtuPerHour(10_000), one.inlet()))
                .toList();
        return deep.with(segments, List.of(), appliances);
    }

    private Layout grown(int count, double longest, int near) {
        var segments = new ArrayList<Segment>();
        var nodes = new ArrayList<>(List.of("m"));
        for (int i = 0; i < count; i++) {
            var from = nodes.get(nodes.size() - 1 - random.nextInt(Math.min(near, nodes.size())));
            var feet = 1 + random.nextInt((int) longest);
            var fittings =
                    random.nextInt(3) == 0 ? Fittings.none() : Fittings.counted(Map.of("ell-90", random.nextInt(7)));
            segments.add(new Segment(
                    "s" + i,
                    from,
                    "n" + i,
                    Sites.steel(SIZES[random.nextInt(SIZES.length)]),
                    new Route(Length.ofFeet(feet), fittings, Place.values()[random.nextInt(3)])));
            nodes.add("n" + i);
        }
        return site(segments, appliances(segments));
    }

    private List<Appliance> appliances(List<Segment> segments) {
        var inner = new HashSet<String>();
        segments.forEach(segment -> inner.add(segment.from()));
        var appliances = new ArrayList<Appliance>();
        for (var segment : segments) {
            if (!inner.contains(segment.to()) || random.nextInt(6) == 0) {
                appliances.add(new Appliance(
                        "a" + appliances.size(),
                        segment.to(),
                        HeatRate.ofBtuPerHour(INPUTS[random.nextInt(INPUTS.length)]),
                        new InletRange(
                                Pressure.ofInchesWater(4 + random.nextInt(3) * 0.5), Pressure.ofInchesWater(14))));
            }
        }
        return appliances;
    }

    private Layout site(List<Segment> segments, List<Appliance> appliances) {
        var source = new Source(
                Source.Kind.METER,
                "m",
                Pressure.ofInchesWater(6.5 + random.nextInt(5) * 0.5),
                Optional.empty(),
                Optional.of(GasFlow.ofCubicFeetPerHour(100_000)));
        var drop = new DesignDrop(Pressure.ofInchesWater(0.5 + 0.5 * random.nextInt(3)), Pressure.ofPsi(1));
        return new Layout(
                "random site",
                Gas.ofCode(Fuel.NATURAL),
                Length.ofFeet(0),
                source,
                segments,
                List.of(),
                appliances,
                drop,
                Optional.empty());
    }
}

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

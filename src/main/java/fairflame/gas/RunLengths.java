package fairflame.gas;

import fairflame.quantity.Length;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/** Lengths of the runs in each zone: from its head to every outlet, an appliance or the next regulator. */
final class RunLengths {
    private final Map<String, Double> branch = new HashMap<>();
    private final Map<String, Double> longest = new HashMap<>();
    private final Map<String, Zone> zones;

    /**
     * Measures a layout.
     *
     * @param own length of every segment by its id
     */
    RunLengths(Layout layout, PipeTree tree, Map<String, Zone> zones, Map<String, Length> own) {
        this.zones = zones;
        var fromHead = new HashMap<String, Double>();
        var before = new HashMap<String, Double>();
        before.put(layout.source().node(), 0.0);
        for (var segment : tree.downstream()) {
            var start = tree.regulatorBefore(segment.id()).isPresent() ? 0 : before.getOrDefault(segment.from(), 0.0);
            var end = start
                    + Optional.ofNullable(own.get(segment.id())).orElseThrow().feet();
            before.put(segment.to(), end);
            fromHead.put(segment.id(), end);
        }
        for (var segment : tree.upstream()) {
            // The end of a segment is an outlet itself when something stands there; a longer way behind it counts more.
            double far = fromHead.getOrDefault(segment.id(), 0.0);
            for (var next : tree.leaving(segment.to())) {
                if (tree.regulatorBefore(next.id()).isEmpty()) {
                    far = Math.max(far, branch.getOrDefault(next.id(), 0.0));
                }
            }
            branch.put(segment.id(), far);
            longest.merge(head(segment), far, Math::max);
        }
    }

    private String head(Segment segment) {
        return Optional.ofNullable(zones.get(segment.id())).orElseThrow().head();
    }

    /** The way to the most remote outlet behind a segment. */
    Length branch(Segment segment) {
        return Length.ofFeet(branch.getOrDefault(segment.id(), 0.0));
    }

    /** The way to the most remote outlet of the segment's zone. */
    Length longest(Segment segment) {
        return Length.ofFeet(longest.getOrDefault(head(segment), 0.0));
    }
}

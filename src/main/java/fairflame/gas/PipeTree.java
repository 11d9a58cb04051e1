package fairflame.gas;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A layout made ready for walking: what leaves a node, what stands at it, and all segments, source first. */
final class PipeTree {
    private final Map<String, List<Segment>> leaving = new HashMap<>();
    private final Map<String, List<Appliance>> standing = new HashMap<>();
    private final Map<String, LineRegulator> regulators = new HashMap<>();
    private final List<Segment> downstream = new ArrayList<>();

    PipeTree(Layout layout) {
        layout.segments()
                .forEach(segment -> leaving.computeIfAbsent(segment.from(), node -> new ArrayList<>())
                        .add(segment));
        layout.appliances()
                .forEach(appliance -> standing.computeIfAbsent(appliance.node(), node -> new ArrayList<>())
                        .add(appliance));
        layout.regulators().forEach(regulator -> regulators.put(regulator.before(), regulator));
        var waiting = new ArrayDeque<String>(List.of(layout.source().node()));
        while (!waiting.isEmpty()) {
            for (var segment : leaving(waiting.pop())) {
                downstream.add(segment);
                waiting.push(segment.to());
            }
        }
    }

    List<Segment> leaving(String node) {
        return leaving.getOrDefault(node, List.of());
    }

    List<Appliance> standing(String node) {
        return standing.getOrDefault(node, List.of());
    }

    /** The regulator directly before a segment or an appliance. */
    Optional<LineRegulator> regulatorBefore(String id) {
        return Optional.ofNullable(regulators.get(id));
    }

    /** All segments; each after the one that feeds it. */
    List<Segment> downstream() {
        return Collections.unmodifiableList(downstream);
    }

    /** All segments; each before the one that feeds it. */
    List<Segment> upstream() {
        var reversed = new ArrayList<>(downstream);
        Collections.reverse(reversed);
        return reversed;
    }
}

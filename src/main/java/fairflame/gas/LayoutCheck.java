package fairflame.gas;

import fairflame.Refusal;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Refuses piping that is no tree from its source to its appliances. */
final class LayoutCheck {
    private static final int MOST_SEGMENTS = 5_000;

    private LayoutCheck() {}

    static void check(
            String source, List<Segment> segments, List<LineRegulator> regulators, List<Appliance> appliances) {
        if (segments.isEmpty()) {
            throw Refusal.missing("segments", "at least one segment from node " + source);
        }
        if (segments.size() > MOST_SEGMENTS) {
            throw Refusal.outOfRange("number of segments", segments.size(), "1 to " + MOST_SEGMENTS);
        }
        if (appliances.isEmpty()) {
            throw Refusal.missing("appliances", "at least one appliance");
        }
        var ids = uniqueIds(segments, regulators, appliances);
        var into = singleFeeds(source, segments);
        var reached = reached(source, segments);
        segments.forEach(segment -> connected(segment, reached, into));
        appliances.forEach(appliance -> onPipe(appliance, reached));
        var served = served(into, appliances);
        segments.forEach(segment -> serves(segment, served));
        regulatorsStand(regulators, ids);
    }

    private static Set<String> uniqueIds(
            List<Segment> segments, List<LineRegulator> regulators, List<Appliance> appliances) {
        var ids = new HashSet<String>();
        var served = new HashSet<String>();
        var all = new ArrayList<String>();
        segments.forEach(segment -> all.add(segment.id()));
        appliances.forEach(appliance -> all.add(appliance.id()));
        served.addAll(all);
        regulators.forEach(regulator -> all.add(regulator.id()));
        for (var id : all) {
            if (id.isBlank() || !ids.add(id)) {
                throw Refusal.notAllowed("id", id, "an id of its own for every segment, regulator and appliance");
            }
        }
        return served;
    }

    private static Map<String, Segment> singleFeeds(String source, List<Segment> segments) {
        var into = new HashMap<String, Segment>();
        for (var segment : segments) {
            if (segment.from().equals(segment.to())) {
                throw Refusal.notAllowed("cycle", segment.id(), "a segment between two different nodes");
            }
            if (segment.to().equals(source)) {
                throw Refusal.notAllowed("cycle through the source", segment.id(), "no segment that ends at " + source);
            }
            var other = into.put(segment.to(), segment);
            if (other != null) {
                throw Refusal.notAllowed(
                        "second feed of node " + segment.to(),
                        segment.id(),
                        "one segment into each node (" + other.id() + " ends there too): a tree without loops");
            }
        }
        return into;
    }

    private static Set<String> reached(String source, List<Segment> segments) {
        var out = new HashMap<String, List<String>>();
        segments.forEach(segment ->
                out.computeIfAbsent(segment.from(), node -> new ArrayList<>()).add(segment.to()));
        var reached = new HashSet<String>(Set.of(source));
        var waiting = new ArrayDeque<String>(List.of(source));
        while (!waiting.isEmpty()) {
            for (var node : out.getOrDefault(waiting.pop(), List.of())) {
                if (reached.add(node)) {
                    waiting.push(node);
                }
            }
        }
        return reached;
    }

    private static void connected(Segment segment, Set<String> reached, Map<String, Segment> into) {
        if (reached.contains(segment.to())) {
            return;
        }
        var seen = new HashSet<String>();
        var back = segment;
        while (back != null && seen.add(back.id())) {
            back = into.get(back.from());
        }
        if (back == null) {
            throw Refusal.notAllowed("orphan segment", segment.id(), "a way from the source to node " + segment.from());
        }
        throw Refusal.notAllowed("cycle", segment.id(), "a tree: gas never comes back to a node");
    }

    private static void onPipe(Appliance appliance, Set<String> reached) {
        if (!reached.contains(appliance.node())) {
            throw Refusal.notAllowed(
                    "orphan appliance " + appliance.id() + " at node",
                    appliance.node(),
                    "a node that a segment reaches");
        }
    }

    private static Set<String> served(Map<String, Segment> into, List<Appliance> appliances) {
        var served = new HashSet<String>();
        for (var appliance : appliances) {
            var segment = into.get(appliance.node());
            while (segment != null && served.add(segment.id())) {
                segment = into.get(segment.from());
            }
        }
        return served;
    }

    private static void serves(Segment segment, Set<String> served) {
        if (!served.contains(segment.id())) {
            throw Refusal.notAllowed(
                    "segment without appliance", segment.id(), "an appliance behind it: leave capped pipe out");
        }
    }

    private static void regulatorsStand(List<LineRegulator> regulators, Set<String> ids) {
        var taken = new HashSet<String>();
        for (var regulator : regulators) {
            if (!ids.contains(regulator.before())) {
                throw Refusal.unknown(
                        "place of regulator " + regulator.id() + ", before",
                        regulator.before(),
                        "the id of a segment or an appliance");
            }
            if (!taken.add(regulator.before())) {
                throw Refusal.notAllowed("second regulator before", regulator.before(), "one regulator at each place");
            }
        }
    }
}

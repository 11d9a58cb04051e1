package fairflame.gas;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Where the nodes and appliances of a tree stand: a column for each step from the source, a row for each end. A node
 * stands in the row of the first thing behind it, so that the main line runs straight.
 */
final class DrawnPlaces {
    private final Map<String, Integer> columns = new HashMap<>();
    private final Map<String, Integer> nodeRows = new HashMap<>();
    private final Map<String, Integer> applianceRows = new HashMap<>();
    private int rows;

    /** Visits depth first with an own stack: a run may have thousands of segments. */
    DrawnPlaces(Layout layout, PipeTree tree) {
        var source = layout.source().node();
        columns.put(source, 0);
        var waiting = new ArrayDeque<String>(List.of(source));
        var open = new HashMap<String, List<Segment>>();
        Set<String> begun = new HashSet<>();
        while (!waiting.isEmpty()) {
            var node = waiting.peek();
            if (begun.add(node)) {
                open.put(node, new ArrayList<>(tree.leaving(node)));
            }
            var left = open.getOrDefault(node, List.of());
            if (left.isEmpty()) {
                finish(node, tree);
                waiting.pop();
            } else {
                var segment = left.remove(0);
                columns.put(segment.to(), column(node) + 1);
                waiting.push(segment.to());
            }
        }
    }

    private void finish(String node, PipeTree tree) {
        var leaving = tree.leaving(node);
        if (!leaving.isEmpty()) {
            nodeRows.put(node, nodeRow(leaving.get(0).to()));
        }
        for (var appliance : tree.standing(node)) {
            nodeRows.putIfAbsent(node, rows);
            applianceRows.put(appliance.id(), rows++);
        }
    }

    int column(String node) {
        return columns.getOrDefault(node, 0);
    }

    int nodeRow(String node) {
        return nodeRows.getOrDefault(node, 0);
    }

    int applianceRow(String appliance) {
        return applianceRows.getOrDefault(appliance, 0);
    }

    int rows() {
        return rows;
    }

    int lastColumn() {
        return columns.values().stream().mapToInt(Integer::intValue).max().orElse(0);
    }
}

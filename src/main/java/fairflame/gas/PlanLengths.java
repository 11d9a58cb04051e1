package fairflame.gas;

import fairflame.Refusal;
import fairflame.quantity.Length;
import java.util.HashMap;
import java.util.Map;

/**
 * The lengths that new pipe is sized by: for each segment the longest run of its zone, as the layout would be with every
 * too-small segment at its required size.
 */
record PlanLengths(PipeTree tree, Map<String, Zone> zones, Map<String, Length> longest) {
    static PlanLengths of(GasTables tables, Layout layout) {
        var tree = new PipeTree(layout);
        var zones = Zone.all(layout, tree);
        return new PlanLengths(tree, zones, longest(tables, layout, tree, zones));
    }

    private static Map<String, Length> longest(
            GasTables tables, Layout layout, PipeTree tree, Map<String, Zone> zones) {
        var lengths = new HashMap<String, Length>();
        try {
            new SizeSearch(tables, layout, Method.usualFor(layout))
                    .sizing()
                    .segments()
                    .forEach(size -> lengths.put(size.id(), size.lengthUsed()));
        } catch (Refusal withoutTable) {
            // CSST longer than its table cannot be sized, but it can be replaced: lengths as they are.
            var own = new HashMap<String, Length>();
            layout.segments()
                    .forEach(segment -> own.put(segment.id(), segment.route().forSizing(tables, segment.pipe())));
            var runs = new RunLengths(layout, tree, zones, own);
            layout.segments().forEach(segment -> lengths.put(segment.id(), runs.longest(segment)));
        }
        return lengths;
    }
}

package fairflame.gas;

import fairflame.quantity.Pressure;
import java.util.HashMap;
import java.util.Map;

/**
 * Piping between a supply (the source or a line regulator) and what it feeds without another regulator between.
 *
 * @param head what it starts from, in words: {@code meter}, {@code regulator R1}
 * @param supply the pressure it starts from
 * @param allowed the loss that sizing allows in it
 */
record Zone(String head, Pressure supply, Pressure allowed) {
    FlowEquation equation() {
        return FlowEquation.at(supply);
    }

    static Zone of(Layout layout) {
        var source = layout.source();
        return new Zone(source.kind().words(), source.underLoad(), layout.drop().under(source.underLoad()));
    }

    static Zone of(Layout layout, LineRegulator regulator) {
        return new Zone(
                "regulator " + regulator.id(), regulator.outlet(), layout.drop().under(regulator.outlet()));
    }

    /** The zone of every segment by its id, and of every appliance. */
    static Map<String, Zone> all(Layout layout, PipeTree tree) {
        var atNode = new HashMap<String, Zone>();
        var zones = new HashMap<String, Zone>();
        atNode.put(layout.source().node(), of(layout));
        for (var segment : tree.downstream()) {
            var zone = entering(layout, tree, segment.id(), known(atNode, segment.from()));
            zones.put(segment.id(), zone);
            atNode.put(segment.to(), zone);
        }
        for (var appliance : layout.appliances()) {
            zones.put(appliance.id(), entering(layout, tree, appliance.id(), known(atNode, appliance.node())));
        }
        return zones;
    }

    private static Zone entering(Layout layout, PipeTree tree, String id, Zone before) {
        return tree.regulatorBefore(id).map(regulator -> of(layout, regulator)).orElse(before);
    }

    private static Zone known(Map<String, Zone> atNode, String node) {
        var zone = atNode.get(node);
        if (zone == null) {
            throw new IllegalStateException("node before its feed: " + node);
        }
        return zone;
    }
}

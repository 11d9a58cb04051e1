package fairflame.gas;

import fairflame.quantity.GasFlow;
import fairflame.quantity.Pressure;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** What the pipe between an appliance and the head of its zone loses, when lengths and flows are not quite as told. */
final class PredictedLoss {
    private final Layout layout;
    private final PressureLoss loss;
    private final GasTables tables;
    private final List<Segment> way = new ArrayList<>();
    private final Map<String, Double> flows;
    private final Zone zone;
    private final GasFlow flow;

    PredictedLoss(GasTables tables, Layout layout, String appliance, Firing firing) {
        this.layout = layout;
        this.tables = tables;
        this.loss = new PressureLoss(tables, layout.gas());
        var tree = new PipeTree(layout);
        this.flows = firing.bySegment(tree);
        this.flow = GasFlow.ofCubicFeetPerHour(firing.cubicFeetPerHour(appliance));
        this.zone = java.util.Objects.requireNonNull(Zone.all(layout, tree).get(appliance));
        if (tree.regulatorBefore(appliance).isEmpty()) {
            walkUp(tree, layout.appliance(appliance).node());
        }
    }

    private void walkUp(PipeTree tree, String node) {
        var into = new HashMap<String, Segment>();
        layout.segments().forEach(segment -> into.put(segment.to(), segment));
        var segment = into.get(node);
        while (segment != null) {
            way.add(segment);
            segment = tree.regulatorBefore(segment.id()).isPresent() ? null : into.get(segment.from());
        }
    }

    GasFlow flow() {
        return flow;
    }

    /** Loss in inches of water with all lengths and flows taken times a factor; never more than the supply has. */
    double loss(double lengths, double flowFactor) {
        double potential = 0;
        for (var segment : way) {
            potential += lengths
                    * loss.of(
                            zone.equation(),
                            segment.pipe(),
                            segment.equivalent(tables),
                            flowFactor * flows.getOrDefault(segment.id(), 0.0));
        }
        var supply = zone.supply().inchesWater();
        var rest = zone.equation().potential(supply) - potential;
        return zone.equation() == FlowEquation.LOW
                ? Math.min(potential, Pressure.ofPsi(FlowEquation.SPLIT_PSI).inchesWater())
                : supply - zone.equation().inchesWater(rest);
    }
}

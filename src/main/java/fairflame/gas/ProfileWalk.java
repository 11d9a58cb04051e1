package fairflame.gas;

import fairflame.gas.PressureProfile.OutletState;
import fairflame.gas.PressureProfile.RegulatorState;
import fairflame.gas.PressureProfile.SegmentState;
import fairflame.quantity.GasFlow;
import fairflame.quantity.Pressure;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** One walk down the tree that computes a pressure profile. */
final class ProfileWalk {
    private final GasTables tables;
    private final Layout layout;
    private final Firing firing;
    private final PipeTree tree;
    private final PressureLoss loss;
    private final Map<String, Point> nodes = new HashMap<>();
    private final List<RegulatorState> regulators = new ArrayList<>();

    /** A place in a zone: what is left of its potential. */
    private record Point(Zone zone, double potential) {
        static Point headOf(Zone zone) {
            return new Point(zone, zone.equation().potential(zone.supply().inchesWater()));
        }

        Pressure pressure() {
            return Pressure.ofInchesWater(zone.equation().inchesWater(potential));
        }

        Point less(double lost) {
            return new Point(zone, potential - lost);
        }
    }

    ProfileWalk(GasTables tables, Layout layout, Firing firing) {
        this.tables = tables;
        this.layout = layout;
        this.firing = firing;
        this.tree = new PipeTree(layout);
        this.loss = new PressureLoss(tables, layout.gas());
    }

    PressureProfile profile() {
        var flows = firing.bySegment(tree);
        var segments = new ArrayList<SegmentState>();
        nodes.put(layout.source().node(), Point.headOf(Zone.of(layout)));
        for (var segment : tree.downstream()) {
            segments.add(through(segment, flows.getOrDefault(segment.id(), 0.0)));
        }
        var outlets = layout.appliances().stream().map(this::at).toList();
        return new PressureProfile(firing, segments, outlets, regulators);
    }

    private SegmentState through(Segment segment, double flow) {
        var begin = entering(segment.id(), point(segment.from()), flow);
        var length = segment.equivalent(tables);
        var end = begin.less(loss.of(begin.zone().equation(), segment.pipe(), length, flow));
        nodes.put(segment.to(), end);
        return new SegmentState(
                segment.id(), GasFlow.ofCubicFeetPerHour(flow), length, begin.pressure(), end.pressure());
    }

    private OutletState at(Appliance appliance) {
        var flow = firing.cubicFeetPerHour(appliance.id());
        var point = entering(appliance.id(), point(appliance.node()), flow);
        return new OutletState(
                appliance.id(),
                GasFlow.ofCubicFeetPerHour(flow),
                point.pressure(),
                appliance.inlet(),
                point.zone().supply(),
                point.zone().head());
    }

    /** The point behind a regulator, or the same point where there is none. */
    private Point entering(String id, Point before, double flow) {
        var found = tree.regulatorBefore(id);
        if (found.isEmpty()) {
            return before;
        }
        var regulator = found.get();
        var inlet = before.pressure();
        var outlet = inlet.compareTo(regulator.outlet()) < 0 ? inlet : regulator.outlet();
        regulators.add(new RegulatorState(regulator.id(), GasFlow.ofCubicFeetPerHour(flow), inlet, outlet, regulator));
        var zone = Zone.of(layout, regulator);
        return new Point(zone, zone.equation().potential(outlet.inchesWater()));
    }

    private Point point(String node) {
        var point = nodes.get(node);
        if (point == null) {
            throw new IllegalStateException("node before its feed: " + node);
        }
        return point;
    }
}

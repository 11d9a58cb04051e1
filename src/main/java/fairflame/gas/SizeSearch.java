package fairflame.gas;

import fairflame.Refusal;
import fairflame.gas.Sizing.SegmentSize;
import fairflame.quantity.GasFlow;
import fairflame.quantity.Length;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/**
 * Sizes a layout. Fittings that count make the lengths hang on the sizes: lengths are taken with every segment that is
 * too small already at its required size, found by repeating until nothing grows.
 */
final class SizeSearch {
    private final GasTables tables;
    private final Layout layout;
    private final Method method;
    private final PipeTree tree;
    private final Map<String, Zone> zones;
    private final Map<String, Double> flows;

    SizeSearch(GasTables tables, Layout layout, Method method) {
        this.tables = tables;
        this.layout = layout;
        this.method = method;
        this.tree = new PipeTree(layout);
        this.zones = Zone.all(layout, tree);
        this.flows = designFlows();
    }

    Sizing sizing() {
        var sized = new HashMap<String, Pipe>();
        tree.downstream().forEach(segment -> sized.put(segment.id(), tables.known(segment.pipe())));
        while (true) {
            var lengths = new RunLengths(layout, tree, zones, own(sized));
            var sizes = new ArrayList<SegmentSize>();
            var grown = false;
            for (var segment : tree.downstream()) {
                var size = size(segment, length(lengths, segment));
                sizes.add(size);
                var next = size.enough() ? segment.pipe() : size.required().orElse(segment.pipe());
                grown |=
                        wider(next, Optional.ofNullable(sized.get(segment.id())).orElseThrow())
                                && sized.put(segment.id(), next) != null;
            }
            if (!grown) {
                return new Sizing(method, sizes, SupplyCheck.of(layout), Sizing.notes(layout));
            }
        }
    }

    private Map<String, Length> own(Map<String, Pipe> sized) {
        var own = new HashMap<String, Length>();
        for (var segment : tree.downstream()) {
            var pipe = Optional.ofNullable(sized.get(segment.id())).orElse(segment.pipe());
            own.put(segment.id(), segment.in(tables, pipe).route().forSizing(tables, pipe));
        }
        return own;
    }

    private boolean wider(Pipe one, Pipe other) {
        var sizes = tables.sizes(one.material());
        return sizes.indexOf(one) > sizes.indexOf(other);
    }

    private Length length(RunLengths lengths, Segment segment) {
        return method == Method.BRANCH_LENGTH ? lengths.branch(segment) : lengths.longest(segment);
    }

    private SegmentSize size(Segment segment, Length length) {
        var flow = Optional.ofNullable(flows.get(segment.id())).orElse(0.0);
        var zone = Optional.ofNullable(zones.get(segment.id())).orElseThrow();
        try {
            var carries = capacity(zone, segment.pipe(), length);
            var required = required(zone, segment.pipe().material(), length, flow);
            return new SegmentSize(
                    segment.id(),
                    GasFlow.ofCubicFeetPerHour(flow),
                    length,
                    zone.supply(),
                    zone.allowed(),
                    required,
                    required.map(pipe -> capacity(zone, pipe, length)),
                    segment.pipe(),
                    carries);
        } catch (Refusal refusal) {
            throw refusal.at("segment " + segment.id());
        }
    }

    private Optional<Pipe> required(Zone zone, Material material, Length length, double flow) {
        return tables.offered(material).stream()
                .filter(pipe -> tried(zone, pipe, length)
                        .map(capacity -> capacity.carries(flow))
                        .orElse(false))
                .findFirst();
    }

    /** A size without a table of its own is passed over, not refused: the next one may have one. */
    private Optional<Capacity> tried(Zone zone, Pipe pipe, Length length) {
        try {
            return Optional.of(capacity(zone, pipe, length));
        } catch (Refusal withoutTable) {
            return Optional.empty();
        }
    }

    private Capacity capacity(Zone zone, Pipe pipe, Length length) {
        return Capacity.forSizing(tables, new Run(layout.gas(), pipe, length, zone.supply(), zone.allowed()));
    }

    /** Connected loads; where a diversity was entered, shared pipe carries its share, never less than its largest. */
    private Map<String, Double> designFlows() {
        var all = Firing.all(layout);
        var flows = all.bySegment(tree);
        layout.diversity().ifPresent(diversity -> {
            var largest = new HashMap<String, Double>();
            for (var segment : tree.upstream()) {
                largest.put(segment.id(), largestBehind(all, segment, largest));
            }
            flows.replaceAll((id, flow) -> Math.max(
                    flow * diversity.share(),
                    Optional.ofNullable(largest.get(id)).orElse(flow)));
        });
        return flows;
    }

    private double largestBehind(Firing all, Segment segment, Map<String, Double> behind) {
        double largest = 0;
        for (var appliance : tree.standing(segment.to())) {
            largest = Math.max(largest, all.cubicFeetPerHour(appliance.id()));
        }
        for (var next : tree.leaving(segment.to())) {
            largest = Math.max(largest, behind.getOrDefault(next.id(), 0.0));
        }
        return largest;
    }
}

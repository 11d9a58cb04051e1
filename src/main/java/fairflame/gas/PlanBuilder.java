package fairflame.gas;

import fairflame.quantity.GasFlow;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Makes a plan out of the decisions of a search: priced changes, the layout as it will be, its pressures. */
final class PlanBuilder {
    private final GasTables tables;
    private final Layout layout;
    private final PipePrices prices;
    private final PlanRules rules;
    private final PlanScope scope;
    private final Map<String, OwnLines.Offer> own;
    private final Map<String, State.Decision> replaced = new LinkedHashMap<>();
    private final Map<String, State.Decision> regulated = new LinkedHashMap<>();
    private final Map<String, State.Decision> valved = new LinkedHashMap<>();
    private final Map<String, State.Decision> owned = new LinkedHashMap<>();
    private final Set<String> ids = new HashSet<>();
    private final List<Change> changes = new ArrayList<>();

    PlanBuilder(
            GasTables tables,
            Layout layout,
            PipePrices prices,
            PlanRules rules,
            PlanScope scope,
            Map<String, OwnLines.Offer> own) {
        this.tables = tables;
        this.layout = layout;
        this.prices = prices;
        this.rules = rules;
        this.scope = scope;
        this.own = own;
        layout.segments().forEach(segment -> ids.add(segment.id()));
        layout.appliances().forEach(appliance -> ids.add(appliance.id()));
        layout.regulators().forEach(regulator -> ids.add(regulator.id()));
    }

    Plan plan(State state) {
        state.trace().each(this::sort);
        var after = after();
        var cents = changes.stream()
                .mapToLong(change -> change.price().getAmountMinorLong())
                .sum();
        return new Plan(
                kind(),
                PlanMoney.of(cents, prices.currency()),
                changes,
                after,
                PressureProfile.of(tables, after, Firing.all(after)),
                PressureProfile.of(
                        tables, after, Firing.alone(after, after.largest().id())));
    }

    private void sort(State.Decision decision) {
        switch (decision.kind()) {
            case REPLACE -> replaced.put(decision.at(), decision);
            case REGULATOR -> regulated.put(decision.at(), decision);
            case EXCESS_FLOW_VALVE -> valved.put(decision.at(), decision);
            default -> owned.put(decision.at(), decision);
        }
    }

    private Plan.Kind kind() {
        if (scope.raised()) {
            return Plan.Kind.RAISED_PRESSURE;
        }
        if (!owned.isEmpty()) {
            return Plan.Kind.OWN_LINE;
        }
        return replaced.isEmpty() ? Plan.Kind.NOTHING : Plan.Kind.LARGER_PIPE;
    }

    private Layout after() {
        var regulators = new ArrayList<>(layout.regulators());
        var segments = new ArrayList<Segment>();
        var appliances = new ArrayList<Appliance>();
        raise();
        var live = live();
        for (var segment : new PipeTree(layout).downstream()) {
            if (live.contains(segment.id())) {
                segments.add(kept(segment));
                newRegulator(segment.id(), "segment " + segment.id(), regulators);
                valve(segment.id());
            } else {
                changes.add(change(
                        Change.Kind.CAP,
                        segment.id(),
                        Optional.of(segment.pipe()),
                        0,
                        0,
                        "Cap " + segment.pipe().words() + " of segment " + segment.id()
                                + ": it serves nothing any more."));
            }
        }
        for (var appliance : layout.appliances()) {
            appliances.add(owned.containsKey(appliance.id()) ? moved(appliance, segments, regulators) : appliance);
            newRegulator(appliance.id(), appliance.id(), regulators);
        }
        regulators.removeIf(regulator -> gone(regulator.before(), segments, appliances));
        once();
        return layout.from(source()).with(segments, regulators, appliances);
    }

    private static boolean gone(String before, List<Segment> segments, List<Appliance> appliances) {
        return segments.stream().noneMatch(segment -> segment.id().equals(before))
                && appliances.stream().noneMatch(appliance -> appliance.id().equals(before));
    }

    private Source source() {
        var is = layout.source();
        return scope.raised()
                ? new Source(is.kind(), is.node(), rules.raised().orElseThrow(), Optional.empty(), is.capacity())
                : is;
    }

    private void raise() {
        if (scope.raised()) {
            var to = rules.raised().orElseThrow();
            changes.add(new Change(
                    Change.Kind.RAISE_DELIVERY,
                    layout.source().node(),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    layout.connectedLoad(),
                    prices.raisedDelivery().orElseThrow(),
                    "The gas supplier raises the delivery from "
                            + Figures.pressure(layout.source().pressure()) + " to " + Figures.pressure(to) + "."));
        }
    }

    /** Segments that still feed an appliance. */
    private Set<String> live() {
        var into = new HashMap<String, Segment>();
        layout.segments().forEach(segment -> into.put(segment.to(), segment));
        var live = new HashSet<String>();
        for (var appliance : layout.appliances()) {
            var segment = owned.containsKey(appliance.id()) ? null : into.get(appliance.node());
            while (segment != null && live.add(segment.id())) {
                segment = into.get(segment.from());
            }
        }
        return live;
    }

    private Segment kept(Segment segment) {
        var decision = replaced.get(segment.id());
        if (decision == null) {
            return segment;
        }
        var now = segment.in(tables, decision.pipe());
        changes.add(new Change(
                Change.Kind.REPLACE,
                segment.id(),
                Optional.of(segment.pipe()),
                Optional.of(now.pipe()),
                Optional.of(now.route()),
                GasFlow.ofCubicFeetPerHour(decision.load()),
                PlanMoney.of(decision.cents(), prices.currency()),
                "Replace " + Figures.feet(segment.route().length()) + " of "
                        + segment.pipe().words() + " (segment " + segment.id() + ") by "
                        + now.pipe().words() + "."));
        return now;
    }

    private void newRegulator(String at, String words, List<LineRegulator> regulators) {
        var decision = regulated.get(at);
        if (decision != null) {
            addRegulator(at, words, decision.load(), decision.cents(), regulators);
        }
    }

    private void addRegulator(String at, String words, double load, long cents, List<LineRegulator> regulators) {
        var outlet = rules.lineOutlet();
        regulators.add(new LineRegulator(
                unused("regulator " + at),
                at,
                outlet,
                GasFlow.ofCubicFeetPerHour(load),
                LineRegulator.minimumInletFor(outlet)));
        changes.add(change(
                Change.Kind.REGULATOR,
                at,
                Optional.empty(),
                load,
                cents,
                "Line regulator before " + words + ", set to " + Figures.pressure(outlet) + ", for " + Figures.cfh(load)
                        + "."));
    }

    private void valve(String at) {
        var decision = valved.get(at);
        if (decision != null) {
            addValve(at, decision.load(), decision.cents());
        }
    }

    private void addValve(String at, double load, long cents) {
        changes.add(change(
                Change.Kind.EXCESS_FLOW_VALVE,
                at,
                Optional.empty(),
                load,
                cents,
                "Excess-flow valve for " + Figures.cfh(load) + " at the source, line " + at + "."));
    }

    private Appliance moved(Appliance appliance, List<Segment> segments, List<LineRegulator> regulators) {
        var offer = Optional.ofNullable(own.get(appliance.id())).orElseThrow();
        var line = unused("own line of " + appliance.id());
        var node = "end of " + line;
        segments.add(new Segment(line, layout.source().node(), node, offer.pipe(), offer.route()));
        var load = layout.load(appliance).cubicFeetPerHour();
        changes.add(new Change(
                Change.Kind.OWN_LINE,
                appliance.id(),
                Optional.empty(),
                Optional.of(offer.pipe()),
                Optional.of(offer.route()),
                layout.load(appliance),
                PlanMoney.of(offer.laid(), prices.currency()),
                "A line of its own from the " + layout.source().kind().words() + " to " + appliance.name() + ": "
                        + Figures.feet(offer.route().length()) + " of "
                        + offer.pipe().words() + "."));
        offer.regulator()
                .ifPresent(regulator -> addRegulator(
                        regulator.atStart() ? line : appliance.id(),
                        regulator.atStart() ? line : appliance.id(),
                        load,
                        regulator.cents(),
                        regulators));
        if (offer.valve() > 0) {
            addValve(line, load, offer.valve());
        }
        // A regulator that stood before the appliance goes with the old line.
        regulators.removeIf(regulator ->
                regulator.before().equals(appliance.id()) && layout.regulators().contains(regulator));
        return new Appliance(
                appliance.id(),
                node,
                appliance.input(),
                appliance.inlet(),
                appliance.inputAtSite(),
                appliance.ownLine());
    }

    private void once() {
        if (!changes.isEmpty()) {
            changes.add(new Change(
                    Change.Kind.ONCE,
                    layout.source().node(),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    layout.connectedLoad(),
                    prices.once(),
                    "Once for all changes: permit, pressure test, gas fitter."));
        }
    }

    private Change change(Change.Kind kind, String at, Optional<Pipe> was, double load, long cents, String words) {
        return new Change(
                kind,
                at,
                was,
                Optional.empty(),
                Optional.empty(),
                GasFlow.ofCubicFeetPerHour(load),
                PlanMoney.of(cents, prices.currency()),
                words);
    }

    private String unused(String wanted) {
        var id = wanted;
        for (int i = 2; !ids.add(id); i++) {
            id = wanted + " " + i;
        }
        return id;
    }
}

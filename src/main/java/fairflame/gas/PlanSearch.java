package fairflame.gas;

import fairflame.quantity.GasFlow;
import fairflame.quantity.Length;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * One exact search: fronts of cost, load and budget are carried from the appliances up to the source. In each zone the
 * budget is what may still be lost; a regulator closes a zone and opens the budget of the one before it.
 */
final class PlanSearch {
    private final Layout layout;
    private final PipePrices prices;
    private final PlanRules rules;
    private final PlanScope scope;
    private final PipeTree tree;
    private final PipeChoices choices;
    private final Map<String, Zone> zones;
    private final Map<String, Length> longest;
    private final Zone source;
    private final Zone low;
    private final Map<String, OwnLines.Offer> own;
    private final Map<Zone, Map<String, Front>> before = new HashMap<>();
    private final Map<String, Zone> feeding = new HashMap<>();
    private long states;

    PlanSearch(
            GasTables tables,
            Layout layout,
            PipePrices prices,
            PlanRules rules,
            PlanScope scope,
            PlanLengths lengths,
            PipeChoices choices) {
        this.layout = layout;
        this.prices = prices;
        this.rules = rules;
        this.scope = scope;
        this.tree = lengths.tree();
        this.choices = choices;
        this.zones = lengths.zones();
        this.longest = lengths.longest();
        this.source = PlanZones.source(layout, rules, scope);
        this.low = PlanZones.behindNewRegulator(layout, rules);
        this.own = new OwnLines(tables, layout, prices, rules, choices).from(source, scope);
        layout.segments().forEach(segment -> feeding.put(segment.to(), zone(segment.id())));
    }

    /** The cheapest way to settle everything; empty when there is none. */
    Optional<State> cheapest() {
        for (var segment : tree.upstream()) {
            for (var zone : zonesAt(segment)) {
                var front = beforeSegment(segment, zone);
                states += front.size();
                before.computeIfAbsent(zone, key -> new HashMap<>()).put(segment.id(), front);
            }
        }
        return at(layout.source().node(), source).states().stream()
                .filter(State::feasible)
                .findFirst();
    }

    long states() {
        return states;
    }

    Map<String, OwnLines.Offer> own() {
        return own;
    }

    /** The zones in which the node that a segment leaves may lie. */
    private List<Zone> zonesAt(Segment segment) {
        // Behind a new regulator first: the elevated zone builds on it.
        return scope.raised() ? List.of(low, source) : List.of(feeding.getOrDefault(segment.from(), source));
    }

    private Zone zone(String id) {
        return Optional.ofNullable(zones.get(id)).orElseThrow();
    }

    private Front beforeSegment(Segment segment, Zone zone) {
        var regulator = tree.regulatorBefore(segment.id());
        if (regulator.isPresent()) {
            var inner = zone(segment.id());
            return behind(regulator.get(), zone, through(segment, inner));
        }
        var passed = through(segment, zone);
        if (!scope.raised() || zone.equals(low)) {
            return Front.of(passed);
        }
        var all = new ArrayList<>(passed);
        for (var state : settled(segment, low).states()) {
            newRegulator(segment.id(), state).ifPresent(all::add);
        }
        return Front.of(all);
    }

    /** Everything settled at a node that lies in a zone. */
    private Front at(String node, Zone zone) {
        var front = Front.NOTHING;
        for (var appliance : tree.standing(node)) {
            front = front.and(Front.of(ways(appliance, zone)));
        }
        for (var segment : tree.leaving(node)) {
            front = front.and(settled(segment, zone));
        }
        return front;
    }

    private Front settled(Segment segment, Zone zone) {
        return Optional.ofNullable(before.get(zone))
                .map(fronts -> fronts.get(segment.id()))
                .orElseThrow();
    }

    private List<State> ways(Appliance appliance, Zone zone) {
        var ways = new ArrayList<State>();
        Optional.ofNullable(own.get(appliance.id()))
                .ifPresent(offer -> ways.add(new State(
                        offer.cents(),
                        0,
                        Double.POSITIVE_INFINITY,
                        State.Trace.NONE.and(new State.Decision(
                                Change.Kind.OWN_LINE, appliance.id(), offer.pipe(), load(appliance), offer.cents())))));
        if (scope.forced().contains(appliance.id())) {
            return ways;
        }
        var regulator = tree.regulatorBefore(appliance.id());
        if (regulator.isPresent()) {
            var inner = Zone.of(layout, regulator.get());
            ways.addAll(behind(regulator.get(), zone, List.of(standing(appliance, inner)))
                    .states());
            return ways;
        }
        if (!scope.raised() || PlanZones.fits(appliance, zone)) {
            var state = standing(appliance, zone);
            if (state.feasible()) {
                ways.add(state);
            }
        }
        if (scope.raised() && !zone.equals(low) && PlanZones.fits(appliance, low)) {
            newRegulator(appliance.id(), standing(appliance, low)).ifPresent(ways::add);
        }
        return ways;
    }

    private State standing(Appliance appliance, Zone zone) {
        return new State(0, load(appliance), PlanZones.budget(appliance, zone), State.Trace.NONE);
    }

    private double load(Appliance appliance) {
        return layout.load(appliance).cubicFeetPerHour();
    }

    /** A regulator that is there: what is behind it, seen from the zone before it. */
    private static Front behind(LineRegulator regulator, Zone zone, List<State> inner) {
        var states = new ArrayList<State>();
        for (var state : inner) {
            if (state.load() == 0) {
                states.add(state);
            } else if (state.feasible() && state.load() <= regulator.capacity().cubicFeetPerHour() * (1 + 1e-9)) {
                var budget = PlanZones.downTo(zone, regulator.minimumInlet());
                states.add(new State(state.cents(), state.load(), budget, state.trace()));
            }
        }
        return Front.of(states);
    }

    private Optional<State> newRegulator(String at, State inner) {
        if (inner.load() == 0) {
            return Optional.of(inner);
        }
        if (!inner.feasible()) {
            return Optional.empty();
        }
        var flow = GasFlow.ofCubicFeetPerHour(inner.load());
        return prices.regulator(flow, source.supply(), low.supply())
                .map(price -> PlanMoney.positive("price of a line regulator", price, prices.currency()))
                .map(cents -> new State(
                        inner.cents() + cents,
                        inner.load(),
                        PlanZones.regulatorBudget(source, rules.lineOutlet()),
                        inner.trace().and(State.Decision.regulator(at, inner.load(), cents))))
                .filter(State::feasible);
    }

    /** Every state at the end of a segment, through every pipe that may lie there. */
    private List<State> through(Segment segment, Zone zone) {
        var options = choices.on(segment, zone, length(segment), scope);
        var passed = new ArrayList<State>();
        for (var alike : at(segment.to(), zone).byLoad()) {
            var load = alike.get(0).load();
            if (load == 0) {
                passed.addAll(alike);
                continue;
            }
            // Pipe by pipe, so that each run of states keeps its order and the front has little to sort.
            for (var priced : choices.carrying(options, zone, load)) {
                for (var state : alike) {
                    step(segment, zone, state, priced).ifPresent(passed::add);
                }
            }
        }
        return passed;
    }

    private Length length(Segment segment) {
        return Optional.ofNullable(longest.get(segment.id())).orElseThrow();
    }

    private Optional<State> step(Segment segment, Zone zone, State state, PipeChoices.Priced priced) {
        var choice = priced.choice();
        var trace = state.trace();
        if (choice.laid()) {
            trace = trace.and(
                    new State.Decision(Change.Kind.REPLACE, segment.id(), choice.pipe(), state.load(), choice.cents()));
        }
        var cents = state.cents() + choice.cents();
        var budget = state.budget() - priced.loss();
        var touched = choice.laid() || (zone.equals(source) && scope.raised());
        if (rules.excessFlow().isPresent()
                && touched
                && segment.from().equals(layout.source().node())) {
            var valve = prices.excessFlowValve(GasFlow.ofCubicFeetPerHour(state.load()));
            if (valve.isEmpty()) {
                return Optional.empty();
            }
            var price = PlanMoney.positive("price of an excess-flow valve", valve.get(), prices.currency());
            cents += price;
            budget -= PlanZones.valveLoss(zone, rules);
            trace = trace.and(State.Decision.valve(segment.id(), state.load(), price));
        }
        return budget < -State.HAIR ? Optional.empty() : Optional.of(new State(cents, state.load(), budget, trace));
    }
}

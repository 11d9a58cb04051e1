package fairflame.gas;

import fairflame.quantity.GasFlow;
import fairflame.quantity.Length;
import fairflame.quantity.Pressure;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import java.util.Set;
import java.util.TreeSet;
import org.ojalgo.optimisation.Expression;
import org.ojalgo.optimisation.ExpressionsBasedModel;
import org.ojalgo.optimisation.Variable;
import org.ojalgo.optimisation.integer.IntegerStrategy;
import org.ojalgo.type.context.NumberContext;

/**
 * The same question put to a general mixed-integer solver (ojAlgo): one yes-or-no variable for each segment, pipe, mode
 * (low or elevated) and set of appliances that have left for a line of their own. Losses are computed here from the
 * equations of IFGC 402.4, apart from the program's own classes.
 */
final class SolverPlan {
    // The solver counts in hundreds of dollars, so that its rows hold figures of one size.
    private static final double CENTS = 10_000;
    private static final long NEVER = 1_000_000_000;

    private final Layout layout;
    private final PipePrices prices;
    private final PlanRules rules;
    private final boolean raised;
    private final List<String> mobile;
    private final Map<String, List<Segment>> ways = new HashMap<>();
    private final Sizing sizing;
    private final ExpressionsBasedModel model = new ExpressionsBasedModel();
    private final Map<String, Variable> moved = new HashMap<>();
    private final Map<String, Variable> high = new HashMap<>();
    private final Map<Segment, List<Use>> uses = new HashMap<>();

    private record Use(Variable variable, boolean high, double load, double loss, Set<String> gone) {}

    SolverPlan(Layout layout, PipePrices prices, PlanRules rules, boolean raised) {
        this.layout = layout;
        this.prices = prices;
        this.rules = rules;
        this.raised = raised;
        this.sizing = Sizing.of(Sites.TABLES, layout, Method.LONGEST_LENGTH);
        var into = new HashMap<String, Segment>();
        layout.segments().forEach(segment -> into.put(segment.to(), segment));
        for (var appliance : layout.appliances()) {
            var way = new ArrayList<Segment>();
            for (var at = into.get(appliance.node()); at != null; at = into.get(at.from())) {
                way.add(at);
            }
            ways.put(appliance.id(), way);
        }
        this.mobile = rules.ownLines().stream()
                .sorted()
                .filter(id -> ownCost(id).isPresent())
                .toList();
    }

    /** Cost in cents without what comes once; empty when there is no plan. */
    OptionalLong cents() {
        mobile.forEach(id -> moved.put(
                id, model.newVariable("moved " + id).binary().weight(ownCost(id).getAsLong() / CENTS)));
        for (var segment : layout.segments()) {
            if (raised) {
                high.put(segment.to(), model.newVariable("high " + segment.id()).binary());
            }
        }
        layout.segments().forEach(this::segment);
        layout.appliances().forEach(this::appliance);
        // One thread, so that every run does the same; a gap far below a cent.
        model.options.integer(
                IntegerStrategy.newConfigurable().withParallelism(() -> 1).withGapTolerance(NumberContext.of(12, 14)));
        var result = model.minimise();
        return result.getState().isFeasible()
                ? OptionalLong.of(Math.round(result.getValue() * CENTS))
                : OptionalLong.empty();
    }

    private double inlet(boolean elevated) {
        if (elevated) {
            return rules.raised().orElseThrow().inchesWater();
        }
        return raised
                ? rules.lineOutlet().inchesWater()
                : layout.source().underLoad().inchesWater();
    }

    private Pressure allowed(boolean elevated) {
        return elevated ? layout.drop().elevated() : layout.drop().low();
    }

    private List<Appliance> behind(Segment segment) {
        return layout.appliances().stream()
                .filter(appliance -> ways.get(appliance.id()).contains(segment))
                .toList();
    }

    private static double load(List<Appliance> appliances, Layout layout, Set<String> gone) {
        return appliances.stream()
                .filter(appliance -> !gone.contains(appliance.id()))
                .mapToDouble(appliance -> layout.load(appliance).cubicFeetPerHour())
                .sum();
    }

    private void segment(Segment segment) {
        var list = new ArrayList<Use>();
        uses.put(segment, list);
        var behind = behind(segment);
        var here = mobile.stream()
                .filter(id -> behind.stream().anyMatch(one -> one.id().equals(id)))
                .toList();
        for (int bits = 0; bits < 1 << here.size(); bits++) {
            var gone = new TreeSet<String>();
            for (int i = 0; i < here.size(); i++) {
                if ((bits >> i & 1) == 1) {
                    gone.add(here.get(i));
                }
            }
            var load = load(behind, layout, gone);
            if (load == 0) {
                list.add(new Use(model.newVariable("idle " + segment.id()).binary(), false, 0, 0, gone));
                if (raised) {
                    list.add(new Use(
                            model.newVariable("idle high " + segment.id()).binary(), true, 0, 0, gone));
                }
            } else {
                uses(segment, false, load, gone, list);
                if (raised) {
                    uses(segment, true, load, gone, list);
                }
            }
        }
        link(segment, here, list);
    }

    private void uses(Segment segment, boolean elevated, double load, Set<String> gone, List<Use> list) {
        if (elevated
                && segment.route().place() == Place.INDOORS
                && rules.raised().orElseThrow().compareTo(rules.highestIndoors()) > 0) {
            return;
        }
        var pipes = new ArrayList<Pipe>(prices.offers());
        pipes.remove(segment.pipe());
        pipes.removeIf(pipe -> !rules.places()
                .getOrDefault(pipe.material(), Set.of())
                .contains(segment.route().place()));
        pipes.add(segment.pipe());
        for (var pipe : pipes) {
            var kept = pipe.equals(segment.pipe());
            var free = kept && !elevated;
            if (free || load <= limit(pipe, sizing.segment(segment.id()).lengthUsed(), elevated) * (1 + 1e-9)) {
                var feet = segment.route().length().feet()
                        + Sites.TABLES
                                .equivalentLength(
                                        pipe, segment.route().fittings().counts())
                                .feet();
                var cost = kept ? 0 : prices.laid(pipe, segment.route()).getAmountMinorLong();
                list.add(new Use(
                        model.newVariable(segment.id() + pipe + gone + elevated)
                                .binary()
                                .weight(cost / CENTS),
                        elevated,
                        load,
                        loss(pipe, feet, load, elevated),
                        gone));
            }
        }
    }

    private double widest(boolean elevated) {
        return elevated ? highBudget() : Math.min(inlet(false), allowed(false).inchesWater());
    }

    private double limit(Pipe pipe, Length length, boolean elevated) {
        if (rules.newPipe() == PlanRules.NewPipe.BY_RUN && !elevated) {
            return Double.POSITIVE_INFINITY;
        }
        var run = new Run(layout.gas(), pipe, length, Pressure.ofInchesWater(inlet(elevated)), allowed(elevated));
        return Capacity.forSizing(Sites.TABLES, run).flow().cubicFeetPerHour();
    }

    /** Low: inches of water. Elevated: absolute psi squared. IFGC 402.4 solved for the loss, natural gas. */
    private static double loss(Pipe pipe, double feet, double cfh, boolean elevated) {
        var bore = Sites.TABLES.bore(pipe).orElseThrow().inches();
        return elevated
                ? 0.6094 / 0.9992 * feet * Math.pow(Math.pow(cfh, 0.381) / (18.93 * bore), 1 / 0.206)
                : 0.6094 * feet * Math.pow(Math.pow(cfh, 0.381) / (19.17 * bore), 1 / 0.206);
    }

    private void link(Segment segment, List<String> here, List<Use> list) {
        var one = model.newExpression("one of " + segment.id()).level(1);
        list.forEach(use -> one.set(use.variable(), 1));
        for (var id : here) {
            var gone = model.newExpression(segment.id() + " without " + id).level(0);
            gone.set(moved.get(id), -1);
            list.stream().filter(use -> use.gone().contains(id)).forEach(use -> gone.set(use.variable(), 1));
        }
        if (raised) {
            var mode = model.newExpression("mode of " + segment.id()).level(0);
            mode.set(high.get(segment.to()), -1);
            list.stream().filter(Use::high).forEach(use -> mode.set(use.variable(), 1));
            modes(segment, list);
        }
    }

    /** Pressure never rises again behind a regulator; where it falls, one stands and is paid for by its load. */
    private void modes(Segment segment, List<Use> list) {
        var feed = high.get(segment.from());
        if (feed != null) {
            var down = model.newExpression("no rise at " + segment.id()).upper(0);
            down.set(high.get(segment.to()), 1).set(feed, -1);
        }
        for (var use : list) {
            if (!use.high() && use.load() > 0) {
                var price = prices.regulator(
                        GasFlow.ofCubicFeetPerHour(use.load()), rules.raised().orElseThrow(), rules.lineOutlet());
                var regulator = model.newVariable("regulator " + use.variable().getName())
                        .binary();
                if (price.isEmpty()) {
                    regulator.upper(0);
                } else {
                    regulator.weight(price.get().getAmountMinorLong() / CENTS);
                }
                // regulator >= used low here + elevated before - 1
                var stands = model.newExpression("stands " + use.variable().getName());
                stands.set(regulator, 1).set(use.variable(), -1);
                if (feed == null) {
                    stands.lower(0);
                } else {
                    stands.set(feed, -1).lower(-1);
                }
            }
        }
    }

    private void appliance(Appliance appliance) {
        var way = ways.get(appliance.id());
        var mode = high.get(appliance.node());
        var low = model.newExpression("low run to " + appliance.id());
        var budget = Math.min(
                inlet(false) - appliance.inlet().minimum().inchesWater(),
                allowed(false).inchesWater());
        way.forEach(segment -> uses.get(segment).stream()
                .filter(use -> !use.high())
                .forEach(use -> low.set(use.variable(), use.loss())));
        // As little as lifts the limit: a larger figure lets a solver's rounding slip through.
        var lift = way.size() * widest(false) - Math.min(0, budget);
        if (raised) {
            low.set(mode, -lift);
        }
        gone(appliance, low, lift).upper(budget);
        if (raised) {
            elevated(appliance, way, mode);
        }
    }

    private Expression gone(Appliance appliance, Expression expression, double lift) {
        if (moved.containsKey(appliance.id())) {
            expression.set(moved.get(appliance.id()), -lift);
        }
        return expression;
    }

    private void elevated(Appliance appliance, List<Segment> way, Variable mode) {
        var run = model.newExpression("elevated run to " + appliance.id());
        way.forEach(segment ->
                uses.get(segment).stream().filter(Use::high).forEach(use -> run.set(use.variable(), use.loss())));
        gone(appliance, run, way.size() * highBudget()).upper(highBudget());
        var price = prices.regulator(layout.load(appliance), rules.raised().orElseThrow(), rules.lineOutlet());
        var regulator = model.newVariable("regulator at " + appliance.id()).binary();
        if (price.isEmpty()) {
            regulator.upper(0);
        } else {
            regulator.weight(price.get().getAmountMinorLong() / CENTS);
        }
        var stands = model.newExpression("stands at " + appliance.id());
        stands.set(regulator, 1).set(mode, -1);
        if (moved.containsKey(appliance.id())) {
            stands.set(moved.get(appliance.id()), 1);
        }
        stands.lower(0);
    }

    private double highBudget() {
        var supply = inlet(true) / 27.67990 + 14.7;
        var needed = rules.lineOutlet().inchesWater() / 27.67990 + 0.75 + 14.7;
        var least = Math.max(needed, supply - 1);
        return supply * supply - least * least;
    }

    /** The cheapest line of its own, by trying every pipe. */
    private OptionalLong ownCost(String id) {
        var appliance = layout.appliance(id);
        var load = layout.load(appliance).cubicFeetPerHour();
        var way = ways.get(id);
        var feet = way.stream().mapToDouble(one -> one.route().length().feet()).sum();
        var fittings = way.stream().map(one -> one.route().fittings()).reduce(Fittings.none(), Fittings::plus);
        var indoors = way.stream().anyMatch(one -> one.route().place() == Place.INDOORS);
        var outdoors = way.stream().anyMatch(one -> one.route().place() == Place.OUTDOORS);
        var place = indoors ? Place.INDOORS : outdoors ? Place.OUTDOORS : Place.BURIED;
        var route = new Route(Length.ofFeet(feet), fittings, place);
        var best = OptionalLong.empty();
        for (var elevated : raised ? new boolean[] {false, true} : new boolean[] {false}) {
            if (elevated
                    && place == Place.INDOORS
                    && rules.raised().orElseThrow().compareTo(rules.highestIndoors()) > 0) {
                continue;
            }
            var regulator = raised
                    ? prices.regulator(layout.load(appliance), rules.raised().orElseThrow(), rules.lineOutlet())
                            .map(price -> price.getAmountMinorLong())
                            .orElse(NEVER)
                    : 0;
            var budget = elevated
                    ? highBudget()
                    : Math.min(
                            inlet(false) - appliance.inlet().minimum().inchesWater(),
                            allowed(false).inchesWater());
            for (var pipe : prices.offers()) {
                var equivalent = feet
                        + Sites.TABLES.equivalentLength(pipe, fittings.counts()).feet();
                var sizingFeet = fittings.number() >= 4 ? equivalent : feet;
                if (rules.places().getOrDefault(pipe.material(), Set.of()).contains(place)
                        && loss(pipe, equivalent, load, elevated) <= budget
                        && load <= limit(pipe, Length.ofFeet(sizingFeet), elevated) * (1 + 1e-9)) {
                    var cost = prices.laid(pipe, route).getAmountMinorLong() + regulator;
                    if (best.isEmpty() || cost < best.getAsLong()) {
                        best = OptionalLong.of(cost);
                    }
                }
            }
        }
        return best;
    }
}

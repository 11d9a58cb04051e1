package fairflame.gas;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * The cheapest set of changes after which every appliance has its minimum inlet pressure and no run loses more than the
 * code's allowed drop, with everything at full fire. Exact over what the rules and the prices offer: keep a segment, lay
 * another pipe in its place, lay a line from the source to one appliance, or have the delivery raised and set line
 * regulators. Diversity is not taken into account.
 */
public final class LeastCostPlan {
    private static final int MOST_ALTERNATIVES = 6;

    private final GasTables tables;
    private final Layout layout;
    private final PipePrices prices;
    private final PlanRules rules;
    private final PlanLengths lengths;
    private final PipeChoices choices;
    private long states;
    private int searches;

    private LeastCostPlan(GasTables tables, Layout layout, PipePrices prices, PlanRules rules) {
        this.tables = tables;
        this.layout = layout;
        this.prices = prices;
        this.rules = rules;
        this.lengths = PlanLengths.of(tables, layout);
        this.choices = new PipeChoices(tables, layout.gas(), prices, rules);
    }

    /** The cheapest plan and its alternatives. */
    public static PlanChoices find(GasTables tables, Layout layout, PipePrices prices, PlanRules rules) {
        return new LeastCostPlan(tables, layout, prices, rules).all();
    }

    private PlanChoices all() {
        var everything = Set.copyOf(EnumSet.allOf(Material.class));
        var plans = new ArrayList<Plan>();
        solve(new PlanScope(false, Set.of(), Set.of(), everything)).ifPresent(plans::add);
        if (plans.isEmpty() || !plans.get(0).changes().isEmpty()) {
            solve(new PlanScope(false, rules.ownLines(), Set.of(), everything)).ifPresent(plans::add);
            for (var appliance : sorted(rules.ownLines())) {
                solve(new PlanScope(false, Set.of(appliance), Set.of(appliance), everything))
                        .ifPresent(plans::add);
            }
            if (mayRaise()) {
                solve(new PlanScope(true, rules.ownLines(), Set.of(), everything))
                        .ifPresent(plans::add);
            }
            for (var material : materials()) {
                solve(new PlanScope(false, Set.of(), Set.of(), Set.of(material)))
                        .ifPresent(plans::add);
            }
        }
        return ranked(plans);
    }

    private static List<String> sorted(Set<String> ids) {
        return ids.stream().sorted().toList();
    }

    private Set<Material> materials() {
        var materials = new LinkedHashSet<Material>();
        prices.offers().forEach(pipe -> materials.add(pipe.material()));
        return materials;
    }

    private boolean mayRaise() {
        return rules.raised().isPresent()
                && prices.raisedDelivery().isPresent()
                && layout.regulators().isEmpty()
                && FlowEquation.at(layout.source().pressure()) == FlowEquation.LOW;
    }

    private Optional<Plan> solve(PlanScope scope) {
        var search = new PlanSearch(tables, layout, prices, rules, scope, lengths, choices);
        var state = search.cheapest();
        states += search.states();
        searches++;
        return state.map(found -> new PlanBuilder(tables, layout, prices, rules, scope, search.own()).plan(found));
    }

    private PlanChoices ranked(List<Plan> plans) {
        plans.sort(Comparator.comparingLong((Plan plan) -> plan.cost().getAmountMinorLong())
                .thenComparingInt(plan -> plan.changes().size()));
        var seen = new HashSet<List<String>>();
        var distinct = plans.stream().filter(plan -> seen.add(plan.signature())).toList();
        return new PlanChoices(
                distinct.stream().findFirst(),
                distinct.stream().skip(1).limit(MOST_ALTERNATIVES).toList(),
                new PlanChoices.Proof(states, searches),
                notes(distinct.isEmpty()));
    }

    private List<String> notes(boolean nothing) {
        var notes = new ArrayList<String>(layout.gas().assumed());
        var supply = SupplyCheck.of(layout);
        if (supply.answer() != SupplyCheck.Answer.ENOUGH) {
            notes.add(supply.words());
        }
        if (layout.diversity().isPresent()) {
            notes.add("The plan counts every appliance at full fire; the diversity of the layout is not used.");
        }
        if (rules.raised().isEmpty()) {
            notes.add(
                    "Higher delivery pressure was not weighed: place or supplier do not allow it, or were not asked.");
        } else if (!mayRaise()) {
            notes.add("Higher delivery pressure was not weighed: the supplier does not offer it, or the piping has line"
                    + " regulators already.");
        }
        if (nothing) {
            notes.add("Nothing that is offered makes the piping enough: ask the gas supplier for more pressure, and an"
                    + " engineer.");
        }
        return notes;
    }
}

package fairflame.gas;

import fairflame.Refusal;
import fairflame.quantity.Length;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The pipes that may lie on a stretch, with price, loss and the load that the tables allow. */
final class PipeChoices {
    private final GasTables tables;
    private final Gas gas;
    private final PressureLoss loss;
    private final PipePrices prices;
    private final PlanRules rules;
    private final Map<Asked, Double> limits = new HashMap<>();
    private final Map<String, List<Offered>> offered = new HashMap<>();

    PipeChoices(GasTables tables, Gas gas, PipePrices prices, PlanRules rules) {
        this.tables = tables;
        this.gas = gas;
        this.loss = new PressureLoss(tables, gas);
        this.prices = prices;
        this.rules = rules;
    }

    /**
     * One pipe on a stretch.
     *
     * @param cents 0 for the pipe that lies there
     * @param limit greatest load by the tables; infinite where only the losses count
     */
    record Choice(Pipe pipe, Length equivalent, long cents, double limit, boolean laid) {}

    /** A pipe that a rule of the place lets lie on a route, with its price. */
    private record Offered(Pipe pipe, Route route, Length equivalent, long cents) {}

    /** What may lie where a segment lies: its own pipe, or another. */
    List<Choice> on(Segment segment, Zone zone, Length longest, PlanScope scope) {
        var choices = new ArrayList<Choice>();
        if (!mayStand(segment.route().place(), zone)) {
            return choices;
        }
        var keep = segment.pipe();
        if (carriesAtAll(keep, zone)) {
            // Pipe that is put under a higher pressure has to meet the table like new pipe.
            var raised = scope.raised() && zone.equation() == FlowEquation.HIGH;
            var limit = raised ? tableLimit(keep, zone, longest) : Double.POSITIVE_INFINITY;
            choices.add(new Choice(keep, segment.equivalent(tables), 0, limit, false));
        }
        for (var offer : offered.computeIfAbsent(segment.id(), id -> offered(segment.route(), keep))) {
            if (!offer.pipe().equals(keep) && usable(offer, zone, scope)) {
                choices.add(choice(offer, zone, longest));
            }
        }
        return choices;
    }

    /** What may be laid on a new route; its own length is the one that tables are entered with. */
    List<Choice> along(Route route, Pipe told, Zone zone, PlanScope scope) {
        var choices = new ArrayList<Choice>();
        if (mayStand(route.place(), zone)) {
            for (var offer : offered(route, told)) {
                if (usable(offer, zone, scope)) {
                    choices.add(choice(offer, zone, offer.route().forSizing(tables, offer.pipe())));
                }
            }
        }
        return choices;
    }

    private List<Offered> offered(Route route, Pipe told) {
        var found = new ArrayList<Offered>();
        for (var pipe : prices.offers()) {
            tables.known(pipe);
            if (rules.allows(pipe, route.place())) {
                var way = route.in(tables, told, pipe);
                found.add(new Offered(pipe, way, way.equivalent(tables, pipe), price(pipe, way)));
            }
        }
        return found;
    }

    private static boolean usable(Offered offer, Zone zone, PlanScope scope) {
        return scope.materials().contains(offer.pipe().material()) && carriesAtAll(offer.pipe(), zone);
    }

    private Choice choice(Offered offer, Zone zone, Length longest) {
        var limit = newLimit(offer.pipe(), zone, longest);
        return new Choice(offer.pipe(), offer.equivalent(), offer.cents(), limit, true);
    }

    private long price(Pipe pipe, Route route) {
        return PlanMoney.positive("price of " + pipe.words(), prices.laid(pipe, route), prices.currency());
    }

    private boolean mayStand(Place place, Zone zone) {
        return zone.equation() == FlowEquation.LOW || rules.allows(zone.supply(), place);
    }

    /** CSST has no table for elevated pressure. */
    private static boolean carriesAtAll(Pipe pipe, Zone zone) {
        return pipe.material() != Material.CSST || zone.equation() == FlowEquation.LOW;
    }

    /** At elevated pressure the equation overstates the tables, and CSST has only its table: both always count. */
    private double newLimit(Pipe pipe, Zone zone, Length longest) {
        var byRun = rules.newPipe() == PlanRules.NewPipe.BY_RUN
                && zone.equation() == FlowEquation.LOW
                && pipe.material() != Material.CSST;
        return byRun ? Double.POSITIVE_INFINITY : tableLimit(pipe, zone, longest);
    }

    private double tableLimit(Pipe pipe, Zone zone, Length longest) {
        return limits.computeIfAbsent(new Asked(pipe, zone, longest), this::lookUp);
    }

    private record Asked(Pipe pipe, Zone zone, Length longest) {}

    private double lookUp(Asked asked) {
        try {
            var zone = asked.zone();
            var run = new Run(gas, asked.pipe(), asked.longest(), zone.supply(), zone.allowed());
            return Capacity.forSizing(tables, run).flow().cubicFeetPerHour() * (1 + 1e-9);
        } catch (Refusal noTable) {
            return 0;
        }
    }

    /** The choices that carry a load, each dearer one with less loss than all cheaper ones. */
    List<Priced> carrying(List<Choice> choices, Zone zone, double load) {
        var found = new ArrayList<Priced>();
        for (var choice : choices) {
            if (load <= choice.limit()) {
                var lost = loss.of(zone.equation(), choice.pipe(), choice.equivalent(), load);
                found.add(new Priced(choice, lost));
            }
        }
        found.sort(java.util.Comparator.comparingLong(
                        (Priced priced) -> priced.choice().cents())
                .thenComparingDouble(Priced::loss));
        var kept = new ArrayList<Priced>();
        var least = Double.POSITIVE_INFINITY;
        for (var priced : found) {
            if (priced.loss() < least) {
                kept.add(priced);
                least = priced.loss();
            }
        }
        return kept;
    }

    /** A choice with its loss at one load. */
    record Priced(Choice choice, double loss) {}
}

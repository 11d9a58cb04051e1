package fairflame.gas;

import fairflame.Refusal;
import fairflame.quantity.Length;
import java.util.ArrayList;
import java.util.List;

/** The pipes that may lie on a stretch, with price, loss and the load that the tables allow. */
final class PipeChoices {
    private final GasTables tables;
    private final Gas gas;
    private final PressureLoss loss;
    private final PipePrices prices;
    private final PlanRules rules;
    private final PlanScope scope;

    PipeChoices(GasTables tables, Gas gas, PipePrices prices, PlanRules rules, PlanScope scope) {
        this.tables = tables;
        this.gas = gas;
        this.loss = new PressureLoss(tables, gas);
        this.prices = prices;
        this.rules = rules;
        this.scope = scope;
    }

    /**
     * One pipe on a stretch.
     *
     * @param cents 0 for the pipe that lies there
     * @param limit greatest load by the tables; infinite where only the losses count
     */
    record Choice(Pipe pipe, Length equivalent, long cents, double limit, boolean laid) {}

    /** What may lie where a segment lies: its own pipe, or another. */
    List<Choice> on(Segment segment, Zone zone, Length longest, boolean raised) {
        var choices = new ArrayList<Choice>();
        if (!mayStand(segment.route().place(), zone)) {
            return choices;
        }
        var keep = segment.pipe();
        var keepLimit = raised ? tableLimit(keep, zone, longest) : Double.POSITIVE_INFINITY;
        if (carriesAtAll(keep, zone)) {
            choices.add(new Choice(keep, segment.equivalent(tables), 0, keepLimit, false));
        }
        for (var pipe : prices.offers()) {
            if (!pipe.equals(keep)) {
                add(choices, pipe, segment.route().in(tables, keep, pipe), zone, longest);
            }
        }
        return choices;
    }

    /** What may be laid on a new route; its own length is the one that tables are entered with. */
    List<Choice> along(Route route, Pipe told, Zone zone) {
        var choices = new ArrayList<Choice>();
        if (mayStand(route.place(), zone)) {
            for (var pipe : prices.offers()) {
                var way = route.in(tables, told, pipe);
                add(choices, pipe, way, zone, way.forSizing(tables, pipe));
            }
        }
        return choices;
    }

    private void add(List<Choice> choices, Pipe pipe, Route route, Zone zone, Length longest) {
        tables.known(pipe);
        if (scope.materials().contains(pipe.material())
                && rules.allows(pipe, route.place())
                && carriesAtAll(pipe, zone)) {
            var limit = newLimit(pipe, zone, longest);
            choices.add(new Choice(pipe, route.equivalent(tables, pipe), price(pipe, route), limit, true));
        }
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
        try {
            var run = new Run(gas, pipe, longest, zone.supply(), zone.allowed());
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

package fairflame.gas;

import fairflame.quantity.GasFlow;
import fairflame.quantity.Length;
import java.util.ArrayDeque;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** The cheapest line of its own for each appliance that may have one. It shares nothing, so it is settled beforehand. */
final class OwnLines {
    private final GasTables tables;
    private final Layout layout;
    private final PipePrices prices;
    private final PlanRules rules;
    private final PipeChoices choices;
    private final Map<String, Segment> into = new HashMap<>();

    OwnLines(GasTables tables, Layout layout, PipePrices prices, PlanRules rules, PipeChoices choices) {
        this.tables = tables;
        this.layout = layout;
        this.prices = prices;
        this.rules = rules;
        this.choices = choices;
        layout.segments().forEach(segment -> into.put(segment.to(), segment));
    }

    /**
     * A line of its own.
     *
     * @param route as it runs in its pipe
     * @param regulator what its regulator costs, and where it stands; empty for none
     * @param valve what its excess-flow valve costs; 0 for none
     */
    record Offer(String appliance, Pipe pipe, Route route, long laid, Optional<Regulator> regulator, long valve) {
        long cents() {
            return laid + regulator.map(Regulator::cents).orElse(0L) + valve;
        }
    }

    /** A line that would lie in a zone and start from the source's. */
    private record Stretch(Zone zone, Zone source, PlanScope scope) {}

    /** A new line regulator: at the start of the line or at the appliance. */
    record Regulator(boolean atStart, long cents) {}

    /** Offers by appliance from a source zone; an appliance without a feasible one is absent. */
    Map<String, Offer> from(Zone zone, PlanScope scope) {
        var offers = new LinkedHashMap<String, Offer>();
        for (var appliance : layout.appliances()) {
            if (scope.own().contains(appliance.id()) && into.containsKey(appliance.node())) {
                cheapest(appliance, zone, scope).ifPresent(offer -> offers.put(appliance.id(), offer));
            }
        }
        return offers;
    }

    private Optional<Offer> cheapest(Appliance appliance, Zone zone, PlanScope scope) {
        if (zone.equation() == FlowEquation.LOW) {
            return laid(appliance, new Stretch(zone, zone, scope), PlanZones.budget(appliance, zone), Optional.empty());
        }
        var low = PlanZones.behindNewRegulator(layout, rules);
        var load = layout.load(appliance);
        var priced = PlanZones.fits(appliance, low)
                ? prices.regulator(load, zone.supply(), low.supply())
                : Optional.<org.joda.money.Money>empty();
        if (priced.isEmpty()) {
            return Optional.empty();
        }
        var cents = PlanMoney.positive("price of a line regulator", priced.get(), prices.currency());
        var needs = PlanZones.regulatorBudget(zone, rules.lineOutlet());
        var high = laid(appliance, new Stretch(zone, zone, scope), needs, Optional.of(new Regulator(false, cents)));
        var start = needs < 0
                ? Optional.<Offer>empty()
                : laid(
                        appliance,
                        new Stretch(low, zone, scope),
                        PlanZones.budget(appliance, low),
                        Optional.of(new Regulator(true, cents)));
        return java.util.stream.Stream.of(high, start)
                .flatMap(Optional::stream)
                .min(Comparator.comparingLong(Offer::cents));
    }

    private Optional<Offer> laid(Appliance appliance, Stretch stretch, double budget, Optional<Regulator> regulator) {
        var zone = stretch.zone();
        var told = pipeAt(appliance);
        var route = route(appliance);
        var load = layout.load(appliance);
        var valve = valve(load);
        if (rules.excessFlow().isPresent() && valve.isEmpty()) {
            return Optional.empty();
        }
        // Behind a regulator at the start of the line the valve's loss is the regulator's matter.
        var left = zone.equals(stretch.source()) ? budget - PlanZones.valveLoss(zone, rules) : budget;
        return choices
                .carrying(choices.along(route, told, zone, stretch.scope()), zone, load.cubicFeetPerHour())
                .stream()
                .filter(priced -> priced.loss() <= left + State.HAIR)
                .findFirst()
                .map(priced -> new Offer(
                        appliance.id(),
                        priced.choice().pipe(),
                        route.in(tables, told, priced.choice().pipe()),
                        priced.choice().cents(),
                        regulator,
                        valve.orElse(0L)));
    }

    private Optional<Long> valve(GasFlow load) {
        return rules.excessFlow()
                .flatMap(loss -> prices.excessFlowValve(load))
                .map(price -> PlanMoney.positive("price of an excess-flow valve", price, prices.currency()));
    }

    private Pipe pipeAt(Appliance appliance) {
        return Optional.ofNullable(into.get(appliance.node())).orElseThrow().pipe();
    }

    /** The way that the layout names, else the way of the present pipe. */
    private Route route(Appliance appliance) {
        return appliance.ownLine().orElseGet(() -> {
            var way = new ArrayDeque<Segment>();
            var segment = into.get(appliance.node());
            while (segment != null) {
                way.push(segment);
                segment = into.get(segment.from());
            }
            var length = way.stream().map(one -> one.route().length()).reduce(Length.ofFeet(0), Length::plus);
            var fittings = way.stream().map(one -> one.route().fittings()).reduce(Fittings.none(), Fittings::plus);
            return new Route(length, fittings, place(way));
        });
    }

    /** One place for a way through several: indoors if any of it is, buried if all of it is. */
    private static Place place(Iterable<Segment> way) {
        var places = java.util.EnumSet.noneOf(Place.class);
        way.forEach(segment -> places.add(segment.route().place()));
        if (places.contains(Place.INDOORS)) {
            return Place.INDOORS;
        }
        return places.contains(Place.OUTDOORS) ? Place.OUTDOORS : Place.BURIED;
    }
}

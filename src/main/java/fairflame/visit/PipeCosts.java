package fairflame.visit;

import fairflame.catalog.Jurisdiction;
import fairflame.catalog.Part;
import fairflame.catalog.PartNeed;
import fairflame.catalog.Per;
import fairflame.catalog.Shop;
import fairflame.catalog.StandardTime;
import fairflame.catalog.Task;
import fairflame.catalog.Trade;
import fairflame.gas.GasTables;
import fairflame.gas.Layout;
import fairflame.gas.Material;
import fairflame.gas.Pipe;
import fairflame.gas.PipePrices;
import fairflame.gas.Place;
import fairflame.gas.Route;
import fairflame.gas.Segment;
import fairflame.money.Amounts;
import fairflame.money.Rounding;
import fairflame.quantity.GasFlow;
import fairflame.quantity.Pressure;
import fairflame.quote.UnitPrice;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/**
 * What changes to a gas line cost, from the shop's own catalog, ladder, rates and standard times: the same rows that the
 * quote is made of. What comes once whatever is laid (access, permit, trip, shutoff and trap) is kept apart.
 */
final class PipeCosts implements PipePrices {
    private static final String PIPE_ROLE = "pipe-";
    private static final String REGULATOR_TASK = "R20";
    static final String EXCESS_FLOW_TASK = "R58";
    static final String EXCESS_FLOW_VALVE = "excess-flow-valve";

    private final Shop shop;
    private final Jurisdiction place;
    private final GasTables tables;
    private final Set<String> fittings = new TreeSet<>();

    PipeCosts(Shop shop, Jurisdiction place, GasTables tables, Layout layout) {
        this.shop = shop;
        this.place = place;
        this.tables = tables;
        layout.segments().stream().map(Segment::route).forEach(this::addFittings);
        layout.appliances().forEach(appliance -> appliance.ownLine().ifPresent(this::addFittings));
    }

    private void addFittings(Route route) {
        fittings.addAll(route.fittings().counts().keySet());
    }

    /** The task that lays a material in a place. */
    static String task(Material material, Place where) {
        if (material == Material.CSST) {
            return "R45";
        }
        return where == Place.BURIED ? "R19" : "R18";
    }

    @Override
    public CurrencyUnit currency() {
        return shop.currency();
    }

    /** Pipe that is sold in a size for which every fitting of the layout is sold as well. */
    @Override
    public List<Pipe> offers() {
        var offers = new ArrayList<Pipe>();
        for (var part : shop.parts()) {
            material(part).ifPresent(material -> {
                var pipe = new Pipe(material, part.size());
                if (fittings.stream()
                        .allMatch(
                                kind -> part(role(kind, material), part.size()).isPresent())) {
                    offers.add(tables.known(pipe));
                }
            });
        }
        return List.copyOf(offers);
    }

    private static Optional<Material> material(Part part) {
        for (var material : Material.values()) {
            if (part.role().equals(PIPE_ROLE + material.word())) {
                return Optional.of(material);
            }
        }
        return Optional.empty();
    }

    @Override
    public Money laid(Pipe pipe, Route route) {
        var task = shop.task(task(pipe.material(), route.place())).in(place);
        var feet = BigDecimal.valueOf(route.length().feet()).setScale(0, RoundingMode.CEILING);
        var counts = Map.of(
                Per.FOOT, feet, Per.FITTING, BigDecimal.valueOf(route.fittings().number()));
        var costs = new ArrayList<Money>();
        for (var need : task.needs()) {
            if (need.role().equals(PartNeed.FITTING)) {
                route.fittings()
                        .counts()
                        .forEach((kind, count) -> costs.add(
                                sold(part(role(kind, pipe.material()), pipe.size()), BigDecimal.valueOf(count))));
            } else if (counts.containsKey(need.per())) {
                var role = need.role().equals(PartNeed.PIPE)
                        ? PIPE_ROLE + pipe.material().word()
                        : need.role();
                var size = need.size().equals(PartNeed.PIPE) ? pipe.size() : need.size();
                costs.add(sold(part(role, size), need.quantity().multiply(counts.get(need.per()))));
            }
        }
        costs.add(labour(task, counts));
        return Amounts.sum(currency(), costs);
    }

    @Override
    public Optional<Money> regulator(GasFlow flow, Pressure inlet, Pressure outlet) {
        return shop.serves("line-regulator")
                ? Optional.of(job(shop.task(REGULATOR_TASK).in(place), "3/4"))
                : Optional.empty();
    }

    @Override
    public Optional<Money> excessFlowValve(GasFlow flow) {
        return valve(flow)
                .map(part -> UnitPrice.of(part, shop)
                        .price()
                        .plus(labour(shop.task(EXCESS_FLOW_TASK).in(place), Map.of(Per.PIECE, BigDecimal.ONE))));
    }

    /** The smallest excess-flow valve that lets a flow through; its size in the parts list is that flow. */
    Optional<Part> valve(GasFlow flow) {
        return shop.parts().stream()
                .filter(part -> part.role().equals(EXCESS_FLOW_VALVE))
                .filter(part -> Double.parseDouble(part.size()) >= flow.cubicFeetPerHour())
                .min(Comparator.comparing(part -> Double.parseDouble(part.size())));
    }

    /** Access steps of a gas line job and the permit fee. */
    @Override
    public Money once() {
        var task = shop.task("R18").in(place);
        var hours = shop.accessFor(List.of(task)).stream()
                .map(step -> step.hours())
                .reduce(BigDecimal.ZERO, BigDecimal::add);
        return Rounding.NEAREST.times(rate(task), hours).plus(place.permitFee());
    }

    @Override
    public Optional<Money> raisedDelivery() {
        // The utility's own charge is never part of the shop's price; its answer is asked for on the paper.
        return Optional.of(Money.zero(currency()));
    }

    private Money job(Task task, String inletSize) {
        var costs = new ArrayList<Money>();
        for (var need : task.needs()) {
            var size = need.size().equals(PartNeed.INLET) ? inletSize : need.size();
            costs.add(sold(part(need.role(), size), need.quantity()));
        }
        costs.add(labour(task, Map.of(Per.JOB, BigDecimal.ONE, Per.PIECE, BigDecimal.ONE)));
        return Amounts.sum(currency(), costs);
    }

    private Money labour(Task task, Map<Per, BigDecimal> counts) {
        var hours = task.times().stream().map(time -> hours(time, counts)).reduce(BigDecimal.ZERO, BigDecimal::add);
        return Rounding.NEAREST.times(rate(task), hours);
    }

    private static BigDecimal hours(StandardTime time, Map<Per, BigDecimal> counts) {
        return time.hours().multiply(counts.getOrDefault(time.per(), BigDecimal.ZERO));
    }

    private Money rate(Task task) {
        var hourly = shop.rates().hourly();
        var technician = Optional.ofNullable(hourly.get(Trade.TECHNICIAN)).orElseThrow();
        return task.trades().stream()
                .map(trade -> hourly.getOrDefault(trade, technician))
                .max(Comparator.naturalOrder())
                .orElse(technician);
    }

    private Money sold(Optional<Part> part, BigDecimal quantity) {
        return part.map(found -> Rounding.NEAREST.times(
                        UnitPrice.of(found, shop).price(),
                        found.cutToLength() ? quantity : quantity.setScale(0, RoundingMode.CEILING)))
                .orElse(Money.zero(currency()));
    }

    private Optional<Part> part(String role, String size) {
        return shop.parts().stream()
                .filter(part -> part.role().equals(role) && part.size().equals(size))
                .findFirst();
    }

    private String role(String kind, Material material) {
        return shop.book().fittings().getOrDefault(kind, kind).replace("MATERIAL", material.word());
    }
}

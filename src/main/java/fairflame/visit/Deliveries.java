package fairflame.visit;

import fairflame.Refusal;
import fairflame.catalog.Part;
import fairflame.catalog.Shop;
import fairflame.invoice.Invoice;
import fairflame.invoice.order.Delivery;
import fairflame.invoice.order.PartNeeded;
import fairflame.invoice.order.PartsOrder;
import fairflame.invoice.order.PlacedOrder;
import fairflame.store.Records;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** What came of the orders, and what of it goes on the truck for which job. */
public final class Deliveries {
    private final Workplace workplace;

    public Deliveries(Workplace workplace) {
        this.workplace = workplace;
    }

    /** An order with what came of it. */
    public record Standing(PlacedOrder order, String supplier, List<Item> items) {
        public Standing {
            items = List.copyOf(items);
        }

        public boolean complete() {
            return items.stream().allMatch(item -> item.delivery().isPresent());
        }
    }

    /**
     * One part of an order.
     *
     * @param quantity as the jobs need it, of the part's unit
     * @param delivery absent while it has not come
     */
    public record Item(Part part, BigDecimal quantity, Optional<Delivery> delivery) {}

    /** Where a part for a job is. */
    public enum Where {
        TO_ORDER,
        ORDERED,
        HERE
    }

    /** One part on the list of a job. */
    public record Piece(Part part, BigDecimal quantity, Where where) {}

    /** The truck's list for one job. */
    public record Load(String quote, String visit, String customer, List<Piece> pieces) {
        public Load {
            pieces = List.copyOf(pieces);
        }

        public boolean complete() {
            return pieces.stream().allMatch(piece -> piece.where() == Where.HERE);
        }
    }

    /** All orders placed, the last first. */
    public List<Standing> orders() {
        var shop = workplace.everyPart();
        return workplace
                .store()
                .reading(records -> records.registers().orders().all().stream()
                        .map(order -> standing(records, shop, order))
                        .sorted(Comparator.comparing(
                                (Standing standing) -> standing.order().number(), Comparator.reverseOrder()))
                        .toList());
    }

    private static Standing standing(Records records, Shop shop, PlacedOrder order) {
        var sums = order.parts().stream()
                .collect(Collectors.toMap(PartNeeded::part, PartNeeded::quantity, BigDecimal::add, TreeMap::new));
        var items = sums.entrySet().stream()
                .map(entry -> new Item(
                        shop.part(entry.getKey()), entry.getValue(), come(records, order.number(), entry.getKey())))
                .toList();
        return new Standing(order, shop.supplier(order.supplier()).name(), items);
    }

    private static Optional<Delivery> come(Records records, String order, String part) {
        return records.registers().deliveries().find(key(order, part)).filter(Delivery::here);
    }

    private static String key(String order, String part) {
        return order + " " + part;
    }

    /** Says that a part of an order has come, or that it is not here after all; refused when it was not ordered. */
    public Delivery mark(String order, String part, boolean here) {
        var delivery = new Delivery(order, part, here, workplace.today(), workplace.who());
        workplace.store().change(workplace.by(), records -> {
            var placed = records.registers()
                    .orders()
                    .find(order)
                    .orElseThrow(() -> Refusal.unknown("order", order, "the number of an order that was placed"));
            var parts = placed.parts().stream().map(PartNeeded::part).distinct().toList();
            if (!parts.contains(part)) {
                throw Refusal.notAllowed("part of order " + order, part, String.join(", ", parts));
            }
            records.registers().deliveries().put(key(order, part), delivery);
        });
        return delivery;
    }

    /** What goes on the truck for each signed job that is not finished, by number of the quote. */
    public List<Load> truck() {
        var shop = workplace.everyPart();
        return workplace.store().reading(records -> {
            var orders = records.registers().orders().all();
            var loads = new ArrayList<Load>();
            for (var agreed : Signed.all(records)) {
                var quote = agreed.signed().quote();
                var needed = PartsOrder.needed(agreed);
                if (!needed.isEmpty()
                        && records.invoices().ofQuote(quote.number()).stream().noneMatch(Invoice::complete)) {
                    var pieces = needed.stream()
                            .map(need ->
                                    new Piece(shop.part(need.part()), need.quantity(), where(records, orders, need)))
                            .toList();
                    loads.add(new Load(
                            quote.number(), quote.visit(), quote.customer().name(), pieces));
                }
            }
            return loads;
        });
    }

    private static Where where(Records records, List<PlacedOrder> orders, PartNeeded need) {
        Map<Boolean, BigDecimal> ordered = new TreeMap<>(Map.of(true, BigDecimal.ZERO, false, BigDecimal.ZERO));
        for (var order : orders) {
            order.parts().stream()
                    .filter(part -> part.quote().equals(need.quote())
                            && part.revision() == need.revision()
                            && part.part().equals(need.part()))
                    .forEach(part -> ordered.merge(
                            come(records, order.number(), part.part()).isPresent(), part.quantity(), BigDecimal::add));
        }
        var here = ordered.getOrDefault(true, BigDecimal.ZERO);
        if (here.compareTo(need.quantity()) >= 0) {
            return Where.HERE;
        }
        var all = here.add(ordered.getOrDefault(false, BigDecimal.ZERO));
        return all.compareTo(need.quantity()) >= 0 ? Where.ORDERED : Where.TO_ORDER;
    }
}

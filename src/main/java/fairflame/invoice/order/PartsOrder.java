package fairflame.invoice.order;

import fairflame.agreement.Agreed;
import fairflame.catalog.Part;
import fairflame.catalog.Shop;
import fairflame.money.Rounding;
import fairflame.quote.LineKind;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** Adds up what signed work uses, less what was ordered for it, by supplier. */
public final class PartsOrder {
    private PartsOrder() {}

    /** Parts and consumables of all that was agreed, signed change orders included. */
    public static List<PartNeeded> needed(Agreed agreed) {
        var quote = agreed.signed().quote();
        var byPart = new TreeMap<String, BigDecimal>();
        agreed.lines().stream()
                .filter(line -> line.kind() == LineKind.PART || line.kind() == LineKind.CONSUMABLE)
                .filter(line -> !line.item().isBlank() && line.quantity().signum() > 0)
                .forEach(line -> byPart.merge(line.item(), line.quantity(), BigDecimal::add));
        return byPart.entrySet().stream()
                .map(entry -> new PartNeeded(quote.number(), quote.revision(), entry.getKey(), entry.getValue()))
                .toList();
    }

    /**
     * What is still to be ordered.
     *
     * @param needed by signed quotes
     * @param ordered before, for the same quotes
     */
    public static List<OrderSheet> sheets(Shop shop, Collection<PartNeeded> needed, Collection<PartNeeded> ordered) {
        var open = open(needed, ordered);
        var bySupplier = open.stream()
                .collect(Collectors.groupingBy(
                        need -> shop.part(need.part()).supplier(), TreeMap::new, Collectors.toList()));
        return bySupplier.entrySet().stream()
                .map(entry -> new OrderSheet(shop.supplier(entry.getKey()), lines(shop, entry.getValue())))
                .toList();
    }

    private static List<PartNeeded> open(Collection<PartNeeded> needed, Collection<PartNeeded> ordered) {
        var left = new ArrayList<PartNeeded>();
        for (var need : needed) {
            var before = ordered.stream()
                    .filter(order -> order.quote().equals(need.quote())
                            && order.revision() == need.revision()
                            && order.part().equals(need.part()))
                    .map(PartNeeded::quantity)
                    .reduce(BigDecimal.ZERO, BigDecimal::add);
            var rest = need.quantity().subtract(before);
            if (rest.signum() > 0) {
                left.add(new PartNeeded(need.quote(), need.revision(), need.part(), rest));
            }
        }
        return left;
    }

    private static List<OrderLine> lines(Shop shop, List<PartNeeded> needs) {
        Map<String, List<PartNeeded>> byPart =
                needs.stream().collect(Collectors.groupingBy(PartNeeded::part, TreeMap::new, Collectors.toList()));
        return byPart.entrySet().stream()
                .map(entry -> line(shop.part(entry.getKey()), entry.getValue()))
                .toList();
    }

    private static OrderLine line(Part part, List<PartNeeded> uses) {
        var needed = uses.stream().map(PartNeeded::quantity).reduce(BigDecimal.ZERO, BigDecimal::add);
        // Three jobs that use a third of a tube each need one tube: the sum is rounded up, not each of them.
        var quantity = part.cutToLength() ? needed : needed.setScale(0, RoundingMode.CEILING);
        var sorted =
                uses.stream().sorted(Comparator.comparing(PartNeeded::quote)).toList();
        return new OrderLine(part, quantity, needed, sorted, Rounding.NEAREST.times(part.cost(), quantity));
    }
}

package fairflame.quote;

import fairflame.Refusal;
import fairflame.catalog.Part;
import fairflame.catalog.Shop;
import fairflame.money.Amounts;
import fairflame.money.Rounding;
import java.math.BigDecimal;
import java.util.List;
import org.joda.money.Money;

/**
 * The selling price of one unit of a part: its list price, or its cost with the ladder's markup, rounded once.
 *
 * @param basis the catalog row and how the price follows from it
 */
public record UnitPrice(Money price, List<Basis> basis) {
    public UnitPrice {
        basis = List.copyOf(basis);
    }

    /** The price of a part in a shop. */
    public static UnitPrice of(Part part, Shop shop) {
        var cost = Amounts.same(shop.currency(), part.cost());
        var row = new Basis(
                "catalog row",
                part.number() + ", " + part.description() + ", per " + part.unit(),
                shop.version() + "; " + part.source());
        if (part.listPrice().isPresent()) {
            var list = Amounts.same(shop.currency(), part.listPrice().get());
            return new UnitPrice(list, List.of(row, new Basis("list price", "list price " + list, shop.version())));
        }
        var step = shop.ladder().steps().stream()
                .filter(candidate -> !candidate.from().isGreaterThan(cost))
                .reduce((before, after) -> after)
                .orElseThrow(() -> Refusal.missing(
                        "markup for part " + part.number() + " at cost " + cost, "a ladder that starts at zero"));
        var price =
                Rounding.NEAREST.times(cost, BigDecimal.ONE.add(step.markup().factor()));
        var words =
                "price ladder from " + step.from() + ": markup " + step.markup() + " on cost, rounded once to " + price;
        return new UnitPrice(
                price,
                List.of(row, new Basis("price ladder", words, shop.ladder().source())));
    }
}

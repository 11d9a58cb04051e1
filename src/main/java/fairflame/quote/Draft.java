package fairflame.quote;

import fairflame.catalog.Jurisdiction;
import fairflame.money.Rounding;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.joda.money.Money;

/**
 * A line on its way to paper: not numbered yet, the document discount not yet shared out.
 *
 * @param discountable what the document discount may be counted on: net less the line's own discounts, or zero
 */
record Draft(
        LineKind kind,
        String item,
        String description,
        BigDecimal quantity,
        String unit,
        Money unitPrice,
        Money net,
        Money discountable,
        List<Basis> basis) {
    Draft {
        basis = List.copyOf(basis);
    }

    /** Quantity times unit price, rounded once, open to discounts. */
    static Draft of(LineKind kind, String item, String description, Count count, List<Basis> basis) {
        var net = Rounding.NEAREST.times(count.unitPrice(), count.quantity());
        var grounds = new ArrayList<>(basis);
        grounds.add(new Basis(
                "arithmetic",
                OwnTime.plain(count.quantity()) + " " + count.unit() + " x " + count.unitPrice() + " = " + net,
                "computed"));
        return new Draft(kind, item, description, count.quantity(), count.unit(), count.unitPrice(), net, net, grounds);
    }

    /** The same, out of reach of every discount. */
    Draft fixed() {
        return discountable(unitPrice.withAmount(0));
    }

    Draft discountable(Money base) {
        return new Draft(kind, item, description, quantity, unit, unitPrice, net, base, basis);
    }

    boolean answersTo(String name) {
        return item.equals(name) || kind.word().equals(name);
    }

    Line line(String id, Money discount, Jurisdiction place, boolean further) {
        var taxable = Taxation.taxable(kind, place);
        var grounds = new ArrayList<>(basis);
        if (!discount.isZero()) {
            grounds.add(new Basis("discount", "its share of the document discount is " + discount, "computed"));
        }
        grounds.add(new Basis(
                "tax rule",
                kind.word() + (taxable ? " is taxed in " : " is not taxed in ") + place.name() + ": "
                        + Taxation.words(Places.tax(place)),
                place.tax().source()));
        return new Line(
                id, kind, item, description, quantity, unit, unitPrice, net, discount, taxable, further, grounds);
    }

    /** How many of which unit at what price. */
    record Count(BigDecimal quantity, String unit, Money unitPrice) {
        static Count once(String unit, Money price) {
            return new Count(BigDecimal.ONE, unit, price);
        }
    }
}

package fairflame.invoice.order;

import fairflame.catalog.Supplier;
import fairflame.money.Amounts;
import java.util.List;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/** What to order from one supplier. */
public record OrderSheet(Supplier supplier, List<OrderLine> lines) {
    public OrderSheet {
        lines = List.copyOf(lines);
    }

    /** What the order costs the shop, before tax and carriage. */
    public Money cost(CurrencyUnit currency) {
        return Amounts.sum(currency, lines.stream().map(OrderLine::cost).toList());
    }
}

package fairflame.invoice.order;

import fairflame.catalog.Part;
import java.math.BigDecimal;
import java.util.List;
import org.joda.money.Money;

/**
 * One part of an order.
 *
 * @param quantity to be ordered: whole units, lengths as they are needed
 * @param needed exactly needed
 * @param uses for which quotes, in the order of their numbers
 * @param cost quantity times what the shop pays now
 */
public record OrderLine(Part part, BigDecimal quantity, BigDecimal needed, List<PartNeeded> uses, Money cost) {
    public OrderLine {
        uses = List.copyOf(uses);
    }
}

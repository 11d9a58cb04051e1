package fairflame.quote;

import fairflame.wording.Spoken;
import java.math.BigDecimal;
import java.util.List;
import org.joda.money.Money;

/**
 * One priced line. {@code net} is quantity times unit price in whole cents unless the basis says otherwise; it is
 * negative only for a credit or a line discount, which stand as lines of their own.
 *
 * @param id unique in its choice: {@code L1}, {@code L2}
 * @param item part number of the catalog row or id of the task; empty for none
 * @param discount this line's share of the document discount, zero or more, not yet taken from {@code net}
 * @param taxable whether the tax rule of the place covers this kind
 * @param further true when sold beyond the repair that was asked for (right to cancel)
 */
public record Line(
        String id,
        LineKind kind,
        String item,
        @Spoken String description,
        BigDecimal quantity,
        String unit,
        Money unitPrice,
        Money net,
        Money discount,
        boolean taxable,
        boolean further,
        List<Basis> basis) {
    public Line {
        basis = List.copyOf(basis);
    }

    /** What the line adds to the total before tax: net less its share of the document discount. */
    public Money afterDiscount() {
        return net.minus(discount);
    }
}

package fairflame.quote;

import java.math.BigDecimal;
import java.util.List;
import org.joda.money.Money;

/**
 * One priced line. {@code net} is quantity times unit price in whole cents unless the basis says otherwise; it is
 * negative only for a credit or discount.
 *
 * @param id unique in its choice: {@code L1}, {@code L2}
 * @param taxable whether the tax rule of the place covers this kind
 * @param further true when sold beyond the repair that was asked for (right to cancel)
 */
public record Line(
        String id,
        LineKind kind,
        String description,
        BigDecimal quantity,
        String unit,
        Money unitPrice,
        Money net,
        boolean taxable,
        boolean further,
        List<Basis> basis) {
    public Line {
        basis = List.copyOf(basis);
    }
}

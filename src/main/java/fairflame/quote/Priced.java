package fairflame.quote;

import java.math.BigDecimal;
import java.util.List;
import org.joda.money.Money;

/**
 * The price of one scope.
 *
 * @param hours labour hours as billed
 * @param lines numbered in printed order
 */
public record Priced(BigDecimal hours, Duties duties, List<Line> lines, Totals totals, Money deposit) {
    public Priced {
        lines = List.copyOf(lines);
    }
}

package fairflame.quote;

import java.math.BigDecimal;
import org.joda.money.Money;

/**
 * A line that comes neither from the parts list nor from standard times: a subcontractor, disposal, a fee.
 *
 * @param choice id of the choice that it belongs to; empty for all
 * @param passThrough true when it is passed on as paid, so that no discount touches it
 * @param why why it is needed, one sentence
 * @param source where the amount comes from
 */
public record ExtraLine(
        String choice,
        LineKind kind,
        String description,
        BigDecimal quantity,
        String unit,
        Money unitPrice,
        boolean passThrough,
        String why,
        String source) {}

package fairflame.agreement;

import fairflame.quote.LineKind;
import java.math.BigDecimal;
import org.joda.money.Money;

/**
 * A line that a change order adds.
 *
 * @param item part number or task id; empty for none
 * @param why why it is needed, plain words
 * @param source where quantity and price come from
 */
public record AddedLine(
        LineKind kind,
        String item,
        String description,
        BigDecimal quantity,
        String unit,
        Money unitPrice,
        String why,
        String source) {}

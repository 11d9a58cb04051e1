package fairflame.invoice.order;

import java.math.BigDecimal;

/**
 * What a signed quote uses of a part, or what was ordered for it.
 *
 * @param quote number of the quote
 * @param part the shop's part number
 * @param quantity of the part's unit, above zero
 */
public record PartNeeded(String quote, int revision, String part, BigDecimal quantity) {}

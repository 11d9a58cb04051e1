package fairflame.invoice.actual;

import fairflame.money.Rounding;
import fairflame.quote.Line;
import java.math.BigDecimal;
import org.joda.money.Money;

/**
 * One signed line and what became of it.
 *
 * @param told whether somebody said how much was done; else it counts as signed
 * @param actual quantity done
 * @param covered how much beyond the signed quantity a change order's line for the same thing covers
 * @param borne whether the shop bears what goes beyond
 */
public record ActualRow(Line line, boolean told, BigDecimal actual, BigDecimal covered, boolean borne) {
    public BigDecimal difference() {
        return actual.subtract(line.quantity());
    }

    /** Quantity that is neither signed nor borne by the shop; zero or more. */
    public BigDecimal beyond() {
        var beyond = difference().subtract(covered).max(BigDecimal.ZERO);
        return borne ? BigDecimal.ZERO : beyond;
    }

    /** The actual quantity at the signed price, without what the shop bears. */
    public Money worth() {
        var counted = borne ? actual.min(line.quantity().add(covered)) : actual;
        return counted.compareTo(line.quantity()) == 0 ? line.net() : Rounding.NEAREST.times(line.unitPrice(), counted);
    }
}

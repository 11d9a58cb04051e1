package fairflame.quote;

import java.util.List;
import org.joda.money.Money;

/**
 * The totals of a choice.
 *
 * @param subtotal sum of all line nets
 * @param discount document discount, zero or more, already outside the tax base
 * @param taxes by layer
 * @param tax sum of the layers
 * @param total subtotal less discount plus tax
 */
public record Totals(Money subtotal, Money discount, List<TaxAmount> taxes, Money tax, Money total) {
    public Totals {
        taxes = List.copyOf(taxes);
    }
}

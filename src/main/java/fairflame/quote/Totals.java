package fairflame.quote;

import fairflame.Refusal;
import fairflame.money.Amounts;
import java.util.List;
import org.joda.money.Money;

/**
 * The totals of a choice, an invoice or a credit note, checked against themselves.
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
        var layers = Amounts.sum(
                tax.getCurrencyUnit(), taxes.stream().map(TaxAmount::amount).toList());
        if (!tax.equals(layers)) {
            throw Refusal.notAllowed("tax", tax, layers + ", the sum of its layers (EN 16931, BR-CO-14)");
        }
        var due = subtotal.minus(discount).plus(tax);
        if (!total.equals(due)) {
            throw Refusal.notAllowed("total", total, due + ", lines less discount plus tax (EN 16931, BR-CO-15)");
        }
    }

    /** What the lines come to after the document discount, before tax. */
    public Money beforeTax() {
        return subtotal.minus(discount);
    }
}

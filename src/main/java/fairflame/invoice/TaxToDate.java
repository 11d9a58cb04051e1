package fairflame.invoice;

import fairflame.catalog.TaxRule;
import fairflame.money.Amounts;
import fairflame.quote.Line;
import fairflame.quote.TaxAmount;
import fairflame.quote.Taxation;
import fairflame.quote.Totals;
import java.util.ArrayList;
import java.util.List;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/**
 * Tax of a part as the tax on everything up to now less the tax already on paper, layer by layer, so that the last part
 * lands on the cents of the whole.
 */
final class TaxToDate {
    private TaxToDate() {}

    /**
     * Totals of the new lines.
     *
     * @param upTo all lines as they stand with the new ones, from the start
     * @param papers invoices and credit notes issued before
     */
    static Totals of(List<Line> now, List<Line> upTo, TaxRule rule, List<Invoice> papers, CurrencyUnit currency) {
        var whole = Taxation.of(upTo, rule, currency);
        var taxes = new ArrayList<TaxAmount>();
        for (var layer : whole.taxes()) {
            var base = Money.zero(currency);
            var amount = Money.zero(currency);
            for (var before : before(layer.name(), papers)) {
                base = base.plus(before.base());
                amount = amount.plus(before.amount());
            }
            taxes.add(new TaxAmount(
                    layer.name(),
                    layer.rate(),
                    layer.base().minus(base),
                    layer.amount().minus(amount)));
        }
        var subtotal = Amounts.sum(currency, now.stream().map(Line::net).toList());
        var discount = Amounts.sum(currency, now.stream().map(Line::discount).toList());
        var tax = Amounts.sum(currency, taxes.stream().map(TaxAmount::amount).toList());
        return new Totals(
                subtotal, discount, taxes, tax, subtotal.minus(discount).plus(tax));
    }

    private static List<TaxAmount> before(String layer, List<Invoice> papers) {
        return papers.stream()
                .flatMap(paper -> paper.totals().taxes().stream())
                .filter(tax -> tax.name().equals(layer))
                .toList();
    }
}

package fairflame.quote;

import fairflame.catalog.Jurisdiction;
import fairflame.catalog.TaxRule;
import fairflame.money.Amounts;
import fairflame.money.Percent;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/**
 * Sales tax on lines, as the rule of the place says: layers together or each on its own, on the document or on each
 * line. The exact product of base and rate is rounded once, never to three places first.
 *
 * <p>Sources: Streamlined Sales and Use Tax Agreement, section 324 (per item or per invoice, layers may be combined);
 * EN 16931 BR-CO-10 to BR-CO-17; UK VAT, internal manual VATREC12010 (total rounded down).
 */
public final class Taxation {
    private Taxation() {}

    /** Whether a kind of line is taxed in a place. */
    public static boolean taxable(LineKind kind, Jurisdiction place) {
        return taxable(kind, Places.tax(place));
    }

    /** Whether a kind of line is taxed under the rule that a quote carries. */
    public static boolean taxable(LineKind kind, TaxRule rule) {
        return rule.taxableKinds().contains(kind.word());
    }

    /** Totals of lines whose shares of the document discount are already in them. */
    public static Totals of(List<Line> lines, TaxRule rule, CurrencyUnit currency) {
        var subtotal = Amounts.sum(currency, lines.stream().map(Line::net).toList());
        var discount = Amounts.sum(currency, lines.stream().map(Line::discount).toList());
        var bases =
                lines.stream().filter(Line::taxable).map(Line::afterDiscount).toList();
        var taxes = layers(rule).stream()
                .map(layer -> tax(layer, bases, rule, currency))
                .toList();
        var tax = Amounts.sum(currency, taxes.stream().map(TaxAmount::amount).toList());
        return new Totals(
                subtotal, discount, taxes, tax, subtotal.minus(discount).plus(tax));
    }

    /** The layers that are rounded: each of the rule's, or all of them added up. */
    static List<TaxRule.Layer> layers(TaxRule rule) {
        if (!rule.combined() || rule.layers().size() < 2) {
            return rule.layers();
        }
        var names = rule.layers().stream()
                .map(layer -> layer.name() + " " + layer.rate())
                .collect(Collectors.joining(" + "));
        var rate = rule.layers().stream().map(TaxRule.Layer::rate).reduce(Percent.ZERO, Percent::plus);
        return List.of(new TaxRule.Layer(names, rate));
    }

    private static TaxAmount tax(TaxRule.Layer layer, List<Money> bases, TaxRule rule, CurrencyUnit currency) {
        var base = Amounts.sum(currency, bases);
        var factor = layer.rate().factor();
        var amount = rule.perItem()
                ? Amounts.sum(
                        currency,
                        bases.stream()
                                .map(item -> rule.rounding().times(item, factor))
                                .toList())
                : rule.rounding().apply(currency, base.getAmount().multiply(factor));
        return new TaxAmount(layer.name(), layer.rate(), base, amount);
    }

    /** The rule in one sentence. */
    static String words(TaxRule rule) {
        if (rule.layers().isEmpty()) {
            return "the place charges no sales tax";
        }
        var layers = rule.layers().stream()
                .map(layer -> layer.name() + " " + layer.rate())
                .collect(Collectors.joining(", "));
        return layers
                + (rule.layers().size() > 1 ? (rule.combined() ? ", added up" : ", each rounded") : "")
                + (rule.perItem() ? ", on each line" : ", on the document")
                + ", rounded " + rule.rounding().name().toLowerCase(Locale.ROOT)
                + ", on " + rule.taxableKinds().stream().sorted().collect(Collectors.joining(", "));
    }
}

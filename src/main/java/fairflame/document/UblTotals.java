package fairflame.document;

import fairflame.invoice.Invoice;
import fairflame.money.Amounts;
import fairflame.quote.Line;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.joda.money.Money;

/** Discounts of the document, tax and totals of a UBL document. */
final class UblTotals {
    private final Invoice invoice;
    private final XmlText xml;
    private final Function<Money, String> shown;
    private final Map<SalesTaxCategory, List<Line>> categories;

    UblTotals(Invoice invoice, XmlText xml, Function<Money, String> shown) {
        this.invoice = invoice;
        this.xml = xml;
        this.shown = shown;
        this.categories = invoice.lines().stream()
                .collect(Collectors.groupingBy(
                        line -> SalesTaxCategory.of(line, invoice.taxRule()), LinkedHashMap::new, Collectors.toList()));
    }

    void write() {
        categories.forEach(this::discount);
        xml.holding("cac:TaxTotal", () -> {
            amount("cbc:TaxAmount", invoice.totals().tax());
            categories.forEach(this::subtotal);
        });
        totals();
    }

    /** One allowance (BG-20) for each category, because a discount is shared out over taxed and untaxed lines. */
    private void discount(SalesTaxCategory category, List<Line> lines) {
        var discount = sum(lines, Line::discount);
        if (discount.isZero()) {
            return;
        }
        xml.holding("cac:AllowanceCharge", () -> {
            xml.leaf("cbc:ChargeIndicator", "false");
            xml.leaf("cbc:AllowanceChargeReason", "Discount");
            amount("cbc:Amount", discount);
            category.write(xml, "cac:TaxCategory", false);
        });
    }

    private void subtotal(SalesTaxCategory category, List<Line> lines) {
        xml.holding("cac:TaxSubtotal", () -> {
            amount("cbc:TaxableAmount", sum(lines, Line::afterDiscount));
            // Each authority's share was rounded as its place says; their sum is the amount of the one category.
            amount("cbc:TaxAmount", category.taxes() ? invoice.totals().tax() : Money.zero(invoice.currency()));
            category.write(xml, "cac:TaxCategory", true);
        });
    }

    private void totals() {
        var totals = invoice.totals();
        xml.holding("cac:LegalMonetaryTotal", () -> {
            amount("cbc:LineExtensionAmount", totals.subtotal());
            amount("cbc:TaxExclusiveAmount", totals.beforeTax());
            amount("cbc:TaxInclusiveAmount", totals.total());
            if (!totals.discount().isZero()) {
                amount("cbc:AllowanceTotalAmount", totals.discount());
            }
            if (!invoice.paid().isZero()) {
                amount("cbc:PrepaidAmount", invoice.paid());
            }
            amount("cbc:PayableAmount", invoice.balance());
        });
    }

    private Money sum(List<Line> lines, Function<Line, Money> part) {
        return Amounts.sum(invoice.currency(), lines.stream().map(part).toList());
    }

    private void amount(String element, Money money) {
        xml.leaf(element, shown.apply(money), "currencyID", invoice.currency().getCode());
    }
}

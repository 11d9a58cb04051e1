package fairflame.document;

import fairflame.catalog.TaxRule;
import fairflame.money.Percent;
import fairflame.quote.Line;
import java.math.BigDecimal;

/**
 * A tax category of EN 16931 (UNCL 5305) for lines under a sales tax. A line belongs to one category with one rate, so
 * the layers of a place make one rate together; see docs/formats/ubl.md.
 *
 * @param code S for taxed lines, E for lines the place does not tax, O where the place charges no tax at all
 * @param reason why no tax is charged, empty for taxed lines
 */
record SalesTaxCategory(String code, Percent rate, String reason) {
    static SalesTaxCategory of(Line line, TaxRule rule) {
        return line.taxable() && !rule.layers().isEmpty() ? taxed(rule) : untaxed(rule);
    }

    static SalesTaxCategory taxed(TaxRule rule) {
        var rate = rule.layers().stream().map(TaxRule.Layer::rate).reduce(Percent.ZERO, Percent::plus);
        return rate.value().signum() == 0 ? new SalesTaxCategory("Z", rate, "") : new SalesTaxCategory("S", rate, "");
    }

    static SalesTaxCategory untaxed(TaxRule rule) {
        return rule.layers().isEmpty()
                ? new SalesTaxCategory("O", Percent.ZERO, "The place charges no sales tax")
                : new SalesTaxCategory("E", Percent.ZERO, "The place does not tax this kind of line");
    }

    boolean taxes() {
        return code.equals("S") || code.equals("Z");
    }

    /** Writes the category as an element; an O category has no rate (BR-O-05). */
    void write(XmlText xml, String element, boolean withReason) {
        xml.holding(element, () -> {
            xml.leaf("cbc:ID", code);
            if (!code.equals("O")) {
                xml.leaf("cbc:Percent", plain(rate.value()));
            }
            if (withReason) {
                xml.leaf("cbc:TaxExemptionReason", reason);
            }
            // EN 16931 binds the category to the scheme "VAT" by name, whatever the tax is called in the place.
            xml.holding("cac:TaxScheme", () -> xml.leaf("cbc:ID", "VAT"));
        });
    }

    private static String plain(BigDecimal value) {
        return value.signum() == 0 ? "0" : value.toPlainString();
    }
}

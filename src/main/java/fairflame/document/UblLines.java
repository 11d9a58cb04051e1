package fairflame.document;

import fairflame.invoice.Invoice;
import fairflame.quote.Line;
import java.math.BigDecimal;
import java.math.MathContext;
import org.joda.money.Money;

/** The lines of a UBL document. A price is never negative (BR-27): what is taken off has a negative quantity. */
final class UblLines {
    private static final int PRICE_DIGITS = 12;

    private final Invoice invoice;
    private final XmlText xml;
    private final boolean credit;

    UblLines(Invoice invoice, XmlText xml) {
        this.invoice = invoice;
        this.xml = xml;
        this.credit = invoice.kind() == Invoice.Kind.CREDIT;
    }

    void write(Line line) {
        var net = credit ? line.net().negated() : line.net();
        var unit = UnitCodes.of(line.unit());
        xml.holding(credit ? "cac:CreditNoteLine" : "cac:InvoiceLine", () -> {
            xml.leaf("cbc:ID", line.id());
            xml.leaf(
                    credit ? "cbc:CreditedQuantity" : "cbc:InvoicedQuantity",
                    quantity(line, net).toPlainString(),
                    "unitCode",
                    unit);
            xml.leaf("cbc:LineExtensionAmount", net.getAmount().toPlainString(), "currencyID", currency());
            item(line, unit);
            xml.holding(
                    "cac:Price",
                    () -> xml.leaf("cbc:PriceAmount", price(line).toPlainString(), "currencyID", currency()));
        });
    }

    private void item(Line line, String unit) {
        xml.holding("cac:Item", () -> {
            if (unit.equals(UnitCodes.ONE) && !line.unit().isBlank()) {
                xml.leaf("cbc:Description", "Unit: " + line.unit());
            }
            xml.leaf("cbc:Name", line.description());
            if (!line.item().isBlank()) {
                xml.holding("cac:SellersItemIdentification", () -> xml.leaf("cbc:ID", line.item()));
            }
            SalesTaxCategory.of(line, invoice.taxRule()).write(xml, "cac:ClassifiedTaxCategory", false);
        });
    }

    /** The size as it stands, with the sign of the amount. */
    private static BigDecimal quantity(Line line, Money net) {
        var size = line.quantity().abs();
        return net.isNegative() ? size.negate() : size;
    }

    /** The unit price; where the amount is not quantity times price, the price that makes it so. */
    private static BigDecimal price(Line line) {
        var size = line.quantity().abs();
        var amount = line.net().abs().getAmount();
        var stated = line.unitPrice().abs().getAmount();
        var off = stated.multiply(size).subtract(amount).abs();
        // Half a cent is the rounding of the line itself.
        return size.signum() == 0 || off.compareTo(new BigDecimal("0.005")) <= 0
                ? stated
                : amount.divide(size, new MathContext(PRICE_DIGITS));
    }

    private String currency() {
        return invoice.currency().getCode();
    }
}

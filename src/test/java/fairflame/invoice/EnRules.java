package fairflame.invoice;

import fairflame.quote.Line;
import fairflame.quote.TaxAmount;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;

/**
 * The rules on document totals of EN 16931 (BR-CO-10, 11, 13, 14, 15, 16, 17 and BR-S-08), written from the standard's
 * published validation rules and independent of the program's own arithmetic. Amounts of a credit note are negative
 * here and are compared as they stand.
 */
final class EnRules {
    // The published rule for BR-CO-17 accepts differences below 1; whole documents here have to be exact.
    private static final BigDecimal CENT = new BigDecimal("0.01");

    private EnRules() {}

    static List<String> broken(Invoice invoice) {
        var broken = new ArrayList<String>();
        var totals = invoice.totals();
        var net =
                sum(invoice.lines().stream().map(line -> line.net().getAmount()).toList());
        var allowances = sum(invoice.lines().stream()
                .map(line -> line.discount().getAmount())
                .toList());
        var taxes =
                sum(totals.taxes().stream().map(tax -> tax.amount().getAmount()).toList());
        check(broken, "BR-CO-10", totals.subtotal().getAmount(), net);
        check(broken, "BR-CO-11", totals.discount().getAmount(), allowances);
        check(broken, "BR-CO-13", totals.beforeTax().getAmount(), net.subtract(allowances));
        check(broken, "BR-CO-14", totals.tax().getAmount(), taxes);
        check(
                broken,
                "BR-CO-15",
                totals.total().getAmount(),
                net.subtract(allowances).add(taxes));
        var paid = sum(invoice.payments().stream()
                .map(payment -> payment.amount().getAmount())
                .toList());
        check(
                broken,
                "BR-CO-16",
                invoice.balance().getAmount(),
                totals.total().getAmount().subtract(paid));
        var base = sum(invoice.lines().stream()
                .filter(Line::taxable)
                .map(line -> line.net().minus(line.discount()).getAmount())
                .toList());
        for (var tax : totals.taxes()) {
            check(broken, "BR-S-08 " + tax.name(), tax.base().getAmount(), base);
        }
        return broken;
    }

    /** BR-CO-17 on a document that is not a part of another: each tax is base times rate, rounded to two decimals. */
    static List<String> brokenTax(Invoice invoice) {
        var broken = new ArrayList<String>();
        for (TaxAmount tax : invoice.totals().taxes()) {
            var exact = tax.base().getAmount().multiply(tax.rate().value()).movePointLeft(2);
            check(broken, "BR-CO-17", tax.amount().getAmount(), exact.setScale(2, RoundingMode.HALF_UP));
        }
        return broken;
    }

    private static BigDecimal sum(List<BigDecimal> amounts) {
        return amounts.stream().reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    private static void check(List<String> broken, String rule, BigDecimal met, BigDecimal due) {
        if (met.subtract(due).abs().compareTo(CENT) >= 0) {
            broken.add(rule + ": " + met + " instead of " + due);
        }
    }
}

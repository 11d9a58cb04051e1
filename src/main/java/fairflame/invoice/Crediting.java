package fairflame.invoice;

import fairflame.Refusal;
import fairflame.quote.Line;
import fairflame.quote.Taxation;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * Takes an invoice back, in whole or in part, by a credit note that names it (EN 16931, BG-3). A full credit is the exact
 * negative; a partial one carries the tax that falls away, the tax of what remains being computed anew.
 */
public final class Crediting {
    private Crediting() {}

    /** A credit of everything that is left of the invoice. */
    public static Invoice full(Issue issue, Invoice invoice, List<Invoice> credits, String reason) {
        var credited = Billed.on(credits);
        var left = invoice.lines().stream()
                .filter(line -> line.quantity().add(credited.quantity(line)).signum() != 0)
                .collect(Collectors.toMap(Line::id, line -> line.quantity().add(credited.quantity(line))));
        return partial(issue, invoice, credits, left, reason);
    }

    /**
     * A credit of some lines or parts of lines.
     *
     * @param credits earlier credit notes of this invoice
     * @param back quantity taken back of each line, by line id, above zero and at most what is left
     */
    public static Invoice partial(
            Issue issue, Invoice invoice, List<Invoice> credits, Map<String, BigDecimal> back, String reason) {
        refuseUnfit(issue, invoice, credits, back, reason);
        var papers = new ArrayList<Invoice>();
        papers.add(invoice);
        papers.addAll(credits);
        var standing = Billed.on(papers);
        refuseMoreThanStands(invoice, standing, back);
        var now = new ArrayList<Line>();
        var remains = new ArrayList<Line>();
        for (var line : invoice.lines()) {
            var reached = standing.upTo(
                    line, back.getOrDefault(line.id(), BigDecimal.ZERO).negate());
            if (reached.quantity().signum() != 0) {
                remains.add(reached);
            }
            if (back.containsKey(line.id())) {
                now.add(standing.now(reached));
            }
        }
        // Untaxed lines give back no tax, not even the cent that a part bill may carry for an earlier one.
        var totals = now.stream().anyMatch(Line::taxable)
                ? TaxToDate.of(now, remains, invoice.taxRule(), papers, invoice.currency())
                : Taxation.of(now, invoice.taxRule(), invoice.currency());
        return new Invoice(
                issue.number().toString(),
                Invoice.Kind.CREDIT,
                invoice.number(),
                issue.issued(),
                issue.supplied(),
                issue.due(),
                invoice.currency(),
                invoice.quote(),
                invoice.revision(),
                invoice.seal(),
                invoice.changeOrders(),
                invoice.seller(),
                invoice.sellerLicence(),
                invoice.customer(),
                invoice.site(),
                invoice.title(),
                now,
                totals,
                invoice.taxRule(),
                invoice.complete(),
                invoice.completion(),
                List.of(reason),
                List.of());
    }

    private static void refuseMoreThanStands(Invoice invoice, Billed standing, Map<String, BigDecimal> back) {
        for (var line : invoice.lines()) {
            var asked = back.getOrDefault(line.id(), BigDecimal.ZERO);
            if (asked.compareTo(standing.quantity(line)) > 0) {
                throw Refusal.outOfRange(
                        "quantity to credit of line " + line.id(),
                        asked.toPlainString(),
                        "up to " + standing.quantity(line).toPlainString() + ", what is not credited yet");
            }
        }
    }

    private static void refuseUnfit(
            Issue issue, Invoice invoice, List<Invoice> credits, Map<String, BigDecimal> back, String reason) {
        if (reason.isBlank()) {
            throw Refusal.missing("reason of a credit note", "plain words");
        }
        if (invoice.kind() == Invoice.Kind.CREDIT) {
            throw Refusal.notAllowed("credit of " + invoice.number(), "a credit note", "an invoice");
        }
        if (issue.issued().isBefore(invoice.issued())) {
            throw Refusal.outOfRange("day of the credit note", issue.issued(), "from " + invoice.issued());
        }
        for (var credit : credits) {
            if (!credit.corrects().equals(invoice.number())) {
                throw Refusal.notAllowed("credit note " + credit.number(), "of another invoice", invoice.number());
            }
        }
        if (back.isEmpty()) {
            throw Refusal.missing("line to credit", "at least one that is not credited yet");
        }
        var ids = invoice.lines().stream().map(Line::id).collect(Collectors.toCollection(TreeSet::new));
        back.forEach((id, quantity) -> {
            if (!ids.contains(id)) {
                throw Refusal.unknown("line to credit", id, String.join(", ", ids));
            }
            if (quantity.signum() <= 0) {
                throw Refusal.outOfRange("quantity to credit of line " + id, quantity.toPlainString(), "above zero");
            }
        });
    }
}

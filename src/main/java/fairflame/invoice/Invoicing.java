package fairflame.invoice;

import fairflame.Refusal;
import fairflame.agreement.Agreed;
import fairflame.agreement.ChangeOrder;
import fairflame.quote.Cautions;
import fairflame.quote.Line;
import fairflame.quote.TemplateText;
import fairflame.quote.Totals;
import fairflame.wording.Wording;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * Makes invoices from what was agreed and from nothing else: the agreement proves itself by its seals. The totals are
 * the signed ones to the cent; parts are billed by what has been done so far, and the last part lands on the signed
 * cents.
 */
public final class Invoicing {
    private final Agreed agreed;
    private final Cautions cautions;
    private final Wording wording;

    public Invoicing(Agreed agreed, Cautions cautions) {
        this(agreed, cautions, Wording.ENGLISH);
    }

    /** Bills in the language that was agreed in. */
    public Invoicing(Agreed agreed, Cautions cautions, Wording wording) {
        this.agreed = agreed;
        this.cautions = cautions;
        this.wording = wording;
    }

    /**
     * The invoice for complete work: everything agreed that is not billed yet. Refused while anything that the place asks
     * is missing.
     *
     * @param earlier invoices and credit notes of this agreement, in order
     */
    public Invoice complete(Issue issue, Completion completion, List<Invoice> earlier) {
        var missing = missing(completion);
        if (!missing.isEmpty()) {
            throw Refusal.notAllowed(
                    "invoice for complete work", "not complete", "after this: " + String.join(" ", missing));
        }
        return rest(issue, completion, earlier);
    }

    /** The invoice for everything agreed that is not billed yet; it says so when the work may not be called complete. */
    public Invoice rest(Issue issue, Completion completion, List<Invoice> earlier) {
        var billed = Billed.on(earlier);
        var quantities = agreed.lines().stream()
                .filter(line -> billed.left(line).signum() != 0)
                .collect(Collectors.toMap(Line::id, billed::left));
        return part(issue, completion, earlier, quantities);
    }

    /**
     * The invoice for work done so far.
     *
     * @param done quantity now done of each line, by line id
     */
    public Invoice part(Issue issue, Completion completion, List<Invoice> earlier, Map<String, BigDecimal> done) {
        refuseUnfit(earlier, done);
        var billed = Billed.on(earlier);
        var upTo = new ArrayList<Line>();
        var now = new ArrayList<Line>();
        for (var line : agreed.lines()) {
            var reached = billed.upTo(line, done.getOrDefault(line.id(), BigDecimal.ZERO));
            if (reached.quantity().signum() != 0) {
                upTo.add(reached);
            }
            if (done.containsKey(line.id())) {
                now.add(billed.now(reached));
            }
        }
        var quote = agreed.signed().quote();
        var totals = TaxToDate.of(now, upTo, quote.rules().tax(), earlier, quote.currency());
        if (totals.total().isNegative()) {
            throw Refusal.outOfRange("total of the invoice", totals.total(), "zero or more; use a credit note");
        }
        var whole = earlier.isEmpty() && now.equals(agreed.lines());
        return invoice(issue, whole ? Invoice.Kind.FULL : Invoice.Kind.PART, now, totals, completion);
    }

    /** What still stands between this work and calling it complete. */
    public List<String> missing(Completion completion) {
        return CompletionGate.missing(agreed, completion);
    }

    private void refuseUnfit(List<Invoice> earlier, Map<String, BigDecimal> done) {
        var ids = agreed.lines().stream().map(Line::id).collect(Collectors.toCollection(TreeSet::new));
        var quote = agreed.signed().quote();
        for (var paper : earlier) {
            if (!paper.seal().equals(agreed.signed().seal().chain())) {
                throw Refusal.notAllowed("earlier invoice " + paper.number(), "of another agreement", quote.number());
            }
        }
        for (var id : Billed.on(earlier).open()) {
            if (!ids.contains(id)) {
                throw Refusal.notAllowed("line " + id, "billed and then removed", "a credit note for it first");
            }
        }
        if (done.isEmpty()) {
            throw Refusal.missing("work to bill", "a quantity of at least one line that is not billed yet");
        }
        done.forEach((id, quantity) -> {
            if (!ids.contains(id)) {
                throw Refusal.unknown("line to bill", id, String.join(", ", ids));
            }
            if (quantity.signum() <= 0) {
                throw Refusal.outOfRange("quantity of line " + id, quantity.toPlainString(), "above zero");
            }
        });
    }

    private Invoice invoice(Issue issue, Invoice.Kind kind, List<Line> lines, Totals totals, Completion completion) {
        var quote = agreed.signed().quote();
        var missing = missing(completion);
        return new Invoice(
                issue.number().toString(),
                kind,
                "",
                issue.issued(),
                issue.supplied(),
                issue.due(),
                quote.currency(),
                quote.number(),
                quote.revision(),
                agreed.signed().seal().chain(),
                agreed.orders().stream().map(ChangeOrder::number).toList(),
                quote.seller(),
                quote.sellerLicence(),
                quote.customer(),
                quote.site(),
                agreed.signed().taken().title(),
                lines,
                totals,
                quote.rules().tax(),
                missing.isEmpty(),
                completion,
                notCleared(missing),
                List.of());
    }

    private List<String> notCleared(List<String> missing) {
        if (missing.isEmpty()) {
            return List.of();
        }
        var reason = missing.stream().map(wording::of).collect(Collectors.joining(" "));
        return cautions.notCleared().stream()
                .map(sentence -> TemplateText.fill(sentence, Map.of("reason", reason)))
                .toList();
    }
}

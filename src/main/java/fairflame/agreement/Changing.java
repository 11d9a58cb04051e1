package fairflame.agreement;

import fairflame.Refusal;
import fairflame.money.Amounts;
import fairflame.money.Rounding;
import fairflame.quote.Basis;
import fairflame.quote.Line;
import fairflame.quote.Taxation;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.joda.money.Money;

/**
 * Changes an agreement by a signed and sealed change order. Lines that stay keep their share of the discount; the totals
 * of the whole are computed from scratch under the tax rule of the quote.
 */
public final class Changing {
    private static final Seal NONE = new Seal("", "", "", Map.of());

    private final ConsentText consent;

    public Changing(ConsentText consent) {
        this.consent = consent;
    }

    /** The totals that the customer would sign for. */
    public ChangeDraft draft(Agreed agreed, Change change) {
        if (change.reason().isBlank()) {
            throw Refusal.missing("reason of a change order", "plain words");
        }
        if (change.added().isEmpty() && change.removed().isEmpty()) {
            throw Refusal.missing("change", "a line to add or to remove");
        }
        var quote = agreed.signed().quote();
        var place = agreed.orders().size() + 1;
        var lines = new ArrayList<Line>();
        for (var line : change.added()) {
            lines.add(line(agreed, "C" + place + "." + (lines.size() + 1), line));
        }
        var after = agreed.totals(Agreed.changed(agreed.lines(), lines, change.removed()));
        if (after.total().isNegative()) {
            throw Refusal.outOfRange("total after the change", after.total(), "zero or more");
        }
        return new ChangeDraft(quote.number() + "-C" + place, agreed.seal(), change, lines, agreed.totals(), after);
    }

    /**
     * Signs and seals a draft.
     *
     * @param previous chain value of the last seal of the shop
     */
    public ChangeOrder sign(Agreed agreed, ChangeDraft draft, SigningAct act, String previous) {
        if (!draft.agreement().equals(agreed.seal())) {
            throw Refusal.notAllowed("change order " + draft.number(), "drafted on another state", "a new draft");
        }
        if (act.at().isBefore(agreed.signed().signature().at())) {
            throw Refusal.outOfRange(
                    "time of signing",
                    act.at(),
                    "after " + agreed.signed().signature().at() + ", when the quote was signed");
        }
        var quote = agreed.signed().quote();
        var texts = List.of(consent.authoriseChange(quote, draft.after().total()), consent.electronic(quote));
        var signed = new ChangeOrder(
                draft.number(),
                quote.number(),
                quote.revision(),
                draft.agreement(),
                draft.change().reason(),
                draft.lines(),
                draft.change().removed(),
                draft.change().duties(),
                draft.change().tests(),
                draft.before(),
                draft.after(),
                Signing.signature(act, texts),
                NONE);
        return Sealing.seal(signed, previous);
    }

    private static Line line(Agreed agreed, String id, AddedLine added) {
        var quote = agreed.signed().quote();
        Amounts.same(quote.currency(), added.unitPrice());
        if (added.quantity().signum() <= 0) {
            throw Refusal.outOfRange(
                    "quantity of '" + added.description() + "'",
                    added.quantity().toPlainString(),
                    "above zero");
        }
        var net = Rounding.NEAREST.times(added.unitPrice(), added.quantity());
        var words = added.quantity().toPlainString() + " " + added.unit() + " x " + added.unitPrice() + " = " + net;
        var rule = quote.rules().tax();
        return new Line(
                id,
                added.kind(),
                added.item(),
                added.description(),
                added.quantity(),
                added.unit(),
                added.unitPrice(),
                net,
                Money.zero(quote.currency()),
                Taxation.taxable(added.kind(), rule),
                false,
                List.of(
                        new Basis("change", added.why(), added.source()),
                        new Basis("arithmetic", words, "computed"),
                        new Basis("tax rule", "rule of the signed quote", rule.source())));
    }
}

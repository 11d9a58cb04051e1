package fairflame.quote;

import fairflame.Refusal;
import fairflame.catalog.Jurisdiction;
import fairflame.money.Amounts;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/** Takes discounts off drafts: line discounts first, as lines of their own; then the document discount, to the cent. */
final class Discounting {
    private Discounting() {}

    /** Each discounted line followed by its discount. */
    static List<Draft> lines(List<Draft> drafts, List<LineDiscount> discounts) {
        var result = new ArrayList<Draft>();
        for (var draft : drafts) {
            var left = draft.discountable();
            var off = new ArrayList<Draft>();
            for (var discount : discounts) {
                if (draft.answersTo(discount.item())) {
                    refuseIfFixed(draft);
                    var amount = discount.discount().from(left);
                    left = left.minus(amount);
                    off.add(reduction(draft, discount.discount(), amount));
                }
            }
            result.add(draft.discountable(left));
            result.addAll(off);
        }
        return result;
    }

    /** Each draft's share of the document discount, in the same order. */
    static List<Money> shares(List<Draft> drafts, Discount discount, Jurisdiction place, CurrencyUnit currency) {
        var base =
                Amounts.sum(currency, drafts.stream().map(Draft::discountable).toList());
        var off = discount.from(base);
        if (off.isZero()) {
            return drafts.stream().map(draft -> off).toList();
        }
        var taxed = sum(drafts, place, true, currency);
        // Between taxed and untaxed first, so that the tax base does not hang on the order or number of lines; on a tie
        // the cent goes to the taxed side.
        var parts = Amounts.allocate(
                off, List.of(taxed.getAmount(), base.minus(taxed).getAmount()));
        var shares = new ArrayList<Money>(
                drafts.stream().map(draft -> Money.zero(currency)).toList());
        share(drafts, place, true, parts.get(0), shares);
        share(drafts, place, false, parts.get(1), shares);
        return shares;
    }

    private static void share(List<Draft> drafts, Jurisdiction place, boolean taxed, Money amount, List<Money> shares) {
        // In an order of the lines' own, so that the printed order does not decide who gets an odd cent.
        var group = IntStream.range(0, drafts.size())
                .boxed()
                .filter(i -> Taxation.taxable(drafts.get(i).kind(), place) == taxed)
                .sorted(Comparator.comparing((Integer i) -> drafts.get(i).discountable())
                        .reversed()
                        .thenComparing(i -> drafts.get(i).kind())
                        .thenComparing(i -> drafts.get(i).item())
                        .thenComparing(i -> drafts.get(i).description()))
                .toList();
        if (amount.isZero()) {
            return;
        }
        List<BigDecimal> weights = group.stream()
                .map(i -> drafts.get(i).discountable().getAmount())
                .toList();
        var parts = Amounts.allocate(amount, weights);
        for (int i = 0; i < group.size(); i++) {
            shares.set(group.get(i), parts.get(i));
        }
    }

    private static Money sum(List<Draft> drafts, Jurisdiction place, boolean taxed, CurrencyUnit currency) {
        return Amounts.sum(
                currency,
                drafts.stream()
                        .filter(draft -> Taxation.taxable(draft.kind(), place) == taxed)
                        .map(Draft::discountable)
                        .toList());
    }

    private static Draft reduction(Draft draft, Discount discount, Money amount) {
        var words = discount.size() + " off " + draft.description() + ": " + discount.reason();
        return Draft.of(
                        draft.kind(),
                        draft.item(),
                        "Discount " + discount.size() + ", " + discount.reason(),
                        Draft.Count.once("each", amount.negated()),
                        List.of(new Basis("discount", words, "agreed with the customer")))
                .fixed();
    }

    private static void refuseIfFixed(Draft draft) {
        if (draft.discountable().isZero() && !draft.net().isZero()) {
            throw Refusal.notAllowed(
                    "discount on", draft.description(), "lines that are not passed through; fees are charged as paid");
        }
    }
}

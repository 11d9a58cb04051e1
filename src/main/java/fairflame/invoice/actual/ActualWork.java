package fairflame.invoice.actual;

import fairflame.Refusal;
import fairflame.agreement.AddedLine;
import fairflame.agreement.Agreed;
import fairflame.money.Amounts;
import fairflame.money.Percent;
import fairflame.quote.Line;
import fairflame.quote.LineKind;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.joda.money.Money;

/**
 * Hours and parts as they were, against what was signed, before tax. It only compares: whatever it says, nothing beyond
 * the signed lines is ever billed without a signed change order.
 *
 * @param rows signed lines with what became of them
 * @param outside work that stands in no signed line, nor in a change order, and that the shop does not bear
 * @param signed sum of the signed lines
 * @param actual sum of what was done, at signed prices, and of the work outside; without what the shop bears
 * @param tolerance how far the place lets the work go above what was signed
 */
public record ActualWork(
        List<ActualRow> rows, List<OutsideWork> outside, Money signed, Money actual, Percent tolerance) {
    public ActualWork {
        rows = List.copyOf(rows);
        outside = List.copyOf(outside);
    }

    /** Compares what is known of the work with what was agreed. */
    public static ActualWork of(Agreed agreed, Actuals actuals) {
        var rows = new ActualRows(agreed, actuals).all();
        var outside = actuals.outside().stream()
                .filter(work -> !work.borne() && !isAgreed(work, agreed))
                .toList();
        var quote = agreed.signed().quote();
        var currency = quote.currency();
        outside.forEach(work -> Amounts.same(currency, work.worth()));
        var signed =
                Amounts.sum(currency, agreed.lines().stream().map(Line::net).toList());
        var done = Amounts.sum(currency, rows.stream().map(ActualRow::worth).toList())
                .plus(Amounts.sum(
                        currency, outside.stream().map(OutsideWork::worth).toList()));
        return new ActualWork(rows, outside, signed, done, quote.rules().overrun());
    }

    /**
     * Compares figures that are not kept.
     *
     * @param quantities actual quantity by line id; a line left out was done as signed
     * @param outside work that was not signed, in words, with its worth before tax
     */
    public static ActualWork of(Agreed agreed, Map<String, BigDecimal> quantities, Map<String, Money> outside) {
        refuseUnknown(agreed, quantities.keySet());
        var works = outside.entrySet().stream()
                .map(entry -> new OutsideWork(entry.getKey(), LineKind.LABOUR, entry.getValue(), false))
                .sorted(java.util.Comparator.comparing(OutsideWork::words))
                .toList();
        var quote = agreed.signed().quote();
        var entry = new ActualEntry(quantities, works, java.util.Set.of(), java.util.Set.of(), Map.of(), "");
        var none = Actuals.none(
                quote.number(), quote.revision(), agreed.signed().signature().at());
        return quantities.isEmpty() && works.isEmpty()
                ? of(agreed, none)
                : of(
                        agreed,
                        none.after(entry, "nobody", agreed.signed().signature().at()));
    }

    /** Refuses an id that no line of the agreement has or had. */
    public static void refuseUnknown(Agreed agreed, Iterable<String> ids) {
        var known = Stream.concat(
                        agreed.signed().taken().lines().stream(),
                        agreed.orders().stream().flatMap(order -> order.added().stream()))
                .map(Line::id)
                .collect(Collectors.toCollection(TreeSet::new));
        for (var id : ids) {
            if (!known.contains(id)) {
                throw Refusal.unknown("line", id, String.join(", ", known));
            }
        }
    }

    /** Work that a signed change order names by the same words, for at least its worth. */
    private static boolean isAgreed(OutsideWork work, Agreed agreed) {
        return agreed.orders().stream()
                .flatMap(order -> order.added().stream())
                .anyMatch(
                        line -> work.isCalled(line.description()) && !line.net().isLessThan(work.worth()));
    }

    /** The most that the place lets the work come to before tax without a change order. */
    public Money most() {
        return signed.plus(signed.multipliedBy(tolerance.factor(), RoundingMode.DOWN));
    }

    private boolean isBeyondTolerance() {
        return actual.isGreaterThan(most());
    }

    /** Rows that have to be signed for: beyond their signed quantity while the whole is beyond the tolerance. */
    public List<ActualRow> beyond() {
        return isBeyondTolerance()
                ? rows.stream().filter(row -> row.beyond().signum() > 0).toList()
                : List.of();
    }

    /** Why a change order has to be signed before the work is billed, a sentence each; empty when none has to be. */
    public List<String> needsChangeOrder() {
        var reasons = new ArrayList<String>();
        outside.forEach(work -> reasons.add(work.words() + ", " + work.worth() + ", stands in no signed line."));
        beyond().forEach(row ->
                reasons.add("Line " + row.line().id() + ", " + row.line().description() + ": "
                        + plain(row.line().quantity()) + " " + row.line().unit() + " signed, " + plain(row.actual())
                        + " done, " + plain(row.beyond()) + " beyond."));
        if (!beyond().isEmpty()) {
            reasons.add("The work comes to " + actual + "; " + signed + " was signed, and the place lets it go up to "
                    + most() + " (" + tolerance + " above).");
        }
        return List.copyOf(reasons);
    }

    /** Lines of which it was told that nothing was done; they are not billed as done. */
    public List<ActualRow> undone() {
        return rows.stream()
                .filter(row -> row.told()
                        && row.actual().signum() == 0
                        && row.line().quantity().signum() != 0)
                .toList();
    }

    /** The lines that a change order would add to cover what goes beyond, at the signed prices. */
    public List<AddedLine> toSign() {
        var lines = new ArrayList<AddedLine>();
        beyond().forEach(row -> lines.add(new AddedLine(
                row.line().kind(),
                row.line().item(),
                row.line().description(),
                row.beyond(),
                row.line().unit(),
                row.line().unitPrice(),
                plain(row.actual()) + " " + row.line().unit() + " done, "
                        + plain(row.line().quantity()) + " signed",
                "work as it was done")));
        outside.forEach(work -> lines.add(new AddedLine(
                work.kind(),
                "",
                work.words(),
                BigDecimal.ONE,
                "job",
                work.worth(),
                "stands in no signed line",
                "work as it was done")));
        return lines;
    }

    private static String plain(BigDecimal number) {
        return number.stripTrailingZeros().toPlainString();
    }
}

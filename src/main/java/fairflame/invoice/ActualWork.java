package fairflame.invoice;

import fairflame.Refusal;
import fairflame.agreement.Agreed;
import fairflame.money.Amounts;
import fairflame.money.Percent;
import fairflame.money.Rounding;
import fairflame.quote.Line;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.joda.money.Money;

/**
 * Hours and parts as they were, against what was signed, before tax. It only compares: whatever it says, nothing beyond
 * the signed lines is ever billed without a signed change order.
 *
 * @param rows signed lines with what became of them
 * @param outside work that stands in no signed line, with its worth
 * @param signed sum of the signed lines
 * @param actual sum of what was done, at signed prices, and of the work outside
 */
public record ActualWork(List<Row> rows, Map<String, Money> outside, Money signed, Money actual, Percent tolerance) {
    public ActualWork {
        rows = List.copyOf(rows);
        outside = Map.copyOf(outside);
    }

    /** One signed line; {@code worth} is the actual quantity at the signed price. */
    public record Row(Line line, BigDecimal actual, Money worth) {
        public BigDecimal difference() {
            return actual.subtract(line.quantity());
        }
    }

    /**
     * Compares.
     *
     * @param quantities actual quantity by line id; a line left out was done as signed
     * @param outside work that was not signed, in words, with its worth before tax
     */
    public static ActualWork of(Agreed agreed, Map<String, BigDecimal> quantities, Map<String, Money> outside) {
        var lines = agreed.lines();
        var known = lines.stream().map(Line::id).collect(Collectors.toCollection(TreeSet::new));
        var rows = new ArrayList<Row>();
        quantities.keySet().stream()
                .filter(id -> !known.contains(id))
                .findFirst()
                .ifPresent(id -> {
                    throw Refusal.unknown("line", id, String.join(", ", known));
                });
        for (var line : lines) {
            var actual = quantities.getOrDefault(line.id(), line.quantity());
            if (actual.signum() < 0) {
                throw Refusal.outOfRange("quantity of line " + line.id(), actual.toPlainString(), "zero or more");
            }
            rows.add(new Row(line, actual, worth(line, actual)));
        }
        var quote = agreed.signed().quote();
        var currency = quote.currency();
        var signed = Amounts.sum(currency, lines.stream().map(Line::net).toList());
        var actual = Amounts.sum(currency, rows.stream().map(Row::worth).toList())
                .plus(Amounts.sum(currency, outside.values()));
        return new ActualWork(rows, outside, signed, actual, quote.rules().overrun());
    }

    private static Money worth(Line line, BigDecimal actual) {
        return actual.compareTo(line.quantity()) == 0 ? line.net() : Rounding.NEAREST.times(line.unitPrice(), actual);
    }

    /** Why a change order has to be signed before more is billed, a sentence each; empty when none has to be. */
    public List<String> needsChangeOrder() {
        var reasons = new ArrayList<String>();
        outside.keySet().stream().sorted().forEach(words -> reasons.add(words + " stands in no signed line."));
        var most = signed.plus(signed.multipliedBy(tolerance.factor(), RoundingMode.DOWN));
        if (actual.isGreaterThan(most)) {
            reasons.add("The work comes to " + actual + "; " + signed + " was signed, and the place lets it go up to "
                    + most + " (" + tolerance + " above).");
        }
        return List.copyOf(reasons);
    }
}

package fairflame.quote;

import fairflame.Refusal;
import fairflame.money.Amounts;
import fairflame.wording.Spoken;
import java.math.BigDecimal;
import java.util.List;
import org.joda.money.Money;

/**
 * One priced choice.
 *
 * @param work what is done, task by task; empty for a diagnosis only
 * @param duties what the law of the place asks of this work
 * @param hours labour hours as billed, with their basis in the labour lines
 * @param deposit asked at signing, never above the cap of the place
 * @param notes notes that this choice prints besides those of the whole quote, the boxed ones first
 * @param arithmetic decision arithmetic in plain sentences with its assumptions; empty for none
 */
public record Choice(
        String id,
        @Spoken String title,
        @Spoken String plain,
        boolean suggested,
        @Spoken String leavesUnfixed,
        List<Work> work,
        Duties duties,
        BigDecimal hours,
        List<Line> lines,
        Totals totals,
        Money deposit,
        List<String> tests,
        List<Note> notes,
        @Spoken List<String> arithmetic) {
    public Choice {
        work = List.copyOf(work);
        lines = List.copyOf(lines);
        tests = List.copyOf(tests);
        notes = List.copyOf(notes);
        arithmetic = List.copyOf(arithmetic);
        refuseUnlessSumOf(lines, totals);
        if (totals.total().isNegative()) {
            throw Refusal.outOfRange("total of a choice", totals.total(), "zero or more");
        }
        if (deposit.isNegative() || deposit.isGreaterThan(totals.total())) {
            throw Refusal.outOfRange("deposit", deposit, "0.00 to the total, " + totals.total());
        }
    }

    /** The same without these notes. */
    Choice without(List<Note> printedElsewhere) {
        return with(
                notes.stream().filter(note -> !printedElsewhere.contains(note)).toList(), arithmetic);
    }

    /** The same with decision arithmetic. */
    Choice told(List<String> sentences) {
        return with(notes, sentences);
    }

    private Choice with(List<Note> notes, List<String> arithmetic) {
        return new Choice(
                id,
                title,
                plain,
                suggested,
                leavesUnfixed,
                work,
                duties,
                hours,
                lines,
                totals,
                deposit,
                tests,
                notes,
                arithmetic);
    }

    private static void refuseUnlessSumOf(List<Line> lines, Totals totals) {
        var currency = totals.total().getCurrencyUnit();
        var net = Amounts.sum(currency, lines.stream().map(Line::net).toList());
        if (!net.equals(totals.subtotal())) {
            throw Refusal.notAllowed(
                    "subtotal", totals.subtotal(), net + ", the sum of the lines (EN 16931, BR-CO-10)");
        }
        var discount = Amounts.sum(currency, lines.stream().map(Line::discount).toList());
        if (!discount.equals(totals.discount())) {
            throw Refusal.notAllowed(
                    "discount", totals.discount(), discount + ", the sum of the lines' shares (EN 16931, BR-CO-11)");
        }
    }
}

package fairflame.quote;

import java.math.BigDecimal;
import java.util.List;
import org.joda.money.Money;

/**
 * One priced choice.
 *
 * @param hours labour hours as billed, with their basis in the labour line
 * @param deposit asked at signing, never above the cap of the place
 * @param arithmetic decision arithmetic in plain sentences with its assumptions; empty for none
 */
public record Choice(
        String id,
        String title,
        String plain,
        boolean suggested,
        String leavesUnfixed,
        BigDecimal hours,
        List<Line> lines,
        Totals totals,
        Money deposit,
        List<String> tests,
        List<Note> notes,
        List<String> arithmetic) {
    public Choice {
        lines = List.copyOf(lines);
        tests = List.copyOf(tests);
        notes = List.copyOf(notes);
        arithmetic = List.copyOf(arithmetic);
    }
}

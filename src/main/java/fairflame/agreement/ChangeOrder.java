package fairflame.agreement;

import fairflame.quote.Duties;
import fairflame.quote.Line;
import fairflame.quote.Totals;
import java.util.List;

/**
 * A signed change of what was agreed. Totals are those of the whole agreement after the change, computed from scratch.
 *
 * @param number such as {@code Q-2026-0001-C1}
 * @param quote number of the signed quote
 * @param revision of the signed quote
 * @param agreement {@code chain} of the seal of the signed revision or of the change order before
 * @param reason why the work left what was signed, plain words
 * @param added new lines, with ids that the agreement does not have yet
 * @param removed ids of lines taken out
 * @param duties what the law of the place asks of the added work
 * @param tests letters of the tests after the added work
 */
public record ChangeOrder(
        String number,
        String quote,
        int revision,
        String agreement,
        String reason,
        List<Line> added,
        List<String> removed,
        Duties duties,
        List<String> tests,
        Totals before,
        Totals after,
        Signature signature,
        Seal seal) {
    public ChangeOrder {
        added = List.copyOf(added);
        removed = List.copyOf(removed);
        tests = List.copyOf(tests);
    }
}

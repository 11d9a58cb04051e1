package fairflame.agreement;

import fairflame.quote.Line;
import fairflame.quote.Totals;
import java.util.List;

/**
 * A change that nobody has signed yet, with what it would bring the job to.
 *
 * @param number such as {@code Q-2026-0001-C1}
 * @param agreement chain value of the seal that it would follow
 * @param before totals that hold now
 * @param after totals of the whole job after the change
 */
public record ChangeDraft(
        String number,
        String agreement,
        String reason,
        List<Line> added,
        List<String> removed,
        Totals before,
        Totals after) {
    public ChangeDraft {
        added = List.copyOf(added);
        removed = List.copyOf(removed);
    }
}

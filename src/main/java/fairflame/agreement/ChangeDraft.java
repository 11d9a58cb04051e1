package fairflame.agreement;

import fairflame.quote.Line;
import fairflame.quote.Totals;
import java.util.List;

/**
 * A change that nobody has signed yet, with what it would bring the job to.
 *
 * @param number such as {@code Q-2026-0001-C1}
 * @param agreement chain value of the seal that it would follow
 * @param lines the added lines as they would stand in the agreement
 * @param before totals that hold now
 * @param after totals of the whole job after the change
 */
public record ChangeDraft(
        String number, String agreement, Change change, List<Line> lines, Totals before, Totals after) {
    public ChangeDraft {
        lines = List.copyOf(lines);
    }
}

package fairflame.catalog;

import fairflame.wording.Spoken;
import java.util.List;
import java.util.Set;

/**
 * One way to mend a cause. Of the ways that hold, the first is the suggested one; a later way with the id of one that
 * already holds is passed over.
 *
 * @param id short and stable, such as {@code both}
 * @param when conditions that all have to hold; {@code not} in front turns one around
 * @param run the gas line it builds: the way is offered once for each sized line of that kind
 * @param leaves what this way does not mend; empty when it mends all
 * @param notes ids of notes that only this way prints
 * @param reason why it is offered, one sentence
 */
public record Way(
        String id,
        @Spoken String title,
        @Spoken String plain,
        List<String> when,
        Run run,
        List<WayTask> tasks,
        @Spoken String leaves,
        Set<String> notes,
        @Spoken String reason) {
    public Way {
        when = List.copyOf(when);
        tasks = List.copyOf(tasks);
        notes = Set.copyOf(notes);
    }

    /** Where a gas line lies. */
    public enum Run {
        NONE,
        ABOVE_GROUND,
        BURIED
    }
}

package fairflame.catalog;

import fairflame.wording.Spoken;
import java.math.BigDecimal;
import java.util.List;

/**
 * A task inside a way.
 *
 * @param task id of the task
 * @param devices which devices it is done on
 * @param pieces how many, where no device is named
 * @param when conditions that all have to hold, else the task is left out
 * @param reason why it is in the scope, one sentence
 */
public record WayTask(
        String task,
        Devices devices,
        BigDecimal pieces,
        List<String> when,
        @Spoken String reason) {
    public WayTask {
        when = List.copyOf(when);
    }

    /** Which devices a task is done on. */
    public enum Devices {
        /** It is not done on a device that readings tell apart. */
        NONE,
        /** Those that the finding names. */
        FOUND,
        /** Both of the pair, whichever of them the finding names. */
        PAIR,
        /** Of the pair the one that the readings speak against most. */
        WORST
    }
}

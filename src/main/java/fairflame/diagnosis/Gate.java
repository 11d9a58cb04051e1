package fairflame.diagnosis;

import java.util.List;

/**
 * A danger that ends diagnosis. Only a licensed person's release clears it.
 *
 * @param id such as {@code G1}
 * @param title what the danger is
 * @param question put to the technician before any reading
 * @param asked true when it must be answered; false when only readings open it
 * @param minutes to find the answer
 * @param triggers readings that open it whatever the answer was
 * @param advice what to do when it is open, a sentence each
 * @param source key of the source
 */
public record Gate(
        String id,
        String title,
        String question,
        boolean asked,
        int minutes,
        List<Trigger> triggers,
        List<String> advice,
        String source) {
    public Gate {
        triggers = List.copyOf(triggers);
        advice = List.copyOf(advice);
    }

    /**
     * Readings that open a gate.
     *
     * @param when all must hold
     * @param found the sentence to print
     */
    record Trigger(List<Condition> when, Template found) {
        Trigger {
            when = List.copyOf(when);
        }
    }
}

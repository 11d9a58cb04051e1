package fairflame.diagnosis;

import java.util.List;

/**
 * The check to do next: the one that best separates the remaining causes for its time and hazard.
 *
 * @param check id of the check
 * @param title what to do, in words
 * @param reason why this one now
 * @param minutes standard minutes
 * @param hazard H0 to H4 as the knowledge defines them
 * @param who T, T*, G, E or U
 * @param instrument what to measure with, in words
 * @param conditions when and how to take it: {@code warm}, {@code furnace-on}; empty for no condition
 */
public record NextCheck(
        String check,
        String title,
        String reason,
        int minutes,
        String hazard,
        String who,
        String instrument,
        List<String> conditions) {
    public NextCheck {
        conditions = List.copyOf(conditions);
    }

    /** A check under no condition. */
    public NextCheck(
            String check, String title, String reason, int minutes, String hazard, String who, String instrument) {
        this(check, title, reason, minutes, hazard, who, instrument, List.of());
    }
}

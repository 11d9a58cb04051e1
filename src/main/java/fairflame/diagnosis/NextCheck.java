package fairflame.diagnosis;

/**
 * The check to do next: the one that best separates the remaining causes for its time and hazard.
 *
 * @param check id of the check
 * @param title what to do, in words
 * @param reason why this one now
 * @param minutes standard minutes
 * @param hazard H0 to H4 as the knowledge defines them
 * @param who T, T*, G, E or U
 * @param instrument what to measure with
 */
public record NextCheck(
        String check, String title, String reason, int minutes, String hazard, String who, String instrument) {}

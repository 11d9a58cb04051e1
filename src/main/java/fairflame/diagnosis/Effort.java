package fairflame.diagnosis;

/**
 * What a check asks of the person who makes it.
 *
 * @param minutes standard minutes
 * @param who T, T*, G, E or U: technician, technician where the place lets them open a test tap, licensed gas fitter,
 *     licensed electrician, utility
 * @param step place in the usual order of work, 1 to 14
 */
public record Effort(int minutes, Hazard hazard, String who, int step) {
    /** Minutes to walk to it, set up and write down; invented for the demo. */
    private static final int SET_UP = 2;

    /** Minutes with setting up, weighted by hazard: what the next check is chosen by. */
    double burden() {
        return (minutes + SET_UP) * hazard.weight();
    }
}

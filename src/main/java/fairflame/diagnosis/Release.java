package fairflame.diagnosis;

/**
 * A licensed person's signed release of a danger gate: the only thing that clears it.
 *
 * @param gate id of the gate, such as {@code G3}
 * @param name of the licensed person
 * @param licence number of the licence
 * @param cause what was found to have caused the danger; never empty
 */
public record Release(String gate, String name, String licence, String cause) {}

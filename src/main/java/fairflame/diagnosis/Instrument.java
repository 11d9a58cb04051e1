package fairflame.diagnosis;

/**
 * A kind of instrument.
 *
 * @param id such as {@code u-tube}
 * @param name in words
 * @param speed whether it follows a dip of a second
 * @param misleads how it can fool its user
 * @param source key of the source
 */
public record Instrument(String id, String name, Speed speed, String misleads, String source) {
    /** Whether a short dip shows. */
    public enum Speed {
        FAST,
        SLOW,
        ANY
    }
}

package fairflame.screen.file;

/**
 * What is wrong with a field and what is allowed instead.
 *
 * @param key of the words that say what is allowed; empty when only {@code allowed} says it
 * @param allowed what would be accepted
 */
public record Problem(String key, String allowed) {
    /** All is well. */
    public static final Problem NONE = new Problem("", "");

    public boolean isNone() {
        return key.isEmpty() && allowed.isEmpty();
    }
}

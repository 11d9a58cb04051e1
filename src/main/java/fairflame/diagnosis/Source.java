package fairflame.diagnosis;

import java.util.Set;

/**
 * A document that facts were taken from.
 *
 * @param key as the rows name it, such as {@code S-GASEM}
 * @param document title in words; never a maker's name
 * @param section place in the document, or what it says there
 */
public record Source(String key, String document, String section) {
    /** What a row may say instead of a key. */
    public static final Set<String> WITHOUT_DOCUMENT = Set.of(
            "common practice, no source", "from memory, not checked", "invented for the demo", "computed, Ohm's law");
}

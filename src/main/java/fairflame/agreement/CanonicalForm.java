package fairflame.agreement;

import com.fasterxml.jackson.databind.JsonNode;
import fairflame.Refusal;
import java.util.Arrays;

/**
 * The one byte form of a record: JSON as RFC 8785 sorts and escapes it, money and decimals as text, days and times as
 * ISO 8601, an absent value as null. The same record always gives the same bytes, and only those bytes are read back.
 * Described in docs/formats/seal.md.
 */
public final class CanonicalForm {
    private CanonicalForm() {}

    /** The bytes of a record of this program. */
    public static byte[] write(Record thing) {
        return CanonicalText.write(CanonicalWriter.tree(thing));
    }

    /**
     * The record that was written. Refused: a field too many or too few, a value that the record does not accept, and
     * any bytes but those that {@link #write} gives.
     */
    public static <T extends Record> T read(Class<T> type, byte[] bytes) {
        var thing = CanonicalReader.read(type, CanonicalText.read(bytes));
        if (!Arrays.equals(write(thing), bytes)) {
            throw Refusal.malformed(
                    "form of a " + type.getSimpleName(), "other spacing, order or digits", "the canonical form");
        }
        return thing;
    }

    static JsonNode tree(Record thing) {
        return CanonicalWriter.tree(thing);
    }
}

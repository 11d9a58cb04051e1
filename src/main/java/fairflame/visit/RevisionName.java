package fairflame.visit;

import fairflame.Refusal;
import java.util.regex.Pattern;

/**
 * What names a revision, or a state of its record of completion, in a packet.
 *
 * @param state from 1; 1 when the name has none
 */
record RevisionName(String quote, int revision, int state) {
    private static final Pattern SHAPE = Pattern.compile("(\\S{1,40}) revision (\\d{1,6})(?: state (\\d{1,6}))?");

    static RevisionName of(String key) {
        var match = SHAPE.matcher(key);
        if (!match.matches()) {
            throw Refusal.malformed("name of a revision", key, "number and revision, such as Q-2026-0001 revision 1");
        }
        var state = match.group(3) == null ? 1 : Integer.parseInt(match.group(3));
        return new RevisionName(match.group(1), Integer.parseInt(match.group(2)), Math.max(1, state));
    }
}

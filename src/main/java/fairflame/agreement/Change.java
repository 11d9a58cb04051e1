package fairflame.agreement;

import fairflame.quote.Duties;
import java.util.List;

/**
 * What is to be changed of an agreement.
 *
 * @param reason why the work leaves what was signed, plain words
 * @param removed ids of lines taken out
 * @param duties what the law of the place asks of the added work
 * @param tests letters of the tests after the added work
 */
public record Change(String reason, List<AddedLine> added, List<String> removed, Duties duties, List<String> tests) {
    public Change {
        added = List.copyOf(added);
        removed = List.copyOf(removed);
        tests = List.copyOf(tests);
    }

    /** A change of lines that brings no duty and no test with it. */
    public static Change of(String reason, List<AddedLine> added, List<String> removed) {
        return new Change(reason, added, removed, Duties.NONE, List.of());
    }
}

package fairflame.diagnosis;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Something that can be read, measured, looked at or asked at the heater.
 *
 * @param id such as {@code gas-static}
 * @param title what it is, as a heading
 * @param how how to do it, a sentence
 * @param answer what it can give
 * @param instruments ids of the instruments that fit, best first; empty for eye and ear
 * @param after ids of checks that come before it; it is not proposed earlier
 * @param told true when an answer told by somebody else counts as much as one seen
 * @param misleads how it can fool its reader; empty when nothing is known
 * @param source key of the source
 */
public record Check(
        String id,
        String title,
        String how,
        Answer answer,
        Effort effort,
        List<String> instruments,
        List<String> after,
        boolean told,
        String misleads,
        String source) {
    public Check {
        instruments = List.copyOf(instruments);
        after = List.copyOf(after);
    }

    /**
     * The value in a typed text such as {@code 10.1 inwc}, {@code 22 kilohm}, {@code open}, {@code yes} or
     * {@code not measured}. Refuses what this check cannot give, naming the check, the value and what is possible.
     */
    public Value read(String text) {
        if (text.strip().toLowerCase(Locale.ROOT).replace('-', ' ').equals("not measured")) {
            return new Value.NotMeasured();
        }
        return answer.read(name(), text);
    }

    /** The question to put to an unusual value; empty when the value is usual. */
    public Optional<String> remark(Value value) {
        return answer.remark(value);
    }

    /** As a message names it. */
    String name() {
        return title + " (" + id + ")";
    }
}

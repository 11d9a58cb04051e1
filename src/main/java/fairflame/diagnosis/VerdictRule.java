package fairflame.diagnosis;

import java.util.List;
import java.util.Optional;

/**
 * How readings of one check are judged.
 *
 * @param check id of the check
 * @param low lower end of the allowed band, for the picture; empty for none
 * @param high upper end of the allowed band
 * @param marks all that may be said; where several hold the worst wins
 */
record VerdictRule(String check, Optional<Term> low, Optional<Term> high, List<Mark> marks) {
    VerdictRule {
        marks = List.copyOf(marks);
    }

    /**
     * One thing to say about a reading.
     *
     * @param id such as {@code gas-firing/below-plate}
     * @param when all must hold, about that reading
     * @param words the sentence to print
     * @param source key of the source
     */
    record Mark(String id, ReadingVerdict.Verdict verdict, List<Condition> when, Template words, String source) {
        Mark {
            when = List.copyOf(when);
        }
    }
}

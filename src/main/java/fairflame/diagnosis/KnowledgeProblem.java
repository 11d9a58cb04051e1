package fairflame.diagnosis;

/**
 * Something wrong with the knowledge.
 *
 * @param where row, such as {@code cause LD01 rule LD01/both-leak}
 * @param words one sentence
 */
public record KnowledgeProblem(Kind kind, String where, String words) {
    /** What kind of mistake it is. */
    public enum Kind {
        /** A row or file that cannot be read; it was left out. */
        REFUSED_ROW,
        /** A rule that names a check that is not there; its row was left out. */
        UNKNOWN_CHECK,
        /** Rules that cannot hold together, or one that proves and rules out the same. */
        CONTRADICTION,
        /** A cause that no readings can ever settle. */
        UNREACHABLE_CAUSE,
        /** A cause without a deciding rule. */
        NO_DECIDING_CHECK,
        /** A repair that the shop has no standard time for. */
        REPAIR_WITHOUT_TIME,
        /** A cause with neither repairs nor words about what to do. */
        NO_REMEDY,
        /** A row without a source, or with one that is not listed. */
        MISSING_SOURCE,
        /** A check that nothing asks for. */
        UNUSED_CHECK
    }

    @Override
    public String toString() {
        return where + ": " + words;
    }
}

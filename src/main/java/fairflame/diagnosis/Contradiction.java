package fairflame.diagnosis;

import java.util.List;
import java.util.Set;

/**
 * Readings that cannot all be taken at their word, or that leave a question which comes before others.
 *
 * @param id such as {@code X-SAG-AND-DIP}
 * @param when all must hold
 * @param unless it is resolved as soon as one of these holds
 * @param blocks ids of causes that cannot settle meanwhile; {@link #EVERYTHING} for all
 * @param next what to do, in this order
 * @param words the sentence to print
 * @param source key of the source
 */
record Contradiction(
        String id,
        List<Condition> when,
        List<Condition> unless,
        Set<String> blocks,
        List<CheckRef> next,
        Template words,
        String source) {
    static final String EVERYTHING = "all";

    Contradiction {
        when = List.copyOf(when);
        unless = List.copyOf(unless);
        blocks = Set.copyOf(blocks);
        next = List.copyOf(next);
    }

    boolean blocks(String cause) {
        return blocks.contains(cause) || blocks.contains(EVERYTHING);
    }
}

package fairflame.diagnosis;

import java.util.List;

/**
 * Readings that cannot all be taken at their word, or that leave a question which comes before others.
 *
 * @param id such as {@code X-SAG-AND-DIP}
 * @param when all must hold
 * @param unless it is resolved as soon as one of these holds
 * @param held causes that cannot settle meanwhile
 * @param next what to do, in this order
 * @param words the sentence to print
 * @param source key of the source
 */
record Contradiction(
        String id,
        List<Condition> when,
        List<Condition> unless,
        Held held,
        List<CheckRef> next,
        Template words,
        String source) {
    Contradiction {
        when = List.copyOf(when);
        unless = List.copyOf(unless);
        next = List.copyOf(next);
    }
}

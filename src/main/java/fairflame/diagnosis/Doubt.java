package fairflame.diagnosis;

import java.util.List;

/**
 * A reason not to take a reading at its word. A doubted reading can still support a cause or open a danger gate; it
 * cannot decide or exclude one.
 *
 * @param id such as {@code D-SLOW-GAUGE}
 * @param reading which readings may be doubted
 * @param when all must hold, about that reading
 * @param next how to take it again
 * @param words the sentence to print
 * @param source key of the source
 */
record Doubt(String id, CheckRef reading, List<Condition> when, List<CheckRef> next, Template words, String source) {
    Doubt {
        when = List.copyOf(when);
        next = List.copyOf(next);
    }
}

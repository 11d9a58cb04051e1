package fairflame.screen.bench;

import fairflame.Refusal;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * Asks the use cases about a draft. A field that they refuse is set aside with what is allowed, and the rest is asked
 * again, so that one slip of a finger does not hide what the other readings say.
 */
final class Examiner {
    private static final int MOST_REFUSED = 40;
    private static final Pattern FIELD =
            Pattern.compile("field ([A-Za-z]+(?:\\[\\d+])?(?:\\.[A-Za-z]+(?:\\[\\d+])?)*)");

    private final BenchWork work;

    Examiner(BenchWork work) {
        this.work = work;
    }

    /**
     * The answer.
     *
     * @param judged empty while the visit lacks what every case needs (complaint, heater)
     * @param refused what is allowed, by field of the draft
     */
    record Answer(Optional<Judged> judged, Map<String, String> refused) {}

    Answer ask(Draft draft) {
        var refused = new LinkedHashMap<String, String>();
        for (int i = 0; i < MOST_REFUSED; i++) {
            var text = new VisitText(draft, refused.keySet());
            try {
                return new Answer(Optional.of(work.judge(text.json())), refused);
            } catch (Refusal refusal) {
                var field = field(text, refusal);
                if (refused.containsKey(field)
                        || (!draft.has(field) && draft.numbers(field).isEmpty())) {
                    return new Answer(Optional.empty(), missing(refused, field, refusal));
                }
                refused.put(field, refusal.allowed());
            }
        }
        return new Answer(Optional.empty(), refused);
    }

    private static Map<String, String> missing(Map<String, String> refused, String field, Refusal refusal) {
        refused.putIfAbsent(field, refusal.allowed());
        return refused;
    }

    /** The draft's field that a refusal speaks of: named where it was read, or as what was refused. */
    private static String field(VisitText text, Refusal refusal) {
        var match = FIELD.matcher(refusal.where() + ", " + refusal.what());
        return match.find() ? text.fieldOf(match.group(1)) : "visit";
    }
}

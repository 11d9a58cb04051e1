package fairflame.quote;

import fairflame.Refusal;
import fairflame.wording.Spoken;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A note and when it prints.
 *
 * @param id such as {@code N-GASFIT}
 * @param boxed true for permits and licensed work
 * @param when any one of these lets it print
 * @param text with words in braces, see {@link #WORDS}
 */
public record NoteRule(
        String id,
        boolean boxed,
        List<NoteCondition> when,
        @Spoken String text,
        String source) {
    /** Words that are filled in. */
    public static final Set<String> WORDS = Set.of("place", "fee", "licence", "fitter", "days", "shop");

    public NoteRule {
        when = List.copyOf(when);
        if (!id.matches("N-[A-Z0-9]{1,20}")) {
            throw Refusal.malformed("note id", id, "N- and capitals or digits, such as N-GASFIT");
        }
        if (text.isBlank()) {
            throw Refusal.missing("text of note " + id, "words that the customer can read");
        }
        TemplateText.check(text, WORDS);
    }

    /** Why it prints; empty when it does not. */
    Optional<String> because(NoteFacts facts) {
        return when.stream()
                .flatMap(condition -> condition.because(id, facts).stream())
                .findFirst();
    }
}

package fairflame.document;

import fairflame.quote.Choice;
import fairflame.quote.Quote;
import java.util.List;

/** Names of choices as people say them: "Choice A", "Choice B", by the order on the paper. */
final class ChoiceNames {
    private static final int LETTERS = 26;

    private final List<String> ids;
    private final PaperText text;

    ChoiceNames(Quote quote, PaperText text) {
        this.ids = quote.choices().stream().map(Choice::id).toList();
        this.text = text;
    }

    /** An id that the quote does not have stands for itself. */
    String of(String id) {
        int at = ids.indexOf(id);
        if (at < 0) {
            return text.say(Label.CHOICE, id);
        }
        return text.say(Label.CHOICE, at < LETTERS ? String.valueOf((char) ('A' + at)) : Integer.toString(at + 1));
    }
}

package fairflame.visit;

import fairflame.wording.Language;
import fairflame.wording.Told;
import java.util.LinkedHashSet;
import java.util.List;

/** Which texts of a shop's files a customer would still read in English. */
public final class TranslationReview {
    private TranslationReview() {}

    /** Every text of knowledge, catalog and templates that has no words in the language, each once. */
    public static List<String> missing(Library library, Language language) {
        var wording = library.in(language).wording();
        var spoken = new LinkedHashSet<String>();
        spoken.addAll(library.translations().spokenByKnowledge());
        spoken.addAll(Told.texts(library.shop()));
        spoken.addAll(Told.texts(library.notes()));
        spoken.addAll(Told.texts(library.cautions()));
        spoken.addAll(Told.texts(library.consent()));
        return spoken.stream().filter(text -> !wording.knows(text)).toList();
    }
}

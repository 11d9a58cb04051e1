package fairflame.document;

import fairflame.Refusal;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Sentences with names in braces that are filled in when printing. */
final class Braces {
    private static final Pattern NAME = Pattern.compile("\\{([^{}]*)\\}");

    private Braces() {}

    /** Refuses a name in braces that nobody fills in. */
    static void check(String what, String sentence, List<String> names) {
        var found = NAME.matcher(sentence);
        while (found.find()) {
            if (!names.contains(found.group(1))) {
                var allowed = names.isEmpty() ? "no braces" : "{" + String.join("}, {", names) + "}";
                throw Refusal.unknown(what, found.group(), allowed);
            }
        }
    }

    /**
     * The sentence with its names filled. Values are put in as they are: a customer's name may hold braces or dollars.
     *
     * @param values in the order of the names
     */
    static String fill(String sentence, List<String> names, String... values) {
        var said = new StringBuilder();
        var found = NAME.matcher(sentence);
        while (found.find()) {
            found.appendReplacement(said, Matcher.quoteReplacement(values[names.indexOf(found.group(1))]));
        }
        return found.appendTail(said).toString();
    }
}

package fairflame.wording;

import fairflame.Refusal;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/**
 * A text in English and in another language.
 *
 * @param english as the program or the shop's file says it, with its places in braces
 * @param other the same with the same places, in whatever order the language wants them
 */
public record Pair(String english, String other) {
    private static final Pattern PLACE = Pattern.compile("\\{[^{}]*}");

    public Pair {
        if (english.isBlank() || other.isBlank()) {
            throw Refusal.missing("text", "the English text and the same in the other language");
        }
        var wanted = places(english);
        var given = places(other);
        if (!wanted.equals(given)) {
            throw Refusal.malformed("places of '" + english + "'", given, wanted.toString());
        }
    }

    private static TreeSet<String> places(String text) {
        var places = new TreeSet<String>();
        PLACE.matcher(text).results().map(MatchResult::group).forEach(places::add);
        return places;
    }
}

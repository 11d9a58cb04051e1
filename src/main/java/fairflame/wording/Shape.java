package fairflame.wording;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A sentence with numbered places, and the same sentence in another language. */
final class Shape implements Comparable<Shape> {
    private static final Pattern PLACE = Pattern.compile("\\{(\\d)}");

    private final String english;
    private final String other;
    private final String first;
    private final String last;
    private final int said;
    private final List<Integer> order = new ArrayList<>();
    private final Pattern pattern;

    Shape(String english, String other) {
        this.english = english;
        this.other = other;
        var expression = new StringBuilder();
        var places = PLACE.matcher(english);
        int end = 0;
        while (places.find()) {
            expression
                    .append(Pattern.quote(english.substring(end, places.start())))
                    .append("(.+?)");
            order.add(Integer.valueOf(places.group(1)));
            end = places.end();
        }
        this.last = english.substring(end);
        this.first = english.substring(0, english.indexOf('{'));
        this.said = PLACE.matcher(english).replaceAll("").length();
        this.pattern = Pattern.compile(expression.append(Pattern.quote(last)).toString(), Pattern.DOTALL);
    }

    static boolean hasPlaces(String text) {
        return PLACE.matcher(text).find();
    }

    /** The sentence in the other language, its places as the wording says them; empty when it has another shape. */
    Optional<String> said(String sentence, Wording wording) {
        if (!sentence.startsWith(first) || !sentence.endsWith(last)) {
            return Optional.empty();
        }
        var match = pattern.matcher(sentence);
        return match.matches()
                ? Optional.of(PLACE.matcher(other)
                        .replaceAll(place -> Matcher.quoteReplacement(
                                wording.of(match.group(order.indexOf(Integer.valueOf(place.group(1))) + 1)))))
                : Optional.empty();
    }

    /** What says most by itself comes first. */
    @Override
    public int compareTo(Shape other) {
        return said != other.said ? Integer.compare(other.said, said) : english.compareTo(other.english);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Shape shape && shape.english.equals(english);
    }

    @Override
    public int hashCode() {
        return english.hashCode();
    }
}

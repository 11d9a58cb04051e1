package fairflame.wording;

import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * What a customer reads, in one language. A text stands for itself or, with places such as {@code {0}}, for every sentence
 * of that shape; what stands in the places is put into the language too, and so is a list of known texts. A text that
 * nobody has translated stays English.
 */
public final class Wording {
    /** The program's own language: every text as it is. */
    public static final Wording ENGLISH = new Wording(Language.ENGLISH, List.of());

    private final Language language;
    private final Map<String, String> texts = new HashMap<>();
    private final List<Shape> shapes;

    private Wording(Language language, Collection<Pair> pairs) {
        this.language = language;
        var byText = new HashMap<String, Shape>();
        for (var pair : pairs) {
            texts.put(pair.english(), pair.other());
            if (Shape.hasPlaces(pair.english())) {
                byText.put(pair.english(), new Shape(pair.english(), pair.other()));
            }
        }
        // The shape that says most by itself is tried first; equal ones in the order of the alphabet.
        this.shapes = byText.values().stream().sorted().toList();
    }

    /** The wording of these pairs; where two have the same English text the later one counts. */
    public static Wording of(Language language, Collection<Pair> pairs) {
        return language == Language.ENGLISH ? ENGLISH : new Wording(language, pairs);
    }

    public Language language() {
        return language;
    }

    public boolean isEnglish() {
        return language == Language.ENGLISH;
    }

    /** The text in this language; the English text itself where nobody has translated it. */
    public String of(String english) {
        return isEnglish() ? english : found(english).orElse(english);
    }

    /** Whether somebody has translated this text or a sentence of its shape. */
    public boolean knows(String english) {
        return isEnglish() || found(english).isPresent();
    }

    private Optional<String> found(String english) {
        var exact = texts.get(english);
        if (exact != null) {
            return Optional.of(exact);
        }
        return shapes.stream()
                .flatMap(shape -> shape.said(english, this).stream())
                .findFirst()
                .or(() -> listed(english, "; "))
                .or(() -> listed(english, ", "));
    }

    /** A list of which every item is known. */
    private Optional<String> listed(String english, String between) {
        var items = List.of(english.split(Pattern.quote(between), -1));
        return items.size() > 1 && items.stream().allMatch(this::knows)
                ? Optional.of(items.stream().map(this::of).collect(Collectors.joining(between)))
                : Optional.empty();
    }
}

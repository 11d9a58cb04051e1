package fairflame.document;

import fairflame.Refusal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The words of a shop's papers in one language: company details, labels and sentences, terms. Read from the texts of a
 * templates folder; the folder itself is read elsewhere.
 */
public final class PaperText {
    private static final List<String> CANCEL_NAMES = List.of("days", "seller", "address");
    private static final Set<String> NAMES = Set.of(
            "language",
            "numbers",
            "currencies",
            "percent",
            "date",
            "months",
            "words",
            "kinds",
            "trades",
            "tests",
            "methods",
            "units",
            "grounds",
            "office");

    private final Company company;
    private final String language;
    private final Figures figures;
    private final Map<String, String> words;
    private final Map<String, Map<String, String>> lists;
    private final List<String> terms;
    private final List<String> diagnosisTerms;
    private final List<String> cancel;

    private PaperText(Company company, Yaml layout, Yaml terms) {
        this.company = company;
        this.language = layout.text("language");
        this.figures = Figures.parse(layout);
        this.words = checked(layout.named("words"), layout.file());
        this.lists = Map.of(
                "kinds", layout.named("kinds"),
                "trades", layout.named("trades"),
                "tests", layout.named("tests"),
                "methods", layout.named("methods"),
                "units", layout.named("units"),
                "grounds", layout.namedIfThere("grounds"),
                "office", layout.namedIfThere("office"));
        var scope = scope(terms);
        this.terms = joined(scope, terms.texts("terms"));
        this.diagnosisTerms = terms.texts("diagnosis");
        this.cancel = cancel(terms);
    }

    /**
     * Reads {@code company.yaml}, {@code LANGUAGE/layout.yaml} and {@code LANGUAGE/terms.yaml}.
     *
     * @param files text by name, names relative to the templates folder
     * @param language folder of the language: {@code en}, {@code es}
     * @throws Refusal naming file and name, when a word is missing, unknown or asks for a value that nobody fills in
     */
    public static PaperText parse(Map<String, String> files, String language) {
        return new PaperText(
                Company.parse(files, language),
                Yaml.of(files, language + "/layout.yaml").only(NAMES),
                Yaml.of(files, language + "/terms.yaml")
                        .only(Set.of("included", "not-included", "terms", "diagnosis", "cancel")));
    }

    private static List<String> cancel(Yaml terms) {
        var sentences = terms.texts("cancel");
        for (var sentence : sentences) {
            try {
                Braces.check("cancel", sentence, CANCEL_NAMES);
            } catch (Refusal refusal) {
                throw refusal.at(terms.file());
            }
        }
        return sentences;
    }

    private static Map<String, String> checked(Map<String, String> words, String file) {
        var left = new HashMap<>(words);
        for (var label : Label.values()) {
            var text = left.remove(label.key());
            if (text == null) {
                throw Refusal.missing("words." + label.key(), "a text").at(file);
            }
            try {
                Braces.check("words." + label.key(), text, label.names());
            } catch (Refusal refusal) {
                throw refusal.at(file);
            }
        }
        if (!left.isEmpty()) {
            var name = left.keySet().stream().sorted().findFirst().orElseThrow();
            throw Refusal.unknown("words", name, "the names in the file that came with the program")
                    .at(file);
        }
        return Map.copyOf(words);
    }

    private List<String> scope(Yaml terms) {
        var scope = new ArrayList<String>();
        terms.texts("included").forEach(text -> scope.add(say(Label.INCLUDED) + ": " + text));
        terms.texts("not-included").forEach(text -> scope.add(say(Label.NOT_INCLUDED) + ": " + text));
        return scope;
    }

    private static List<String> joined(List<String> first, List<String> second) {
        var all = new ArrayList<>(first);
        all.addAll(second);
        return List.copyOf(all);
    }

    public Company company() {
        return company;
    }

    /** Tag of BCP 47, such as {@code en-US}. */
    public String language() {
        return language;
    }

    /** What a quote includes, what not, and its terms: to be kept in the quote. */
    public List<String> terms() {
        return terms;
    }

    /** The terms of a diagnosis-only quote. */
    public List<String> diagnosisTerms() {
        return diagnosisTerms;
    }

    /** What the notice of the right to cancel says. */
    List<String> cancelNotice(String days, String seller, String address) {
        return cancel.stream()
                .map(sentence -> Braces.fill(sentence, CANCEL_NAMES, days, seller, address))
                .toList();
    }

    Figures figures() {
        return figures;
    }

    /** A word or sentence with its braces filled, in the order in which the label names them. */
    String say(Label label, String... values) {
        if (values.length != label.names().size()) {
            throw new IllegalArgumentException(label + " takes " + label.names());
        }
        return Braces.fill(words.getOrDefault(label.key(), ""), label.names(), values);
    }

    /** The printed word for a word of the data files; the word itself when the layout file has no other. */
    String word(String list, String word) {
        return lists.getOrDefault(list, Map.of()).getOrDefault(word, word);
    }

    /** Words of the papers that the office makes for itself and for suppliers: English where no other are given. */
    String office(String english) {
        return word("office", english);
    }
}

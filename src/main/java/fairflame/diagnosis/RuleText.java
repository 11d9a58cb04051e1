package fairflame.diagnosis;

import fairflame.Refusal;
import fairflame.quantity.Measure;
import fairflame.quantity.Unit;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * Reads conditions from text. The whole language:
 *
 * <pre>
 * condition  = test { "and" test }
 * test       = sum ("&lt;" | "&lt;=" | "&gt;" | "&gt;=") sum
 *            | sum "between" sum "and" sum                    both ends included
 *            | subject "is" ["not"] word { "or" word }
 *            | subject ["not"] "measured"
 * sum        = product { ("+" | "-") product }
 * product    = [ number "*" ] ( number unit | check | "plate." field | "computed." name )
 * subject    = check | "plate." field | "complaint" | "fuel" | "pipe" | "released"
 * check      = id [ "[" tag { "," tag } "]" ]
 * </pre>
 *
 * <p>Two sides of a comparison have one dimension; words are words of the check. Anything else is refused.
 */
final class RuleText {
    private final Vocabulary vocabulary;
    private final RuleTokens tokens;

    private RuleText(String text, Vocabulary vocabulary) {
        this.vocabulary = vocabulary;
        this.tokens = new RuleTokens(text);
    }

    static Condition condition(String text, Vocabulary vocabulary) {
        var reader = new RuleText(text, vocabulary);
        var parts = new ArrayList<Condition>();
        do {
            parts.add(reader.test());
        } while (reader.tokens.took("and"));
        reader.end();
        return parts.size() == 1 ? parts.get(0) : new Condition.All(List.copyOf(parts));
    }

    static Term term(String text, Vocabulary vocabulary) {
        var reader = new RuleText(text, vocabulary);
        var term = reader.sum();
        reader.end();
        return term;
    }

    static CheckRef ref(String text, Vocabulary vocabulary) {
        var reader = new RuleText(text, vocabulary);
        var ref = reader.ref(reader.tokens.take());
        reader.end();
        return ref;
    }

    private void end() {
        if (tokens.peek().isPresent()) {
            throw tokens.malformed();
        }
    }

    private Condition test() {
        var subject = subject();
        if (subject.isPresent()) {
            return aboutWords(subject.get());
        }
        var left = sum();
        if (tokens.took("between")) {
            var low = compared(left, Condition.Comparison.AT_LEAST, sum());
            if (!tokens.took("and")) {
                throw tokens.malformed();
            }
            return new Condition.All(List.of(low, compared(left, Condition.Comparison.AT_MOST, sum())));
        }
        var sign = tokens.take();
        var comparison = Arrays.stream(Condition.Comparison.values())
                .filter(each -> each.sign().equals(sign))
                .findFirst()
                .orElseThrow(tokens::malformed);
        return compared(left, comparison, sum());
    }

    private static Condition compared(Term left, Condition.Comparison comparison, Term right) {
        if (left.dimension() != right.dimension()) {
            throw Refusal.notAllowed(
                    "comparison",
                    left.dimension().words() + " with " + right.dimension().words(),
                    "two of one kind");
        }
        return new Condition.Compare(left, comparison, right);
    }

    /** A subject, when the next words are about words and not about numbers. */
    private Optional<Subject> subject() {
        var at = tokens.mark();
        if (tokens.nextIsNumber()) {
            return Optional.empty();
        }
        var name = tokens.take();
        var verb = tokens.peek().orElse("");
        if (verb.equals("is") || verb.equals("measured") || verb.equals("not")) {
            return Optional.of(named(name));
        }
        tokens.backTo(at);
        return Optional.empty();
    }

    private Subject named(String name) {
        for (var topic : Subject.Topic.values()) {
            if (topic.word().equals(name)) {
                return new Subject.OfCase(topic);
            }
        }
        return name.startsWith("plate.")
                ? new Subject.OfPlate(PlateField.of(name.substring("plate.".length())))
                : new Subject.OfCheck(ref(name));
    }

    private Condition aboutWords(Subject subject) {
        if (tokens.took("measured")) {
            return new Condition.Known(subject, false);
        }
        if (tokens.took("not")) {
            if (!tokens.took("measured")) {
                throw tokens.malformed();
            }
            return new Condition.Known(subject, true);
        }
        tokens.took("is");
        boolean not = tokens.took("not");
        var words = new TreeSet<String>();
        do {
            words.add(tokens.take());
        } while (tokens.took("or"));
        var allowed = allowed(subject);
        words.stream().filter(word -> !allowed.contains(word)).findFirst().ifPresent(word -> {
            throw Refusal.unknown("word", word, Vocabulary.listed(allowed));
        });
        return new Condition.Is(subject, not, Set.copyOf(words));
    }

    private Set<String> allowed(Subject subject) {
        if (subject instanceof Subject.OfCheck check) {
            return vocabulary.check(check.ref().check()).answer() instanceof Answer.Words words
                    ? Set.copyOf(words.words())
                    : Set.of("open");
        }
        if (subject instanceof Subject.OfCase about) {
            return switch (about.topic()) {
                case COMPLAINT -> vocabulary.complaints().keySet();
                case FUEL -> Set.of("natural", "propane");
                case PIPE -> Set.of("explains", "explains-part", "does-not-explain");
                case RELEASED -> vocabulary.gates();
            };
        }
        return Set.of();
    }

    private Term sum() {
        var sum = product();
        while (true) {
            if (tokens.took("+")) {
                sum = new Term.Sum(sum, false, product());
            } else if (tokens.took("-")) {
                sum = new Term.Sum(sum, true, product());
            } else {
                return sum;
            }
        }
    }

    private Term product() {
        if (!tokens.nextIsNumber()) {
            return atom(tokens.take());
        }
        var number = tokens.take();
        if (tokens.took("*")) {
            return new Term.Scaled(Double.parseDouble(number), product());
        }
        return new Term.Literal(new Measure(new BigDecimal(number), unit(tokens.take())));
    }

    private Term atom(String name) {
        if (name.startsWith("plate.")) {
            return new Term.OnPlate(PlateField.of(name.substring("plate.".length())));
        }
        if (name.startsWith("computed.")) {
            return new Term.Worked(Computed.of(name.substring("computed.".length())));
        }
        var ref = ref(name);
        if (vocabulary.check(ref.check()).answer() instanceof Answer.Figure number) {
            return new Term.Read(ref, number.unit().dimension());
        }
        throw Refusal.notAllowed("comparison", ref.check(), "a check that gives a number");
    }

    private CheckRef ref(String name) {
        int bracket = name.indexOf('[');
        var check = bracket < 0 ? name : name.substring(0, bracket);
        vocabulary.check(check);
        if (bracket < 0) {
            return CheckRef.of(check);
        }
        var tags = Arrays.stream(name.substring(bracket + 1, name.length() - 1).split(",", -1))
                .map(String::strip)
                .collect(Collectors.toSet());
        tags.forEach(vocabulary::tag);
        return new CheckRef(check, tags);
    }

    // "f" is a temperature and "fdelta" a rise: within a rule the spelling decides the dimension.
    private static Unit unit(String spelling) {
        for (var unit : Unit.values()) {
            if (unit.spelling().equals(spelling)) {
                return unit;
            }
        }
        throw Refusal.unknown(
                "unit",
                spelling,
                Arrays.stream(Unit.values()).map(Unit::spelling).distinct().collect(Collectors.joining(", ")));
    }
}

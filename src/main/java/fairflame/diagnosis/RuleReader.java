package fairflame.diagnosis;

import fairflame.Refusal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** Reads the rows that hold rules: gates, causes, contradictions, doubts, verdicts. */
final class RuleReader {
    private final Vocabulary words;

    RuleReader(Vocabulary words) {
        this.words = words;
    }

    Gate gate(Row row) {
        row.only("id", "title", "question", "asked", "minutes", "opens", "advice", "source");
        var triggers = row.rows("opens", (node, number) -> String.valueOf(number)).stream()
                .map(each -> new Gate.Trigger(conditions(each.only("when", "found"), "when"), template(each, "found")))
                .toList();
        return new Gate(
                row.text("id"),
                row.text("title"),
                row.text("question"),
                row.flag("asked", true),
                row.whole("minutes", 1, 60, 1),
                triggers,
                row.texts("advice"),
                row.textOr("source", ""));
    }

    Cause cause(Row row) {
        row.only(
                "id",
                "title",
                "plain",
                "also",
                "named",
                "complaints",
                "common",
                "devices",
                "repairs",
                "remedy",
                "only-with",
                "for",
                "against",
                "decides",
                "excludes",
                "source");
        var id = row.text("id");
        var rules = new ArrayList<Rule>();
        for (var says : Rule.Says.values()) {
            row.rows(says.word(), (node, number) -> node.path("id").asText(String.valueOf(number)))
                    .forEach(each -> rules.add(rule(id, says, each)));
        }
        rules.stream()
                .map(Rule::id)
                .filter(rule -> count(rules, rule) > 1)
                .findFirst()
                .ifPresent(rule -> {
                    throw Refusal.notAllowed("rule", rule, "an id that is used once in a cause")
                            .at(row.place());
                });
        return new Cause(
                id,
                row.text("title"),
                row.text("plain"),
                row.texts("also"),
                row.texts("named"),
                Set.copyOf(row.each("complaints", each -> words.complaint(each).id())),
                row.whole("common", 1, 5, -1),
                row.texts("devices"),
                row.texts("repairs"),
                row.textOr("remedy", ""),
                Set.copyOf(row.texts("only-with")),
                rules,
                row.textOr("source", ""));
    }

    private static long count(List<Rule> rules, String id) {
        return rules.stream().filter(rule -> rule.id().equals(id)).count();
    }

    private Rule rule(String cause, Rule.Says says, Row row) {
        row.only("id", "weight", "when", "unless", "words", "rests-on", "devices", "repairs", "source");
        var outcome = Rule.Outcome.NONE;
        if (says == Rule.Says.DECIDES) {
            outcome = new Rule.Outcome(row.text("rests-on"), row.texts("devices"), row.texts("repairs"));
        }
        return new Rule(
                cause + "/" + says.word() + "/" + row.text("id"),
                says,
                row.whole("weight", 1, 20, says.usualWeight()),
                conditions(row, "when"),
                row.each("unless", text -> RuleText.condition(text, words)),
                template(row, "words"),
                outcome,
                row.textOr("source", ""));
    }

    Contradiction contradiction(Row row) {
        row.only("id", "when", "unless", "blocks", "spares", "next", "words", "source");
        return new Contradiction(
                row.text("id"),
                conditions(row, "when"),
                row.each("unless", text -> RuleText.condition(text, words)),
                new Held(Set.copyOf(row.texts("blocks")), Set.copyOf(row.texts("spares"))),
                row.each("next", text -> RuleText.ref(text, words)),
                template(row, "words"),
                row.textOr("source", ""));
    }

    Doubt doubt(Row row) {
        row.only("id", "reading", "when", "next", "words", "source");
        return new Doubt(
                row.text("id"),
                row.as("reading", text -> RuleText.ref(text, words)),
                row.each("when", text -> RuleText.condition(text, words)),
                row.each("next", text -> RuleText.ref(text, words)),
                template(row, "words"),
                row.textOr("source", ""));
    }

    VerdictRule verdict(Row row) {
        row.only("id", "low", "high", "marks");
        var check = row.as("id", text -> words.check(text).id());
        var marks = row.rows("marks", (node, number) -> node.path("id").asText(String.valueOf(number)));
        return new VerdictRule(
                check,
                row.optional("low", text -> RuleText.term(text, words)),
                row.optional("high", text -> RuleText.term(text, words)),
                marks.stream().map(each -> mark(check, each)).toList());
    }

    private VerdictRule.Mark mark(String check, Row row) {
        row.only("id", "verdict", "when", "words", "source");
        return new VerdictRule.Mark(
                check + "/" + row.text("id"),
                row.as("verdict", RuleReader::verdictWord),
                conditions(row, "when"),
                template(row, "words"),
                row.textOr("source", ""));
    }

    private static ReadingVerdict.Verdict verdictWord(String text) {
        for (var verdict : ReadingVerdict.Verdict.values()) {
            if (verdict.name().equals(text.toUpperCase(Locale.ROOT))) {
                return verdict;
            }
        }
        throw Refusal.unknown("verdict", text, "information, good, edge, doubted, outside");
    }

    private List<Condition> conditions(Row row, String field) {
        var found = row.each(field, text -> RuleText.condition(text, words));
        if (found.isEmpty()) {
            throw Refusal.missing("field " + field, "one condition or more").at(row.place());
        }
        return found;
    }

    private Template template(Row row, String field) {
        return row.as(field, text -> Template.parse(text, words));
    }
}

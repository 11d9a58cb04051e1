package fairflame.diagnosis;

import fairflame.Refusal;
import fairflame.quantity.Dimension;
import fairflame.quantity.Unit;
import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Turns the rows of knowledge files into knowledge. A row that is refused goes to the sink and is left out. */
final class KnowledgeReader {
    private final KnowledgeFiles files;

    KnowledgeReader(KnowledgeFiles files) {
        this.files = files;
    }

    Knowledge read() {
        var complaints = keyed("complaints", KnowledgeReader::complaint, Complaint::id);
        var instruments = keyed("instruments", KnowledgeReader::instrument, Instrument::id);
        var circumstances = keyed("circumstances", KnowledgeReader::circumstance, Circumstance::id);
        var checks = keyed("checks", row -> check(row, instruments.keySet()), Check::id);
        var gates = files.of("gates").stream().map(row -> row.textOr("id", "")).collect(Collectors.toUnmodifiableSet());
        var words = new Vocabulary(complaints, checks, instruments, circumstances, gates, files.wording());
        var rules = new RuleReader(words);
        var rulebook = new Rulebook(
                keyed("gates", rules::gate, Gate::id),
                keyed("causes", rules::cause, Cause::id),
                List.copyOf(keyed("contradictions", rules::contradiction, Contradiction::id)
                        .values()),
                List.copyOf(keyed("doubts", rules::doubt, Doubt::id).values()),
                keyed("verdicts", rules::verdict, VerdictRule::check));
        link(words, rulebook);
        return new Knowledge(words, rulebook, keyed("sources", KnowledgeReader::source, Source::key));
    }

    /** Refuses references to rows that are not there. */
    private void link(Vocabulary words, Rulebook rulebook) {
        var causes = rulebook.causes().keySet();
        words.checks()
                .values()
                .forEach(check -> all(
                        "check " + check.id() + " after",
                        check.after(),
                        words.checks().keySet()));
        words.complaints()
                .values()
                .forEach(complaint ->
                        all("complaint " + complaint.id() + " release-first", complaint.releaseFirst(), words.gates()));
        words.checks().values().stream()
                .filter(check -> comesBefore(check.id(), check, words, new HashSet<>()))
                .forEach(check -> files.refused()
                        .accept(Refusal.notAllowed("field after", check.after(), "no check that comes after itself")
                                .at("check " + check.id())));
        rulebook.causes()
                .values()
                .forEach(cause -> all("cause " + cause.id() + " only-with", cause.onlyWith(), causes));
        rulebook.contradictions().forEach(each -> {
            all(
                    "contradiction " + each.id() + " blocks",
                    each.held().causes().stream()
                            .filter(id -> !id.equals(Held.EVERYTHING))
                            .toList(),
                    causes);
            all("contradiction " + each.id() + " spares", each.held().spared(), causes);
        });
    }

    private static boolean comesBefore(String wanted, Check check, Vocabulary words, Set<String> seen) {
        return check.after().stream()
                .filter(seen::add)
                .anyMatch(before -> before.equals(wanted)
                        || (words.checks().containsKey(before)
                                && comesBefore(wanted, words.check(before), words, seen)));
    }

    private void all(String place, Collection<String> ids, Set<String> known) {
        ids.stream()
                .filter(id -> !known.contains(id))
                .forEach(id -> files.refused()
                        .accept(Refusal.unknown("reference", id, Vocabulary.listed(known))
                                .at(place)));
    }

    private <T> Map<String, T> keyed(String kind, Function<Row, T> reader, Function<T, String> id) {
        var found = new LinkedHashMap<String, T>();
        for (var row : files.of(kind)) {
            try {
                var item = reader.apply(row);
                if (found.putIfAbsent(id.apply(item), item) != null) {
                    throw Refusal.notAllowed("id", id.apply(item), "an id that is used once")
                            .at(row.place());
                }
            } catch (Refusal refusal) {
                files.refused().accept(refusal);
            }
        }
        return found;
    }

    private static Source source(Row row) {
        row.only("key", "document", "section");
        return new Source(row.text("key"), row.text("document"), row.textOr("section", ""));
    }

    private static Complaint complaint(Row row) {
        row.only("id", "title", "plain", "release-first", "source");
        return new Complaint(
                row.text("id"),
                row.text("title"),
                row.text("plain"),
                Set.copyOf(row.texts("release-first")),
                row.textOr("source", ""));
    }

    private static Instrument instrument(Row row) {
        row.only("id", "name", "speed", "misleads", "source");
        return new Instrument(
                row.text("id"),
                row.text("name"),
                row.as("speed", KnowledgeReader::speed),
                row.textOr("misleads", ""),
                row.textOr("source", ""));
    }

    private static Instrument.Speed speed(String text) {
        return switch (text) {
            case "fast" -> Instrument.Speed.FAST;
            case "slow" -> Instrument.Speed.SLOW;
            case "any" -> Instrument.Speed.ANY;
            default -> throw Refusal.unknown("speed", text, "fast, slow, any");
        };
    }

    private static Circumstance circumstance(Row row) {
        row.only("id", "words", "group", "source");
        return new Circumstance(row.text("id"), row.text("words"), row.textOr("group", ""), row.textOr("source", ""));
    }

    private static Check check(Row row, Set<String> instruments) {
        row.only(
                "id",
                "title",
                "unit",
                "possible",
                "usual",
                "words",
                "good",
                "instruments",
                "minutes",
                "hazard",
                "who",
                "step",
                "after",
                "told",
                "how",
                "misleads",
                "source");
        var effort = new Effort(
                row.whole("minutes", 1, 240, -1),
                row.as("hazard", Hazard::parse),
                row.as("who", KnowledgeReader::who),
                row.whole("step", 1, 14, -1));
        return new Check(
                row.text("id"),
                row.text("title"),
                row.text("how"),
                answer(row),
                effort,
                row.each("instruments", id -> known(id, instruments)),
                row.texts("after"),
                row.flag("told", false),
                row.textOr("misleads", ""),
                row.textOr("source", ""));
    }

    private static Answer answer(Row row) {
        var words = row.texts("words");
        if (words.isEmpty() == row.textOr("unit", "").isEmpty()) {
            throw Refusal.malformed("fields unit and words", words, "exactly one of the two")
                    .at(row.place());
        }
        if (!words.isEmpty()) {
            try {
                return new Answer.Words(words, row.texts("good"));
            } catch (Refusal refusal) {
                throw refusal.at(row.place());
            }
        }
        Optional<Range> usual = row.optional("usual", Range::parse);
        return new Answer.Figure(row.as("unit", KnowledgeReader::unit), row.as("possible", Range::parse), usual);
    }

    /** A dimension and a unit of it, such as {@code pressure inwc}. */
    private static Unit unit(String text) {
        int blank = text.lastIndexOf(' ');
        for (var dimension : Dimension.values()) {
            if (blank > 0 && dimension.words().equals(text.substring(0, blank).strip())) {
                return Unit.of(dimension, text.substring(blank + 1));
            }
        }
        throw Refusal.malformed("unit", text, "a kind and a unit, such as 'pressure inwc'");
    }

    private static String who(String text) {
        var who = text.toUpperCase(Locale.ROOT);
        if (!Set.of("T", "T*", "G", "E", "U").contains(who)) {
            throw Refusal.unknown("who", text, "T, T*, G, E, U");
        }
        return who;
    }

    private static String known(String id, Set<String> all) {
        if (!all.contains(id)) {
            throw Refusal.unknown("instrument", id, Vocabulary.listed(all));
        }
        return id;
    }
}

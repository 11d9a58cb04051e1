package fairflame.catalog;

import fairflame.Refusal;
import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** Reads {@code scopes.yaml}: facts, fittings and the remedies. What they refer to is checked by {@link BookChecks}. */
final class ScopesFile {
    static final String NAME = "scopes.yaml";

    private ScopesFile() {}

    static Optional<YamlEntry> file(Map<String, String> files, Problems problems) {
        return problems.attempt(
                () -> YamlEntry.parse(FileText.in(files, NAME)).only("version", "fittings", "facts", "remedies"));
    }

    static Map<String, String> fittings(YamlEntry file) {
        var fittings = new LinkedHashMap<String, String>();
        file.find("fittings")
                .ifPresent(field -> field.fields().forEach((word, stem) -> fittings.put(word, stem.as(Fields::id))));
        return fittings;
    }

    static List<Fact> facts(YamlEntry file, Problems problems) {
        problems.duplicateEntries("fact", "id", file.items("facts"));
        return problems.each(file.items("facts"), ScopesFile::fact);
    }

    private static Fact fact(YamlEntry entry) {
        entry.only("id", "words", "check", "readings", "heaterYears", "source");
        return new Fact(
                entry.read("id", Fields::id),
                entry.text("words"),
                entry.textOr("check", ""),
                Set.copyOf(entry.texts("readings")),
                entry.find("heaterYears").map(field -> field.as(text -> Fields.whole(text, 0, 60))),
                entry.text("source"));
    }

    static List<Remedy> remedies(YamlEntry file, Problems problems) {
        var entries = file.items("remedies").stream()
                .map(item ->
                        new YamlEntry(NAME + " " + item.node().path("cause").asText("without cause"), item.node()))
                .toList();
        problems.duplicateEntries("cause", "cause", entries);
        return problems.each(entries, ScopesFile::remedy);
    }

    private static Remedy remedy(YamlEntry entry) {
        entry.only("cause", "ways", "advice", "source");
        var ways = entry.items("ways").stream().map(ScopesFile::way).toList();
        var advice = entry.textOr("advice", "");
        if (ways.isEmpty() == advice.isEmpty()) {
            throw Refusal.missing("way", "either ways to mend it, or advice where there is nothing to repair")
                    .at(entry.where());
        }
        return new Remedy(entry.read("cause", Fields::id), ways, advice, entry.text("source"));
    }

    private static Way way(YamlEntry entry) {
        entry.only("id", "title", "plain", "when", "run", "tasks", "leaves", "notes", "reason");
        var tasks = entry.items("tasks").stream().map(ScopesFile::task).toList();
        if (tasks.isEmpty()) {
            throw Refusal.missing("task", "at least one task").at(entry.where() + ", tasks");
        }
        return new Way(
                entry.read("id", Fields::id),
                entry.text("title"),
                entry.text("plain"),
                entry.texts("when"),
                entry.find("run").map(field -> field.as(ScopesFile::run)).orElse(Way.Run.NONE),
                tasks,
                entry.textOr("leaves", ""),
                entry.items("notes").stream()
                        .map(item -> item.as(TasksFile::note))
                        .collect(Collectors.toSet()),
                entry.text("reason"));
    }

    private static Way.Run run(String text) {
        return switch (text) {
            case "above-ground" -> Way.Run.ABOVE_GROUND;
            case "buried" -> Way.Run.BURIED;
            default -> throw Refusal.unknown("run", text, "above-ground, buried");
        };
    }

    private static WayTask task(YamlEntry entry) {
        entry.only("task", "devices", "pieces", "when", "reason");
        return new WayTask(
                entry.text("task"),
                entry.find("devices")
                        .map(field -> field.as(ScopesFile::devices))
                        .orElse(WayTask.Devices.NONE),
                entry.find("pieces")
                        .map(field -> field.as(text -> Fields.decimal(text, "1", "100")))
                        .orElse(BigDecimal.ONE),
                entry.texts("when"),
                entry.text("reason"));
    }

    private static WayTask.Devices devices(String text) {
        return switch (text) {
            case "found" -> WayTask.Devices.FOUND;
            case "pair" -> WayTask.Devices.PAIR;
            case "worst" -> WayTask.Devices.WORST;
            default -> throw Refusal.unknown("devices", text, "found, pair, worst");
        };
    }
}

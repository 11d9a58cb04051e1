package fairflame.catalog;

import fairflame.Refusal;
import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/** Reads {@code tasks.yaml}. What its entries refer to is checked by {@link TaskChecks}. */
final class TasksFile {
    static final String NAME = "tasks.yaml";

    private TasksFile() {}

    static List<Task> read(Map<String, String> files, Problems problems) {
        return problems.attempt(() -> YamlEntry.parse(FileText.in(files, NAME)).only("tasks"))
                .map(file -> file.items("tasks").stream()
                        .map(item -> new YamlEntry(place(item), item.node()))
                        .toList())
                .map(entries -> {
                    problems.duplicateEntries("task", "id", entries);
                    if (entries.isEmpty()) {
                        problems.add(
                                Refusal.missing("task", "at least one task").at(NAME));
                    }
                    return problems.each(entries, TasksFile::task);
                })
                .orElse(List.of());
    }

    /** File and task id, as a shop owner looks for it. */
    static String place(String id) {
        return NAME + " " + id;
    }

    private static String place(YamlEntry item) {
        return place(item.where().substring(item.where().lastIndexOf(' ') + 1));
    }

    private static Task task(YamlEntry entry) {
        entry.only(
                "id",
                "title",
                "plain",
                "times",
                "access",
                "needs",
                "joints",
                "tests",
                "who",
                "permit",
                "notes",
                "requires",
                "replaces",
                "leaves",
                "absorbs",
                "companions",
                "conflicts",
                "notForCauses",
                "skills",
                "warranty",
                "source");
        return new Task(
                entry.read("id", Fields::id),
                entry.text("title"),
                entry.text("plain"),
                times(entry),
                set(entry, "access"),
                entry.items("needs").stream().map(TasksFile::need).toList(),
                set(entry, "tests"),
                trades(entry),
                entry.text("permit"),
                notes(entry),
                set(entry, "conflicts"),
                entry.texts("skills"),
                entry.text("warranty"),
                rules(entry),
                entry.text("source"));
    }

    private static Set<String> set(YamlEntry entry, String field) {
        return Set.copyOf(entry.texts(field));
    }

    private static List<StandardTime> times(YamlEntry entry) {
        var times = entry.items("times").stream().map(TasksFile::time).toList();
        if (times.isEmpty()) {
            throw Refusal.missing("standard time", "hours above zero, such as {hours: 0.30, per: piece}")
                    .at(entry.where() + ", times");
        }
        return times;
    }

    private static StandardTime time(YamlEntry entry) {
        entry.only("hours", "per");
        return new StandardTime(
                entry.read("hours", text -> Fields.decimal(text, "0.01", "100")), entry.read("per", TasksFile::per));
    }

    private static PartNeed need(YamlEntry entry) {
        entry.only("role", "size", "quantity", "per");
        return new PartNeed(
                entry.read("role", Fields::id),
                entry.textOr("size", ""),
                entry.find("quantity")
                        .map(field -> field.as(text -> Fields.decimal(text, "0.001", "10000")))
                        .orElse(BigDecimal.ONE),
                entry.find("per").map(field -> field.as(TasksFile::per)).orElse(Per.JOB));
    }

    private static Per per(String text) {
        return switch (text.toLowerCase(Locale.ROOT)) {
            case "job" -> Per.JOB;
            case "piece" -> Per.PIECE;
            case "foot" -> Per.FOOT;
            case "fitting" -> Per.FITTING;
            default -> throw Refusal.unknown("count", text, "job, piece, foot, fitting");
        };
    }

    private static Set<Trade> trades(YamlEntry entry) {
        var trades =
                entry.items("who").stream().map(item -> item.as(Trade::parse)).collect(Collectors.toSet());
        if (trades.isEmpty()) {
            throw Refusal.missing("trade", "T, T*, G, E, U").at(entry.where() + ", who");
        }
        return trades;
    }

    private static Set<String> notes(YamlEntry entry) {
        return entry.items("notes").stream()
                .map(item -> item.as(TasksFile::note))
                .collect(Collectors.toSet());
    }

    static String note(String text) {
        if (!text.matches("N-[A-Z0-9]+")) {
            throw Refusal.malformed("note id", text, "N- and capital letters, such as N-WATER");
        }
        return text;
    }

    private static TaskRules rules(YamlEntry entry) {
        var joints = entry.find("joints")
                .map(field -> field.fields().entrySet().stream()
                        .collect(Collectors.toMap(
                                Map.Entry::getKey, joint -> joint.getValue().as(text -> text))))
                .orElse(Map.of());
        return new TaskRules(
                joints,
                set(entry, "requires"),
                set(entry, "replaces"),
                set(entry, "leaves"),
                set(entry, "absorbs"),
                set(entry, "companions"),
                set(entry, "notForCauses"));
    }
}

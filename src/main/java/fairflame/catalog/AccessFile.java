package fairflame.catalog;

import fairflame.Refusal;
import java.util.ArrayDeque;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/** Reads {@code access.csv}. */
final class AccessFile {
    static final String NAME = "access.csv";

    private AccessFile() {}

    static List<AccessStep> read(Map<String, String> files, Problems problems) {
        return problems.attempt(() -> CsvTable.rows(
                        FileText.in(files, NAME), List.of("id", "title", "hours", "needs", "source"), List.of()))
                .map(rows -> {
                    problems.duplicateRows("access step", "id", rows);
                    var steps = problems.each(rows, AccessFile::step);
                    rows.forEach(row -> problems.attempt(() -> checkNeeds(row, steps)));
                    return steps;
                })
                .orElse(List.of());
    }

    private static AccessStep step(CsvRow row) {
        return new AccessStep(
                row.id("id"),
                row.text("title"),
                row.decimal("hours", "0.00", "40"),
                Set.copyOf(row.words("needs")),
                row.text("source"));
    }

    private static CsvRow checkNeeds(CsvRow row, List<AccessStep> steps) {
        var needs = steps.stream().collect(Collectors.toMap(AccessStep::id, AccessStep::needs, (one, other) -> one));
        for (var need : row.words("needs")) {
            if (!needs.containsKey(need)) {
                throw row.refused(
                        "needs",
                        Refusal.unknown("access step", need, "one of " + String.join(", ", sorted(needs.keySet()))));
            }
        }
        var id = row.id("id");
        if (reaches(id, needs)) {
            throw row.refused(
                    "needs", Refusal.notAllowed("access step", id, "steps that do not need themselves in a circle"));
        }
        return row;
    }

    private static List<String> sorted(Set<String> ids) {
        return ids.stream().sorted().toList();
    }

    private static boolean reaches(String id, Map<String, Set<String>> needs) {
        var open = new ArrayDeque<>(needs.getOrDefault(id, Set.of()));
        var seen = new HashSet<String>();
        while (!open.isEmpty()) {
            var next = open.remove();
            if (next.equals(id)) {
                return true;
            }
            if (seen.add(next)) {
                open.addAll(needs.getOrDefault(next, Set.of()));
            }
        }
        return false;
    }
}

package fairflame.catalog;

import fairflame.Refusal;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;

/** The refusals met while a folder is read, so that a shop owner sees all of them at once. Lives for one reading. */
final class Problems {
    private final List<Refusal> found = new ArrayList<>();

    List<Refusal> found() {
        return List.copyOf(found);
    }

    void add(Refusal refusal) {
        found.add(refusal);
    }

    <T> Optional<T> attempt(Supplier<T> work) {
        try {
            return Optional.of(work.get());
        } catch (Refusal refusal) {
            found.add(refusal);
            return Optional.empty();
        }
    }

    /** Reads each source; those that are refused are left out. */
    <S, T> List<T> each(Collection<S> sources, Function<S, T> work) {
        var read = new ArrayList<T>();
        sources.forEach(source -> attempt(() -> work.apply(source)).ifPresent(read::add));
        return read;
    }

    /** Notes every row whose key stands in an earlier row. */
    void duplicateRows(String what, String column, List<CsvRow> rows) {
        var first = new HashMap<String, Integer>();
        for (var row : rows) {
            var key = row.cells().getOrDefault(column, "").strip();
            var earlier = first.putIfAbsent(key, row.number());
            if (earlier != null && !key.isEmpty()) {
                add(row.refused(column, Refusal.notAllowed(what, key, "each only once; it stands in row " + earlier)));
            }
        }
    }

    /** Notes every entry whose key stands in an earlier entry. */
    void duplicateEntries(String what, String field, List<YamlEntry> entries) {
        var seen = new HashSet<String>();
        for (var entry : entries) {
            entry.find(field)
                    .map(key -> key.node().asText())
                    .filter(key -> !seen.add(key))
                    .ifPresent(key ->
                            add(Refusal.notAllowed(what, key, "each only once").at(entry.where())));
        }
    }

    /** Notes every id that stands a second time among entries that come from files of their own. */
    void duplicateIds(String what, String where, List<String> ids) {
        var seen = new HashSet<String>();
        ids.stream()
                .filter(id -> !seen.add(id))
                .forEach(
                        id -> add(Refusal.notAllowed(what, id, "each only once").at(where)));
    }
}

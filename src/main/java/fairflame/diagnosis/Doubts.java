package fairflame.diagnosis;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/** Which readings cannot be taken at their word, and why. */
final class Doubts {
    private final Map<Reading, List<Objection>> byReading = new LinkedHashMap<>();

    Doubts(Knowledge knowledge, Facts facts) {
        for (var row : knowledge.rulebook().doubts()) {
            for (var reading : facts.matching(row.reading(), Facts.Trust.ANY)) {
                var refs = new TreeSet<CheckRef>(row.words().refs());
                row.when().forEach(condition -> refs.addAll(condition.refs()));
                Binding.about(facts, refs, reading).stream()
                        .filter(binding -> row.when().stream().allMatch(condition -> condition.holds(binding)))
                        .findFirst()
                        .ifPresent(binding -> byReading
                                .computeIfAbsent(reading, any -> new ArrayList<>())
                                .add(new Objection(
                                        row.id(), row.words().in(binding), Held.NOTHING, row.next(), row.source())));
            }
        }
    }

    Set<Reading> readings() {
        return byReading.keySet();
    }

    List<Objection> about(Reading reading) {
        return byReading.getOrDefault(reading, List.of());
    }

    List<Objection> all() {
        return byReading.values().stream().flatMap(List::stream).distinct().toList();
    }
}

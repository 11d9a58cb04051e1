package fairflame.diagnosis;

import java.util.Set;
import java.util.TreeSet;

/**
 * A check as a rule names it: {@code gas-firing} or, narrowed to readings with certain tags,
 * {@code gas-firing[fast, furnace-on]}.
 *
 * @param check id of the check
 * @param tags words that a reading must carry: conditions, instrument, {@code fast}, {@code slow}, {@code seen}
 */
record CheckRef(String check, Set<String> tags) implements Comparable<CheckRef> {
    CheckRef {
        tags = Set.copyOf(tags);
    }

    static CheckRef of(String check) {
        return new CheckRef(check, Set.of());
    }

    @Override
    public int compareTo(CheckRef other) {
        return tags.isEmpty() && other.tags().isEmpty()
                ? check.compareTo(other.check())
                : toString().compareTo(other.toString());
    }

    @Override
    public String toString() {
        return tags.isEmpty() ? check : check + "[" + String.join(", ", new TreeSet<>(tags)) + "]";
    }
}

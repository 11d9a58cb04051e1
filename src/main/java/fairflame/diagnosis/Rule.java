package fairflame.diagnosis;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

/**
 * What some readings say about a cause.
 *
 * @param id unique, such as {@code LD01/for/valve-sags}
 * @param says what it does to the cause
 * @param weight how much it counts
 * @param when all must hold under one choice of readings
 * @param unless none may hold under any choice of readings
 * @param words the sentence to print
 * @param outcome what a deciding rule names; empty for the others
 * @param source key of the source
 */
record Rule(
        String id,
        Says says,
        int weight,
        List<Condition> when,
        List<Condition> unless,
        Template words,
        Outcome outcome,
        String source) {
    Rule {
        when = List.copyOf(when);
        unless = List.copyOf(unless);
    }

    /** What a rule does to its cause. */
    enum Says {
        SUPPORTS("for", 2),
        AGAINST("against", 2),
        DECIDES("decides", 8),
        EXCLUDES("excludes", 8);

        private final String word;
        private final int weight;

        Says(String word, int weight) {
            this.word = word;
            this.weight = weight;
        }

        /** Its name in a knowledge file. */
        String word() {
            return word;
        }

        /** The weight of a row that gives none; invented for the demo. */
        int usualWeight() {
            return weight;
        }
    }

    /**
     * What a deciding rule settles besides the cause.
     *
     * @param restsOn the deciding check in words
     * @param devices devices at fault; empty to take the cause's own
     * @param repairs task ids; empty to take the cause's own
     */
    record Outcome(String restsOn, List<String> devices, List<String> repairs) {
        static final Outcome NONE = new Outcome("", List.of(), List.of());

        Outcome {
            devices = List.copyOf(devices);
            repairs = List.copyOf(repairs);
        }
    }

    /** The reason it gives, if it holds. */
    Optional<Evidence> evidence(Facts facts, Facts.Trust trust) {
        if (unless.stream().anyMatch(condition -> condition.holdsSomewhere(facts, Facts.Trust.ANY))) {
            return Optional.empty();
        }
        return Binding.all(facts, refs(), trust).stream()
                .filter(binding -> when.stream().allMatch(condition -> condition.holds(binding)))
                .findFirst()
                .map(this::said);
    }

    private Evidence said(Binding binding) {
        return new Evidence(
                id, mentions().stream().map(CheckRef::check).distinct().toList(), words.in(binding), source);
    }

    /**
     * What is still to be read before this rule can hold; empty when it holds or can no longer hold with the readings at
     * hand.
     */
    Set<CheckRef> missing(Facts facts, Facts.Trust trust) {
        if (unless.stream().anyMatch(condition -> condition.holdsSomewhere(facts, Facts.Trust.ANY))) {
            return Set.of();
        }
        var missing = new TreeSet<CheckRef>();
        for (var condition : when) {
            var lacks = condition.missing(facts, trust);
            if (lacks.isEmpty() && !condition.holdsSomewhere(facts, trust)) {
                return Set.of();
            }
            missing.addAll(lacks);
        }
        return missing;
    }

    /** Checks whose readings it uses. */
    Set<CheckRef> mentions() {
        var refs = new TreeSet<CheckRef>();
        when.forEach(condition -> refs.addAll(condition.mentions()));
        return refs;
    }

    /** All conditions, those of {@code unless} too. */
    List<Condition> conditions() {
        return Stream.concat(when.stream(), unless.stream()).toList();
    }

    private Set<CheckRef> refs() {
        var refs = new ArrayList<CheckRef>();
        when.forEach(condition -> refs.addAll(condition.refs()));
        refs.addAll(words.refs());
        return new TreeSet<>(refs);
    }
}

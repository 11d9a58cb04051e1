package fairflame.diagnosis;

import fairflame.gas.Reconciliation;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;

/** What a condition asks a word of, or whether it is known at all. */
sealed interface Subject {
    /** The words said; empty when nothing is known. */
    Set<String> words(Binding binding);

    boolean known(Facts facts);

    /** Checks that must be bound to a reading. */
    Set<CheckRef> refs();

    /** Checks it speaks about. */
    Set<CheckRef> mentions();

    /** What has to be read before a word can be asked of it. */
    default Set<CheckRef> missing(Facts facts, Facts.Trust trust) {
        return mentions().stream().filter(ref -> !facts.measured(ref, trust)).collect(Collectors.toSet());
    }

    /** The word that a check read; an open line says {@code open}. */
    record OfCheck(CheckRef ref) implements Subject {
        @Override
        public Set<String> words(Binding binding) {
            var value = binding.reading(ref).value();
            if (value instanceof Value.Word word) {
                return Set.of(word.word());
            }
            return Set.of(value instanceof Value.OpenLine ? "open" : "a number");
        }

        @Override
        public boolean known(Facts facts) {
            return facts.measured(ref, Facts.Trust.SOUND);
        }

        @Override
        public Set<CheckRef> refs() {
            return Set.of(ref);
        }

        @Override
        public Set<CheckRef> mentions() {
            return refs();
        }
    }

    /** A number on the data plate: known or not. */
    record OfPlate(PlateField field) implements Subject {
        @Override
        public Set<String> words(Binding binding) {
            return Set.of();
        }

        @Override
        public boolean known(Facts facts) {
            return field.on(facts.plate()).isPresent();
        }

        @Override
        public Set<CheckRef> refs() {
            return Set.of();
        }

        @Override
        public Set<CheckRef> mentions() {
            return Set.of(Facts.DATA_PLATE);
        }
    }

    /** A word about the visit as a whole. */
    record OfCase(Topic topic) implements Subject {
        @Override
        public Set<String> words(Binding binding) {
            return topic.words(binding.facts().file());
        }

        @Override
        public boolean known(Facts facts) {
            return !topic.words(facts.file()).isEmpty();
        }

        @Override
        public Set<CheckRef> refs() {
            return Set.of();
        }

        @Override
        public Set<CheckRef> mentions() {
            return topic == Topic.PIPE ? Set.of(Facts.PIPE_LAYOUT) : Set.of();
        }

        @Override
        public Set<CheckRef> missing(Facts facts, Facts.Trust trust) {
            return known(facts) ? Set.of() : mentions();
        }
    }

    /** What can be said about the visit as a whole. */
    enum Topic {
        COMPLAINT,
        FUEL,
        PIPE,
        RELEASED;

        String word() {
            return name().toLowerCase(Locale.ROOT);
        }

        private Set<String> words(CaseFile file) {
            return switch (this) {
                case COMPLAINT -> Set.of(file.complaint());
                case FUEL -> Set.of(file.plate().fuel().word());
                case PIPE ->
                    file.pipe().map(pipe -> Set.of(word(pipe.verdict()))).orElse(Set.of());
                case RELEASED -> file.releases().stream().map(Release::gate).collect(Collectors.toUnmodifiableSet());
            };
        }

        static String word(Reconciliation.Verdict verdict) {
            return verdict.name().toLowerCase(Locale.ROOT).replace('_', '-');
        }
    }
}

package fairflame.diagnosis;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Something that holds or does not hold under a binding of checks to readings. */
sealed interface Condition {
    boolean holds(Binding binding);

    /** Checks that must be bound to a reading before it can be asked. */
    Set<CheckRef> refs();

    /** Checks whose readings it speaks about. */
    Set<CheckRef> mentions();

    /** What has to be read before it can be asked. */
    Set<CheckRef> missing(Facts facts, Facts.Trust trust);

    /** Two numbers compared. */
    record Compare(Term left, Comparison comparison, Term right) implements Condition {
        @Override
        public boolean holds(Binding binding) {
            return left.in(binding)
                    .flatMap(one -> right.in(binding).map(other -> comparison.holds(one.against(other))))
                    .orElse(false);
        }

        @Override
        public Set<CheckRef> refs() {
            return Term.union(left.refs(), right.refs());
        }

        @Override
        public Set<CheckRef> mentions() {
            return Term.union(left.mentions(), right.mentions());
        }

        @Override
        public Set<CheckRef> missing(Facts facts, Facts.Trust trust) {
            return Term.union(left.missing(facts, trust), right.missing(facts, trust));
        }
    }

    /** A word read, or a word of the case itself, is one of some. */
    record Is(Subject subject, boolean not, Set<String> words) implements Condition {
        @Override
        public boolean holds(Binding binding) {
            var said = subject.words(binding);
            return !said.isEmpty() && not == said.stream().noneMatch(words::contains);
        }

        @Override
        public Set<CheckRef> refs() {
            return subject.refs();
        }

        @Override
        public Set<CheckRef> mentions() {
            return subject.mentions();
        }

        @Override
        public Set<CheckRef> missing(Facts facts, Facts.Trust trust) {
            return subject.missing(facts, trust);
        }
    }

    /** A check, a plate field, the reconciliation of the pipe was entered, or was not. */
    record Known(Subject subject, boolean not) implements Condition {
        @Override
        public boolean holds(Binding binding) {
            return subject.known(binding.facts()) != not;
        }

        @Override
        public Set<CheckRef> refs() {
            return Set.of();
        }

        @Override
        public Set<CheckRef> mentions() {
            return subject.mentions();
        }

        @Override
        public Set<CheckRef> missing(Facts facts, Facts.Trust trust) {
            return not || subject.known(facts) ? Set.of() : mentions();
        }
    }

    /** All of several. */
    record All(List<Condition> parts) implements Condition {
        @Override
        public boolean holds(Binding binding) {
            return parts.stream().allMatch(part -> part.holds(binding));
        }

        @Override
        public Set<CheckRef> refs() {
            return gathered(Condition::refs);
        }

        @Override
        public Set<CheckRef> mentions() {
            return gathered(Condition::mentions);
        }

        @Override
        public Set<CheckRef> missing(Facts facts, Facts.Trust trust) {
            return gathered(part -> part.missing(facts, trust));
        }

        private Set<CheckRef> gathered(Function<Condition, Set<CheckRef>> of) {
            return parts.stream()
                    .flatMap(part -> of.apply(part).stream())
                    .collect(Collectors.toCollection(TreeSet::new));
        }
    }

    /** Whether some readings make it hold. */
    default boolean holdsSomewhere(Facts facts, Facts.Trust trust) {
        return Binding.all(facts, refs(), trust).stream().anyMatch(this::holds);
    }

    /** How two numbers are compared. */
    enum Comparison {
        BELOW("<"),
        AT_MOST("<="),
        ABOVE(">"),
        AT_LEAST(">=");

        private final String sign;

        Comparison(String sign) {
            this.sign = sign;
        }

        String sign() {
            return sign;
        }

        boolean holds(int order) {
            return switch (this) {
                case BELOW -> order < 0;
                case AT_MOST -> order <= 0;
                case ABOVE -> order > 0;
                case AT_LEAST -> order >= 0;
            };
        }
    }
}

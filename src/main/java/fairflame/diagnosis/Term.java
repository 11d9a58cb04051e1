package fairflame.diagnosis;

import fairflame.Refusal;
import fairflame.quantity.Dimension;
import fairflame.quantity.Measure;
import fairflame.quantity.Unit;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** The numeric side of a condition. */
sealed interface Term {
    Dimension dimension();

    /** The value under a binding; empty when the plate or a computation does not give it. */
    Optional<Amount> in(Binding binding);

    /** Checks that must be bound to a reading. */
    Set<CheckRef> refs();

    /** Checks that the value depends on, bound or computed. */
    default Set<CheckRef> mentions() {
        return refs();
    }

    /** The unit to print it in when no reading gives one. */
    default Unit shown() {
        return Unit.baseOf(dimension());
    }

    /** What has to be read, or read off the plate, before there is a value. */
    default Set<CheckRef> missing(Facts facts, Facts.Trust trust) {
        return refs().stream().filter(ref -> !facts.measured(ref, trust)).collect(Collectors.toSet());
    }

    /** Typed number and unit. */
    record Literal(Measure measure) implements Term {
        @Override
        public Dimension dimension() {
            return measure.unit().dimension();
        }

        @Override
        public Unit shown() {
            return measure.unit();
        }

        @Override
        public Optional<Amount> in(Binding binding) {
            return Optional.of(Amount.of(measure));
        }

        @Override
        public Set<CheckRef> refs() {
            return Set.of();
        }
    }

    /** The number that a check read. */
    record Read(CheckRef ref, Dimension dimension) implements Term {
        @Override
        public Optional<Amount> in(Binding binding) {
            return binding.amount(ref);
        }

        @Override
        public Set<CheckRef> refs() {
            return Set.of(ref);
        }
    }

    /** A number on the data plate. */
    record OnPlate(PlateField field) implements Term {
        @Override
        public Dimension dimension() {
            return field.dimension();
        }

        @Override
        public Unit shown() {
            return field.unit();
        }

        @Override
        public Optional<Amount> in(Binding binding) {
            return field.on(binding.facts().plate());
        }

        @Override
        public Set<CheckRef> refs() {
            return Set.of();
        }

        @Override
        public Set<CheckRef> mentions() {
            return Set.of(Facts.DATA_PLATE);
        }

        @Override
        public Set<CheckRef> missing(Facts facts, Facts.Trust trust) {
            return field.on(facts.plate()).isPresent() ? Set.of() : mentions();
        }
    }

    /** A number worked out from several readings. */
    record Worked(Computed value) implements Term {
        @Override
        public Dimension dimension() {
            return value.dimension();
        }

        @Override
        public Optional<Amount> in(Binding binding) {
            return value.from(binding.facts());
        }

        @Override
        public Set<CheckRef> refs() {
            return Set.of();
        }

        @Override
        public Set<CheckRef> mentions() {
            return value.needs().stream().map(CheckRef::of).collect(Collectors.toSet());
        }

        @Override
        public Set<CheckRef> missing(Facts facts, Facts.Trust trust) {
            return value.missing(facts);
        }
    }

    /** A sum or a difference. */
    record Sum(Term left, boolean minus, Term right) implements Term {
        public Sum {
            var rise = left.dimension() == Dimension.TEMPERATURE && right.dimension() == Dimension.TEMPERATURE_RISE;
            if (left.dimension() != right.dimension() && !rise) {
                throw Refusal.notAllowed(
                        minus ? "difference" : "sum",
                        left.dimension().words() + " and " + right.dimension().words(),
                        "two of one kind");
            }
        }

        @Override
        public Dimension dimension() {
            return minus ? Amount.differenceOf(left.dimension(), right.dimension()) : left.dimension();
        }

        @Override
        public Unit shown() {
            return left.shown().dimension() == dimension() ? left.shown() : Unit.baseOf(dimension());
        }

        @Override
        public Optional<Amount> in(Binding binding) {
            return left.in(binding).flatMap(one -> right.in(binding).flatMap(other -> together(one, other)));
        }

        private Optional<Amount> together(Amount one, Amount other) {
            // An open line less an open line is nothing that can be compared.
            if (Double.isInfinite(one.base()) && Double.isInfinite(other.base()) && minus) {
                return Optional.empty();
            }
            return Optional.of(minus ? one.minus(other) : one.plus(other));
        }

        @Override
        public Set<CheckRef> refs() {
            return union(left.refs(), right.refs());
        }

        @Override
        public Set<CheckRef> mentions() {
            return union(left.mentions(), right.mentions());
        }

        @Override
        public Set<CheckRef> missing(Facts facts, Facts.Trust trust) {
            return union(left.missing(facts, trust), right.missing(facts, trust));
        }
    }

    /** A multiple. */
    record Scaled(double factor, Term term) implements Term {
        @Override
        public Dimension dimension() {
            return term.dimension();
        }

        @Override
        public Unit shown() {
            return term.shown();
        }

        @Override
        public Optional<Amount> in(Binding binding) {
            return term.in(binding).map(amount -> amount.times(factor));
        }

        @Override
        public Set<CheckRef> refs() {
            return term.refs();
        }

        @Override
        public Set<CheckRef> mentions() {
            return term.mentions();
        }

        @Override
        public Set<CheckRef> missing(Facts facts, Facts.Trust trust) {
            return term.missing(facts, trust);
        }
    }

    static Set<CheckRef> union(Set<CheckRef> one, Set<CheckRef> other) {
        var both = new TreeSet<>(one);
        both.addAll(other);
        return both;
    }
}

package fairflame.diagnosis;

import fairflame.quantity.Measure;
import java.math.BigDecimal;
import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * Whether the conditions of a rule can hold together: words of one check that have nothing in common, numbers of one
 * check that leave no room, or none that the check can give. Comparisons between readings are taken as possible.
 */
final class Satisfiable {
    private final Knowledge knowledge;
    private final Map<CheckRef, Set<String>> words = new TreeMap<>();
    private final Map<CheckRef, double[]> ends = new TreeMap<>();

    private Satisfiable(Knowledge knowledge) {
        this.knowledge = knowledge;
    }

    /** Why a rule can never hold; empty when it can. */
    static Optional<String> of(Rule rule, Knowledge knowledge) {
        var room = new Satisfiable(knowledge);
        rule.when().forEach(room::narrow);
        return room.contradiction();
    }

    private void narrow(Condition condition) {
        if (condition instanceof Condition.All all) {
            all.parts().forEach(this::narrow);
        } else if (condition instanceof Condition.Is is && is.subject() instanceof Subject.OfCheck check) {
            narrow(check.ref(), is);
        } else if (condition instanceof Condition.Compare compare
                && compare.left() instanceof Term.Read read
                && compare.right() instanceof Term.Literal literal) {
            narrow(
                    read.ref(),
                    compare.comparison(),
                    Amount.of(literal.measure()).base());
        }
    }

    private void narrow(CheckRef ref, Condition.Is is) {
        var left = words.computeIfAbsent(ref, this::allWords);
        if (is.not()) {
            left.removeAll(is.words());
        } else {
            left.retainAll(is.words());
        }
    }

    private Set<String> allWords(CheckRef ref) {
        return knowledge.check(ref.check()).answer() instanceof Answer.Words answer
                ? new TreeSet<>(answer.words())
                : new TreeSet<>(Set.of("open", "a number"));
    }

    private void narrow(CheckRef ref, Condition.Comparison comparison, double literal) {
        var room = ends.computeIfAbsent(ref, this::possible);
        switch (comparison) {
            case BELOW, AT_MOST -> room[1] = Math.min(room[1], literal);
            case ABOVE, AT_LEAST -> room[0] = Math.max(room[0], literal);
        }
    }

    private double[] possible(CheckRef ref) {
        if (knowledge.check(ref.check()).answer() instanceof Answer.Figure figure) {
            return new double[] {
                base(figure, figure.possible().lowest()),
                base(figure, figure.possible().highest())
            };
        }
        return new double[] {Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY};
    }

    private static double base(Answer.Figure figure, double end) {
        return Double.isInfinite(end)
                ? end
                : Amount.of(new Measure(BigDecimal.valueOf(end), figure.unit())).base();
    }

    private Optional<String> contradiction() {
        for (var each : words.entrySet()) {
            if (each.getValue().isEmpty()) {
                return Optional.of("no word of " + each.getKey() + " is left");
            }
        }
        for (var each : ends.entrySet()) {
            if (each.getValue()[0] > each.getValue()[1]) {
                return Optional.of("no number of " + each.getKey() + " is left");
            }
        }
        var both = new HashSet<>(words.keySet());
        both.retainAll(ends.keySet());
        return both.stream()
                .filter(ref -> words.getOrDefault(ref, Set.of()).equals(Set.of("open")))
                .filter(ref -> Double.isFinite(ends.getOrDefault(ref, new double[] {0, 0})[1]))
                .findFirst()
                .map(ref -> ref + " cannot be open and below a number");
    }
}

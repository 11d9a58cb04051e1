package fairflame.quote;

import fairflame.money.Amounts;
import fairflame.repair.PairArithmetic;
import fairflame.repair.RepairPlan;
import fairflame.repair.Scope;
import java.math.BigDecimal;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.joda.money.Money;

/** Tells beside the choices "one of the pair" and "both" from which chance on both are cheaper. */
final class PairWords {
    /** The note that marks the choice of one part of a pair. */
    static final String SINGLE = "N-SINGLE";

    private PairWords() {}

    /**
     * The choices, with the arithmetic beside one and both where the plan has them.
     *
     * @param trip charge for coming again
     */
    static List<Choice> added(List<Choice> choices, RepairPlan plan, Money trip) {
        var single = plan.scopes().stream().filter(PairWords::isSingle).findFirst();
        var pair = single.flatMap(one ->
                plan.scopes().stream().filter(scope -> isPairOf(scope, one)).findFirst());
        if (single.isEmpty() || pair.isEmpty()) {
            return choices;
        }
        var one = named(choices, single.get().id());
        var both = named(choices, pair.get().id());
        var told = arithmetic(one, both, trip).sentences();
        return choices.stream()
                .map(choice -> choice.equals(one) || choice.equals(both) ? choice.told(told) : choice)
                .toList();
    }

    /** Labour and parts now, and a second visit with its trip; consumables and tax are left out on both sides. */
    static PairArithmetic arithmetic(Choice one, Choice both, Money trip) {
        var oneNow = labour(one).plus(parts(one));
        var other = parts(both).minus(parts(one));
        return new PairArithmetic(
                oneNow,
                labour(both).plus(parts(both)),
                trip.plus(labour(one)).plus(other),
                BigDecimal.ONE,
                Money.zero(trip.getCurrencyUnit()));
    }

    private static Money labour(Choice choice) {
        return sum(choice, LineKind.LABOUR);
    }

    private static Money parts(Choice choice) {
        return sum(choice, LineKind.PART);
    }

    private static Money sum(Choice choice, LineKind kind) {
        return Amounts.sum(
                choice.deposit().getCurrencyUnit(),
                choice.lines().stream()
                        .filter(line -> line.kind() == kind)
                        .map(Line::net)
                        .toList());
    }

    private static boolean isSingle(Scope scope) {
        return scope.extraNotes().contains(SINGLE);
    }

    /** Another way that does at least the same tasks. */
    private static boolean isPairOf(Scope scope, Scope single) {
        return !isSingle(scope) && tasks(scope).containsAll(tasks(single));
    }

    private static Set<String> tasks(Scope scope) {
        return scope.tasks().stream().map(scoped -> scoped.task().id()).collect(Collectors.toSet());
    }

    private static Choice named(List<Choice> choices, String id) {
        return choices.stream()
                .filter(choice -> choice.id().equals(id))
                .findFirst()
                .orElseThrow();
    }
}

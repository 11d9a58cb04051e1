package fairflame.screen.bench;

import fairflame.diagnosis.Answer;
import fairflame.diagnosis.Check;
import fairflame.quantity.Unit;
import java.util.Arrays;
import java.util.List;
import java.util.Set;

/** What a fresh reading starts with: the check's own unit and its best instrument. */
final class ReadingDefaults {
    /** No instrument at a heater shows these. */
    private static final Set<Unit> UNUSED = Set.of(Unit.PASCAL, Unit.MILLIVOLT);

    private final Check check;

    private ReadingDefaults(Check check) {
        this.check = check;
    }

    static ReadingDefaults of(Check check) {
        return new ReadingDefaults(check);
    }

    Draft fill(Draft draft, int number) {
        var field = "reading." + number + ".";
        var filled = draft.with(field + "check", check.id());
        if (check.answer() instanceof Answer.Figure answer) {
            filled = filled.with(field + "value.unit", answer.unit().spelling());
        }
        return check.instruments().isEmpty()
                ? filled
                : filled.with(field + "instrument", check.instruments().get(0));
    }

    /** Units that the check can be read in, its own first. */
    static List<Unit> units(Answer.Figure answer) {
        return java.util.stream.Stream.concat(
                        java.util.stream.Stream.of(answer.unit()),
                        Arrays.stream(Unit.values())
                                .filter(unit ->
                                        unit.dimension() == answer.unit().dimension())
                                .filter(unit -> !UNUSED.contains(unit)))
                .distinct()
                .toList();
    }
}

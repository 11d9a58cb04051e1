package fairflame.diagnosis;

import fairflame.Refusal;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.Function;

/**
 * One way to give each check that a rule names one of its readings.
 *
 * @param facts what the readings come from
 */
record Binding(Facts facts, Map<CheckRef, Reading> readings) {
    Binding {
        readings = Map.copyOf(readings);
    }

    static Binding empty(Facts facts) {
        return new Binding(facts, Map.of());
    }

    Reading reading(CheckRef ref) {
        var reading = readings.get(ref);
        if (reading == null) {
            throw new IllegalStateException("no reading bound to " + ref);
        }
        return reading;
    }

    Optional<Amount> amount(CheckRef ref) {
        return Facts.amount(reading(ref));
    }

    /** All bindings, in the order of the readings; none when a check was not measured. */
    static List<Binding> all(Facts facts, Collection<CheckRef> refs, Facts.Trust trust) {
        return all(facts, refs, ref -> facts.matching(ref, trust));
    }

    /** All bindings in which this very reading stands for its check. */
    static List<Binding> about(Facts facts, Collection<CheckRef> refs, Reading reading) {
        return all(facts, refs, ref -> {
            var found = facts.matching(ref, Facts.Trust.ANY);
            return ref.check().equals(reading.check())
                    ? found.stream().filter(reading::equals).toList()
                    : found;
        });
    }

    private static List<Binding> all(
            Facts facts, Collection<CheckRef> refs, Function<CheckRef, List<Reading>> candidates) {
        List<Binding> found = List.of(empty(facts));
        for (var ref : new TreeSet<>(refs)) {
            var longer = new ArrayList<Binding>();
            for (var binding : found) {
                candidates.apply(ref).stream()
                        .filter(binding::comparable)
                        .forEach(reading -> longer.add(binding.with(ref, reading)));
            }
            if (longer.size() > MOST) {
                throw Refusal.outOfRange("ways to pair the readings of " + refs, longer.size(), "up to " + MOST);
            }
            found = longer;
        }
        return found;
    }

    // Twelve readings each of four checks; more is no visit but a file made to stall the program.
    private static final int MOST = 20_736;

    /** All bound readings of the same load: heater alone is never compared with furnace on. */
    private boolean comparable(Reading reading) {
        return readings.values().stream().noneMatch(bound -> facts.vocabulary().clash(bound, reading));
    }

    private Binding with(CheckRef ref, Reading reading) {
        var more = new HashMap<>(readings);
        more.put(ref, reading);
        return new Binding(facts, more);
    }
}

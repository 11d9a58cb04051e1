package fairflame.catalog;

import fairflame.wording.Spoken;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * A labour task with its standard time.
 *
 * @param id such as {@code R03}
 * @param title exact words for the trade
 * @param plain plain words for the customer
 * @param times own time without access
 * @param access ids of access steps
 * @param needs parts and consumables by role
 * @param tests letters of the tests after the repair, A to K
 * @param trades who may do it, every one of them needed
 * @param permitClass key of the permit table in a jurisdiction: {@code minor-part}, {@code gas-valve},
 *     {@code gas-piping}, {@code heater}, {@code vent}, {@code electrical}, {@code none}
 * @param notes ids of the notes it always prints, such as {@code N-WATERSRC}
 * @param conflicts ids of tasks that may not stand beside it
 * @param skills what the person must be trained in, in words
 * @param warranty key of the warranty text
 * @param rules sealant of each joint, conditions and conflicts
 * @param source of times and rules
 */
public record Task(
        String id,
        @Spoken String title,
        @Spoken String plain,
        List<StandardTime> times,
        Set<String> access,
        List<PartNeed> needs,
        Set<String> tests,
        Set<Trade> trades,
        String permitClass,
        Set<String> notes,
        Set<String> conflicts,
        List<String> skills,
        String warranty,
        TaskRules rules,
        String source) {
    public Task {
        times = List.copyOf(times);
        access = Set.copyOf(access);
        needs = List.copyOf(needs);
        tests = Set.copyOf(tests);
        trades = Set.copyOf(trades);
        notes = Set.copyOf(notes);
        conflicts = Set.copyOf(conflicts);
        skills = List.copyOf(skills);
    }

    /** A task without joints, conditions or merging rules. */
    public Task(
            String id,
            String title,
            String plain,
            List<StandardTime> times,
            Set<String> access,
            List<PartNeed> needs,
            Set<String> tests,
            Set<Trade> trades,
            String permitClass,
            Set<String> notes,
            Set<String> conflicts,
            List<String> skills,
            String warranty,
            String source) {
        this(
                id,
                title,
                plain,
                times,
                access,
                needs,
                tests,
                trades,
                permitClass,
                notes,
                conflicts,
                skills,
                warranty,
                TaskRules.NONE,
                source);
    }

    /**
     * Own hours without access, conditions or rounding: each standard time by its count.
     *
     * @param counts pieces, feet, fittings; what is not counted is 0, {@link Per#JOB} is 1
     */
    public BigDecimal ownHours(Map<Per, BigDecimal> counts) {
        return times.stream()
                .map(time -> time.hours()
                        .multiply(
                                time.per() == Per.JOB
                                        ? BigDecimal.ONE
                                        : counts.getOrDefault(time.per(), BigDecimal.ZERO)))
                .reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    /**
     * The task as a place sees it: work at a gas test tap is a technician's where the place lets one do it, else the
     * licensed gas fitter's.
     */
    public Task in(Jurisdiction place) {
        if (!trades.contains(Trade.TEST_TAP)) {
            return this;
        }
        var resolved = new HashSet<>(trades);
        resolved.remove(Trade.TEST_TAP);
        resolved.add(place.testTap().contains(Trade.TECHNICIAN) ? Trade.TECHNICIAN : Trade.GAS_FITTER);
        return new Task(
                id,
                title,
                plain,
                times,
                access,
                needs,
                tests,
                resolved,
                permitClass,
                notes,
                conflicts,
                skills,
                warranty,
                rules,
                source);
    }

    /** Gas piping or a gas valve: the permit and licensed-gas-fitter notes always print. */
    public boolean regulatedGas() {
        return trades.contains(Trade.GAS_FITTER);
    }

    /** The same task without a part: it neither takes it out nor uses a new one up. */
    public Task without(String part) {
        return new Task(
                id,
                title,
                plain,
                times,
                access,
                needs.stream().filter(need -> !need.role().equals(part)).toList(),
                tests,
                trades,
                permitClass,
                notes,
                conflicts,
                skills,
                warranty,
                rules.without(part),
                source);
    }

    /** The same task with its own times multiplied, each rounded to a hundredth of an hour. */
    public Task timed(BigDecimal factor) {
        var longer = times.stream()
                .map(time ->
                        new StandardTime(time.hours().multiply(factor).setScale(2, RoundingMode.HALF_UP), time.per()))
                .toList();
        return new Task(
                id,
                title,
                plain,
                longer,
                access,
                needs,
                tests,
                trades,
                permitClass,
                notes,
                conflicts,
                skills,
                warranty,
                rules,
                source);
    }
}

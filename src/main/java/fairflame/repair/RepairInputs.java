package fairflame.repair;

import fairflame.catalog.Jurisdiction;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What a scope depends on besides finding and readings.
 *
 * @param place decides who may do work at a test tap
 * @param pipes sized gas lines, the suggested one first; none when no line was sized
 * @param sizes size or rating by role, read off the old part: {@code high-limit-switch} to {@code 135F}
 * @param stated ids of facts that somebody states by hand
 * @param partYears age of the failed part; where it is not known the heater's age counts
 */
public record RepairInputs(
        Jurisdiction place,
        List<PipeJob> pipes,
        Map<String, String> sizes,
        Set<String> stated,
        Optional<Integer> partYears,
        List<AddedTask> added) {
    public RepairInputs {
        pipes = List.copyOf(pipes);
        sizes = Map.copyOf(sizes);
        stated = Set.copyOf(stated);
        added = List.copyOf(added);
    }

    /** Nothing but the place. */
    public static RepairInputs in(Jurisdiction place) {
        return new RepairInputs(place, List.of(), Map.of(), Set.of(), Optional.empty(), List.of());
    }

    public RepairInputs withPipes(List<PipeJob> sized) {
        return new RepairInputs(place, sized, sizes, stated, partYears, added);
    }

    public RepairInputs withSizes(Map<String, String> read) {
        return new RepairInputs(place, pipes, read, stated, partYears, added);
    }

    public RepairInputs stating(Set<String> facts) {
        return new RepairInputs(place, pipes, sizes, facts, partYears, added);
    }

    public RepairInputs withPartYears(int years) {
        return new RepairInputs(place, pipes, sizes, stated, Optional.of(years), added);
    }

    public RepairInputs adding(AddedTask task) {
        var more = new ArrayList<>(added);
        more.add(task);
        return new RepairInputs(place, pipes, sizes, stated, partYears, more);
    }
}

package fairflame.repair;

import fairflame.Refusal;
import fairflame.quantity.Length;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * A gas line that the sizing has worked out: without one no pipe is sold.
 *
 * @param id short and stable; becomes the id of the scope, such as {@code larger-line}
 * @param title heading of the choice, plain words
 * @param runs the new pipe in the order of the flow; none when only regulators are set
 * @param inletSize steel size of cock, trap and union at the heater
 * @param sizing what was computed, with figures and source
 * @param leaves what this line does not mend; empty when it mends all
 * @param also ids of further tasks that belong to it, one for each piece: a regulator before each appliance
 * @param sizes size or rating that this line asks for, by role: {@code excess-flow-valve} to {@code 600}
 */
public record PipeJob(
        String id,
        String title,
        List<PipeRun> runs,
        String inletSize,
        Sizing sizing,
        String leaves,
        List<String> also,
        Map<String, String> sizes) {
    public PipeJob {
        runs = List.copyOf(runs);
        also = List.copyOf(also);
        sizes = Map.copyOf(sizes);
        if (runs.isEmpty() && also.isEmpty()) {
            throw Refusal.missing("work of gas line " + id, "pipe to lay, or a task such as a regulator");
        }
        if (sizing.words().isBlank() || sizing.source().isBlank()) {
            throw Refusal.missing(
                    "sizing record of gas line " + id, "what was computed, and by which table or equation");
        }
    }

    /** A line that asks for no size of anything but pipe and inlet. */
    public PipeJob(
            String id,
            String title,
            List<PipeRun> runs,
            String inletSize,
            Sizing sizing,
            String leaves,
            List<String> also) {
        this(id, title, runs, inletSize, sizing, leaves, also, Map.of());
    }

    /** A line of one size from end to end. */
    public PipeJob(
            String id,
            String title,
            String material,
            String size,
            String inletSize,
            Length length,
            Map<String, Integer> fittings,
            boolean buried,
            Sizing sizing,
            String leaves,
            List<String> also) {
        this(
                id,
                title,
                List.of(new PipeRun(material, size, length, fittings, buried)),
                inletSize,
                sizing,
                leaves,
                also);
    }

    /**
     * The sizing record.
     *
     * @param words load, length, drop and result in one sentence
     * @param source table with its number, or the equation
     */
    public record Sizing(String words, String source) {}

    /** Whether any of it lies underground. */
    boolean buried() {
        return runs.stream().anyMatch(PipeRun::buried);
    }

    /** How often each further task is done. */
    Map<String, Integer> alsoCounted() {
        var counted = new TreeMap<String, Integer>();
        also.forEach(task -> counted.merge(task, 1, Integer::sum));
        return counted;
    }

    /** The part of the line that a task with these conditions lays. */
    PipeJob laidUnder(List<String> conditions) {
        var fitting = runs.stream().filter(run -> run.fits(conditions)).toList();
        return new PipeJob(id, title, fitting, inletSize, sizing, leaves, also, sizes);
    }

    /** Feet as they are bought and timed, each run in whole feet. */
    BigDecimal wholeFeet() {
        return runs.stream().map(PipeRun::wholeFeet).reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    BigDecimal fittingCount() {
        return runs.stream().map(PipeRun::fittingCount).reduce(BigDecimal.ZERO, BigDecimal::add);
    }
}

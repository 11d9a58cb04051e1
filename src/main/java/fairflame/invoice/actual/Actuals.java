package fairflame.invoice.actual;

import fairflame.Refusal;
import java.math.BigDecimal;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * The work of a signed revision as it was known after somebody told of it. Every state is kept; the last one counts.
 *
 * @param by who told the last of it
 * @param quantities hours or pieces by line id; a line left out was not told of
 * @param outside work in no signed line
 * @param borne ids of lines of which the shop bears whatever goes beyond
 * @param tasks own hours by task, access left out
 * @param note what was said with it
 */
public record Actuals(
        String quote,
        int revision,
        String by,
        OffsetDateTime at,
        Map<String, BigDecimal> quantities,
        List<OutsideWork> outside,
        Set<String> borne,
        Map<String, BigDecimal> tasks,
        String note) {
    public Actuals {
        quantities = Map.copyOf(quantities);
        outside = List.copyOf(outside);
        borne = Set.copyOf(borne);
        tasks = Map.copyOf(tasks);
    }

    /** Nothing was told yet. */
    public static Actuals none(String quote, int revision, OffsetDateTime at) {
        return new Actuals(quote, revision, "", at, Map.of(), List.of(), Set.of(), Map.of(), "");
    }

    /** The state after one more entry; a figure told before changes only with a note that says why. */
    public Actuals after(ActualEntry entry, String who, OffsetDateTime when) {
        if (entry.isEmpty()) {
            throw Refusal.missing("work as it was done", "a quantity of a line, hours of a task or work outside");
        }
        if (entry.note().isBlank()) {
            refuseChange(quantities, entry.quantities(), "quantity of line ");
            refuseChange(tasks, entry.tasks(), "hours of task ");
            outside.forEach(old -> entry.outside().stream()
                    .filter(now -> now.isCalled(old.words()) && !now.equals(old))
                    .findFirst()
                    .ifPresent(now -> {
                        throw unexplained("worth of " + old.words(), old.worth() + " -> " + now.worth());
                    }));
        }
        var carried = new TreeSet<>(borne);
        carried.addAll(entry.borne());
        carried.removeAll(entry.charged());
        return new Actuals(
                quote,
                revision,
                who,
                when,
                both(quantities, entry.quantities()),
                outsideAfter(entry.outside()),
                carried,
                both(tasks, entry.tasks()),
                entry.note().strip());
    }

    private static void refuseChange(Map<String, BigDecimal> before, Map<String, BigDecimal> now, String what) {
        new TreeMap<>(now).forEach((id, figure) -> {
            var old = before.get(id);
            if (old != null && old.compareTo(figure) != 0) {
                throw unexplained(what + id, old.toPlainString() + " -> " + figure.toPlainString());
            }
        });
    }

    private static Refusal unexplained(String what, String change) {
        return Refusal.notAllowed(what, change, "a change of what was told before with a note that says why");
    }

    private static Map<String, BigDecimal> both(Map<String, BigDecimal> before, Map<String, BigDecimal> now) {
        var all = new TreeMap<>(before);
        all.putAll(now);
        return all;
    }

    private List<OutsideWork> outsideAfter(List<OutsideWork> now) {
        var all = new ArrayList<OutsideWork>();
        outside.stream()
                .filter(old -> now.stream().noneMatch(other -> other.isCalled(old.words())))
                .forEach(all::add);
        now.stream().filter(work -> work.worth().isPositive()).forEach(all::add);
        return all;
    }

    /** Whether anything was told. */
    public boolean told() {
        return !by.isEmpty();
    }
}

package fairflame.visit;

import fairflame.gas.Firing;
import fairflame.gas.Layout;
import fairflame.gas.Plan;
import fairflame.gas.PressureProfile;
import fairflame.gas.Segment;
import fairflame.quantity.Length;
import fairflame.quantity.Pressure;
import fairflame.quote.Quote;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;

/**
 * The gas line of a quote as a customer is told of it: the way of the gas to the heater today and after the suggested
 * work, and what reaches the heater with everything on. Other branches are left out.
 *
 * @param others other gas appliances on the line
 */
public record LineStory(Way today, Way after, int others) {
    /**
     * The pipes from the source to the heater, in the order of the gas.
     *
     * @param reaches pressure at the heater with everything on
     * @param needs the least the heater works with
     */
    public record Way(List<Run> runs, Pressure reaches, Pressure needs) {
        public Way {
            runs = List.copyOf(runs);
        }

        public boolean enough() {
            return reaches.compareTo(needs) >= 0;
        }
    }

    /**
     * One pipe.
     *
     * @param size as stamped, such as {@code 3/4}
     * @param material in words
     * @param bore inside width, where the tables know it
     * @param fresh true when the work lays it
     */
    public record Run(String size, String material, Length length, Optional<Length> bore, boolean fresh) {}

    /** The story of a quote whose suggested work is on the gas line; empty for any other, or when it cannot be told anew. */
    public static Optional<LineStory> of(Workplace workplace, Quote quote) {
        var library = workplace.library().in(quote);
        return new Drafts(workplace)
                .visit(quote.visit())
                .map(text -> Examination.of(library.visits().read(text), library))
                .flatMap(examined -> examined.layout()
                        .flatMap(layout -> new QuoteDrawing(library)
                                .plan(quote, examined)
                                .map(plan -> told(library, layout, plan))));
    }

    private static LineStory told(Library library, Layout layout, Plan plan) {
        return new LineStory(
                way(library, layout, layout),
                way(library, layout, plan.after()),
                layout.appliances().size() - 1);
    }

    private static Way way(Library library, Layout before, Layout layout) {
        var heater = before.largest().id();
        var state =
                PressureProfile.of(library.tables(), layout, Firing.all(layout)).appliance(heater);
        Deque<Run> runs = new ArrayDeque<>();
        var seen = new HashSet<String>();
        var node = layout.appliance(heater).node();
        while (seen.add(node)) {
            var end = node;
            var into = layout.segments().stream()
                    .filter(segment -> segment.to().equals(end))
                    .findFirst();
            if (into.isPresent()) {
                runs.addFirst(run(library, before, into.get()));
                node = into.get().from();
            }
        }
        return new Way(
                List.copyOf(runs),
                state.pressure(),
                layout.appliance(heater).inlet().minimum());
    }

    private static Run run(Library library, Layout before, Segment segment) {
        var pipe = segment.pipe();
        var fresh = before.segments().stream()
                .noneMatch(old -> old.id().equals(segment.id()) && old.pipe().equals(pipe));
        return new Run(
                pipe.size(),
                pipe.material().words(),
                segment.route().length(),
                library.tables().bore(pipe),
                fresh);
    }
}

package fairflame.gas;

import fairflame.Refusal;
import fairflame.quantity.GasFlow;
import fairflame.quantity.Length;
import fairflame.quantity.Pressure;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The sizes that the code's tables ask of a layout.
 *
 * @param segments in the order of the flow
 * @param notes what the reader has to know about the whole, such as the reason of a diversity
 */
public record Sizing(Method method, List<SegmentSize> segments, SupplyCheck supply, List<String> notes) {
    public Sizing {
        segments = List.copyOf(segments);
        notes = List.copyOf(notes);
    }

    /** Sizes every segment in its own material. */
    public static Sizing of(GasTables tables, Layout layout, Method method) {
        if (method == Method.HYBRID && layout.regulators().isEmpty()) {
            throw Refusal.notAllowed(
                    "method hybrid",
                    layout.site(),
                    "a layout with a line regulator; else longest-length, branch-length");
        }
        return new SizeSearch(tables, layout, method).sizing();
    }

    public SegmentSize segment(String id) {
        return segments.stream()
                .filter(size -> size.id().equals(id))
                .findFirst()
                .orElseThrow(() -> Refusal.unknown("segment", id, "a segment of the layout"));
    }

    /** Whether no segment is too small. */
    public boolean enough() {
        return segments.stream().allMatch(SegmentSize::enough);
    }

    static List<String> notes(Layout layout) {
        var notes = new ArrayList<String>(layout.gas().assumed());
        layout.diversity()
                .ifPresent(diversity -> notes.add("shared pipe is sized for " + Figures.percent(diversity.share())
                        + " of the connected load: " + diversity.reason()));
        return notes;
    }

    /**
     * The size of one segment.
     *
     * @param lengthUsed the length that the tables were entered with
     * @param supply pressure at the head of its zone
     * @param drop allowed in its zone
     * @param required the least size of this material that carries the flow; empty when none does
     * @param capacity of the required size; empty when there is none
     * @param carries what the installed size carries over this length
     */
    public record SegmentSize(
            String id,
            GasFlow flow,
            Length lengthUsed,
            Pressure supply,
            Pressure drop,
            Optional<Pipe> required,
            Optional<Capacity> capacity,
            Pipe installed,
            Capacity carries) {
        public boolean enough() {
            return carries.carries(flow.cubicFeetPerHour());
        }
    }
}

package fairflame.screen.line;

import fairflame.gas.Layout;
import fairflame.screen.bench.Draft;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.regex.Pattern;

/**
 * Where each node of a line stands in its drawing, in ems: the source left, a column for every run further on, a row for
 * every end. A node can be moved by hand; all behind it moves along.
 */
public final class LinePlaces {
    /** Width of a run's column. */
    static final double COLUMN = 14.5;
    /** Height of an end's row. */
    static final double ROW = 9.5;

    private static final String MOVED = "line.at.";
    private static final Pattern AWAY = Pattern.compile("(-?\\d{1,3}(?:\\.\\d)?),(-?\\d{1,3}(?:\\.\\d)?)");
    private static final double HALF = 0.5;

    private final Layout layout;
    private final Draft draft;
    private final Map<String, Spot> nodes = new LinkedHashMap<>();
    private final Map<String, Spot> appliances = new HashMap<>();

    /** A place: ems from the first node to the right, and from the top downwards. */
    public record Spot(double x, double y) {
        Spot moved(Spot by) {
            return new Spot(x + by.x(), y + by.y());
        }
    }

    private LinePlaces(Layout layout, Draft draft) {
        this.layout = layout;
        this.draft = draft;
    }

    /** The places of a line, moved as the draft says. */
    public static LinePlaces of(Layout layout, Draft draft) {
        var places = new LinePlaces(layout, draft);
        var rows = LineRows.of(layout);
        rows.nodes().forEach((node, cell) -> places.nodes.put(node, spot(cell)));
        rows.appliances().forEach((id, cell) -> places.appliances.put(id, spot(cell)));
        places.move(layout.source().node(), new Spot(0, 0));
        return places;
    }

    private static Spot spot(LineRows.Cell cell) {
        return new Spot(cell.column() * COLUMN, (cell.row() + HALF) * ROW);
    }

    private void move(String node, Spot before) {
        var by = before.moved(away(node));
        nodes.computeIfPresent(node, (name, spot) -> spot.moved(by));
        layout.appliances().stream()
                .filter(appliance -> appliance.node().equals(node))
                .forEach(appliance -> appliances.computeIfPresent(appliance.id(), (id, spot) -> spot.moved(by)));
        layout.segments().stream()
                .filter(segment -> segment.from().equals(node))
                .forEach(segment -> move(segment.to(), by));
    }

    private Spot away(String node) {
        var match = AWAY.matcher(draft.get(MOVED + node));
        return match.matches()
                ? new Spot(Double.parseDouble(match.group(1)), Double.parseDouble(match.group(2)))
                : new Spot(0, 0);
    }

    /** Where a node stands; the drawing's first place for a node that the line does not have. */
    public Spot node(String node) {
        return nodes.getOrDefault(node, new Spot(0, 0));
    }

    /** Where an appliance stands. */
    public Spot appliance(String id) {
        return appliances.getOrDefault(id, new Spot(0, 0));
    }

    /** Size of the drawing: the furthest places. */
    Spot furthest() {
        var all = java.util.stream.Stream.concat(nodes.values().stream(), appliances.values().stream())
                .toList();
        return new Spot(
                all.stream().mapToDouble(Spot::x).max().orElse(0),
                all.stream().mapToDouble(Spot::y).max().orElse(0) + ROW * HALF);
    }

    /** A draft in which a node stands further right and down by so many ems; never left of or above the drawing. */
    public Draft moved(String node, double right, double down) {
        var stands = node(node);
        var was = away(node);
        var x = was.x() + Math.max(right, Math.min(0, -was.x()));
        var y = was.y() + Math.max(down, 1 - stands.y());
        return draft.with(MOVED + node, rounded(x) + "," + rounded(y));
    }

    private static String rounded(double ems) {
        return String.format(java.util.Locale.ROOT, "%.1f", Math.max(-99, Math.min(99, ems)));
    }

    /** A draft in which nothing was moved by hand. */
    public static Draft tidied(Draft draft) {
        var tidy = draft;
        for (var field : draft.fields().keySet()) {
            if (field.startsWith(MOVED)) {
                tidy = tidy.with(field, "");
            }
        }
        return tidy;
    }

    /** Whether anything was moved by hand. */
    static boolean untidy(Draft draft) {
        return draft.fields().keySet().stream().anyMatch(field -> field.startsWith(MOVED));
    }
}

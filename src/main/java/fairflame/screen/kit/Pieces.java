package fairflame.screen.kit;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import javafx.collections.ObservableList;
import javafx.scene.Node;

/**
 * Children that stay while what they show stays the same: after a keystroke only what changed is drawn anew, and a key
 * that has the focus keeps it.
 */
public final class Pieces {
    private final ObservableList<Node> place;
    private Map<Object, Node> shown = Map.of();

    /**
     * One child.
     *
     * @param shows all that its look depends on; equal values look the same
     * @param drawn draws it
     */
    public record Piece(Object shows, Supplier<? extends Node> drawn) {}

    /** Fills a place, such as the children of a box, that nobody else fills. */
    public Pieces(ObservableList<Node> place) {
        this.place = place;
    }

    /** Shows these pieces in this order. */
    public void show(List<Piece> pieces) {
        var next = new LinkedHashMap<Object, Node>();
        for (var piece : pieces) {
            // The same words may stand twice on a sheet.
            var key = next.containsKey(piece.shows()) ? List.of(piece.shows(), next.size()) : piece.shows();
            var kept = shown.get(key);
            next.put(key, kept == null ? piece.drawn().get() : kept);
        }
        shown = next;
        replace(List.copyOf(next.values()));
    }

    /** Touches only the stretch in which old and new children differ. */
    private void replace(List<Node> wanted) {
        var least = Math.min(place.size(), wanted.size());
        var front = 0;
        while (front < least && place.get(front) == wanted.get(front)) {
            front++;
        }
        var back = 0;
        while (back < least - front && place.get(place.size() - 1 - back) == wanted.get(wanted.size() - 1 - back)) {
            back++;
        }
        if (front + back < place.size()) {
            place.remove(front, place.size() - back);
        }
        if (front + back < wanted.size()) {
            place.addAll(front, wanted.subList(front, wanted.size() - back));
        }
    }
}

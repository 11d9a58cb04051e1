package fairflame.gas;

import fairflame.quantity.Length;

/** Pipe of one size between two nodes of a layout; gas flows from {@code from} to {@code to}. */
public record Segment(String id, String from, String to, Pipe pipe, Route route) {
    /** Length with all fittings in the pipe that is there. */
    public Length equivalent(GasTables tables) {
        return route.equivalent(tables, pipe);
    }

    /** The same way in another pipe. */
    Segment in(GasTables tables, Pipe other) {
        return new Segment(id, from, to, other, route.in(tables, pipe, other));
    }
}

package fairflame.gas;

import fairflame.Refusal;
import fairflame.quantity.Length;

/**
 * The way a stretch of pipe takes, whatever pipe lies there.
 *
 * @param length of the pipe itself, above 0, at most 5,000 ft
 */
public record Route(Length length, Fittings fittings, Place place) {
    private static final double LONGEST = 5_000;

    public Route {
        // A length of nothing is a mistake in the layout: two nodes that are one.
        if (length.feet() <= 0 || length.feet() > LONGEST) {
            throw Refusal.outOfRange("length", Figures.feet(length), "above 0 and up to 5000 ft");
        }
        if (fittings.estimated().feet() > LONGEST) {
            throw Refusal.outOfRange("fittings length", Figures.feet(fittings.estimated()), "up to 5000 ft");
        }
    }

    /** Length with all fittings, in the pipe that lies there. */
    Length equivalent(GasTables tables, Pipe pipe) {
        return length.plus(tables.equivalentLength(pipe, fittings.counts())).plus(fittings.estimated());
    }

    /** Length as the sizing methods take it: a few fittings are in the tables already. */
    Length forSizing(GasTables tables, Pipe pipe) {
        return fittings.countInSizing() ? equivalent(tables, pipe) : length;
    }

    /** The same way in another pipe. An estimate of fittings is a number of bores and grows with the pipe. */
    Route in(GasTables tables, Pipe installed, Pipe other) {
        var was = tables.bore(installed);
        var is = tables.bore(other);
        var widening =
                was.isPresent() && is.isPresent() ? is.get().feet() / was.get().feet() : 1;
        var estimated = Length.ofFeet(fittings.estimated().feet() * widening);
        return new Route(length, new Fittings(fittings.counts(), estimated), place);
    }
}

package fairflame.document.page;

/**
 * How words are set.
 *
 * @param size in points
 * @param leading distance between baselines in points
 */
public record Style(Face face, double size, double leading, Ink ink) {
    public Style with(Face other) {
        return new Style(other, size, leading, ink);
    }

    public Style with(Ink other) {
        return new Style(face, size, leading, other);
    }

    /** The same style in another size; the leading keeps its proportion. */
    public Style sized(double points) {
        return new Style(face, points, leading / size * points, ink);
    }

    /** The same letters in lines of another height, to stand beside a larger style. */
    public Style leaded(double points) {
        return new Style(face, size, points, ink);
    }

    // Depends on the leading alone, so that sizes of one leading stand on one line. A capital, 0.668 of the size high
    // in every bundled cut, stands in the middle of the line when the leading is 4/3 of the size.
    /** From the top of a line to its baseline. */
    double ascent() {
        return 0.75 * leading;
    }
}

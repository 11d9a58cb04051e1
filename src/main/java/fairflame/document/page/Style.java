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

    /** From the top of a line to its baseline. */
    double ascent() {
        // 0.668 of the size is the height of a capital in every bundled cut: its middle stands in the line's middle.
        return (leading + 0.668 * size) / 2;
    }
}

package fairflame.document.page;

/**
 * A drawn line.
 *
 * @param width in points
 */
public record Stroke(Ink ink, double width, Dash dash) {
    public static Stroke solid(Ink ink, double width) {
        return new Stroke(ink, width, Dash.SOLID);
    }

    public static Stroke dashed(Ink ink, double width) {
        return new Stroke(ink, width, Dash.DASHED);
    }
}

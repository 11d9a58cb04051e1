package fairflame.document.page;

/** Something drawn: a gauge, a gas line, a signature. */
public interface Drawing {
    /** Height in points at a width in points. */
    double height(double width);

    /** Draws inside the place and its height. */
    void draw(Pen pen, Place place);

    /** The picture in words, for a reader who cannot see it; empty when the words beside it say all. */
    String told();
}

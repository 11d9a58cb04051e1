package fairflame.document.page;

/** A line over the whole width. */
public record RuleLine(Stroke stroke) implements Block {
    @Override
    public double height(double width) {
        return stroke.width();
    }

    @Override
    public void draw(Pen pen, Place place) {
        double y = place.top() + stroke.width() / 2;
        pen.decor(() -> pen.line(new Point(place.x(), y), new Point(place.x() + place.width(), y), stroke));
    }
}

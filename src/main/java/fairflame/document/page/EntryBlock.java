package fairflame.document.page;

/**
 * A field as a block; never broken.
 *
 * @param widest widest it gets, in points
 * @param tall height in points
 */
public record EntryBlock(Entry entry, double widest, double tall) implements Block {
    private static final Stroke EDGE = Stroke.solid(Ink.INK, 0.8);

    @Override
    public double height(double width) {
        return tall;
    }

    @Override
    public void draw(Pen pen, Place place) {
        var corner = new Point(place.x(), place.top());
        double wide = Math.min(widest, place.width());
        // The field's own edge is not drawn by every reader while the field is empty: it stands on the page.
        switch (entry.kind()) {
            case RADIO -> pen.decor(() -> ring(pen, corner, wide));
            case FIXED -> pen.decor(() -> {});
            default ->
                pen.decor(() -> {
                    pen.rectangle(corner, wide, tall, Ink.PAPER);
                    pen.frame(corner, wide, tall, EDGE);
                });
        }
        pen.entry(entry, corner, wide, tall);
    }

    private void ring(Pen pen, Point corner, double wide) {
        var centre = new Point(corner.x() + wide / 2, corner.y() + tall / 2);
        double radius = Math.min(wide, tall) / 2;
        pen.disc(centre, radius, EDGE.ink());
        pen.disc(centre, radius - EDGE.width(), Ink.PAPER);
    }
}

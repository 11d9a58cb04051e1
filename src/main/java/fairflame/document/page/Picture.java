package fairflame.document.page;

/** A drawing as a block; never broken. */
public record Picture(Drawing drawing) implements Block {
    @Override
    public double height(double width) {
        return drawing.height(width);
    }

    @Override
    public void draw(Pen pen, Place place) {
        if (drawing.told().isEmpty()) {
            pen.decor(() -> drawing.draw(pen, place));
        } else {
            pen.picture(drawing.told(), () -> drawing.draw(pen, place));
        }
    }
}

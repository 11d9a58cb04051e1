package fairflame.document.page;

/** Empty height; left out at the top of a page. */
public record Space(double points) implements Block {
    @Override
    public double height(double width) {
        return points;
    }

    @Override
    public void draw(Pen pen, Place place) {
        // Nothing is drawn.
    }

    @Override
    public boolean clings() {
        return true;
    }

    @Override
    public boolean vanishes() {
        return true;
    }
}

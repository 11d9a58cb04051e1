package fairflame.document.page;

/** Where a block stands: its left and upper edge and its width, in points from the page's upper left corner. */
public record Place(double x, double top, double width) {
    Place down(double points) {
        return new Place(x, top + points, width);
    }
}

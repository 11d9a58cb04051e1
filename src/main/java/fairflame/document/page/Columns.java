package fairflame.document.page;

import java.util.ArrayList;
import java.util.List;

/**
 * The columns of a grid.
 *
 * @param gap free points between two columns
 */
public record Columns(List<Column> columns, double gap) {
    public Columns {
        columns = List.copyOf(columns);
    }

    /** As wide as its points, plus its share of what is left. */
    public record Column(double points, double share) {}

    public static Column fixed(double points) {
        return new Column(points, 0);
    }

    public static Column share(double share) {
        return new Column(0, share);
    }

    /** Columns of equal width. */
    public static Columns equal(int count, double gap) {
        var equal = new ArrayList<Column>();
        for (int i = 0; i < count; i++) {
            equal.add(share(1));
        }
        return new Columns(equal, gap);
    }

    /** Left edge and width of each column, from the left edge of the grid. */
    List<Place> places(double width) {
        double points = columns.stream().mapToDouble(Column::points).sum();
        double shares = columns.stream().mapToDouble(Column::share).sum();
        double spare = width - points - gap * (columns.size() - 1);
        var places = new ArrayList<Place>();
        double x = 0;
        for (var column : columns) {
            double wide = column.points() + (shares == 0 ? 0 : spare * column.share() / shares);
            places.add(new Place(x, 0, wide));
            x += wide + gap;
        }
        return places;
    }
}

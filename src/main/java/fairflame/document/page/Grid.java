package fairflame.document.page;

import java.util.ArrayList;
import java.util.List;

/**
 * Rows of cells in columns: a table, or blocks side by side. Broken between rows; a row taller than a page is broken
 * inside. Header rows are repeated on each page.
 */
public record Grid(Columns columns, List<Row> header, List<Row> rows, Kind kind) implements Block {
    /** What the grid is to a reader who cannot see it. */
    public enum Kind {
        TABLE,
        LAYOUT,
        /** Side by side, each column in a box over all its rows. */
        BOXES
    }

    private static final Stroke BOX = Stroke.solid(Ink.SLATE, 0.8);
    private static final double PADDING = 9;

    public Grid {
        header = List.copyOf(header);
        rows = List.copyOf(rows);
    }

    /** Blocks side by side. */
    public static Grid beside(Columns columns, Block... cells) {
        return new Grid(columns, List.of(), List.of(Row.of(cells)), Kind.LAYOUT);
    }

    @Override
    public double height(double width) {
        return sum(header, width) + sum(rows, width);
    }

    private double sum(List<Row> some, double width) {
        return some.stream().mapToDouble(row -> height(row, width)).sum();
    }

    private double height(Row row, double width) {
        double tallest = 0;
        for (int i = 0; i < row.cells().size(); i++) {
            tallest = Math.max(
                    tallest, row.cells().get(i).height(place(row, i, width).width()));
        }
        return row.above() + tallest + row.below();
    }

    private Place place(Row row, int cell, double width) {
        var places = columns.places(width);
        var place = places.get(cell);
        if (cell < row.cells().size() - 1) {
            return inside(place);
        }
        var last = places.get(places.size() - 1);
        return inside(new Place(place.x(), 0, last.x() + last.width() - place.x()));
    }

    private Place inside(Place column) {
        return kind == Kind.BOXES ? new Place(column.x() + PADDING, 0, column.width() - 2 * PADDING) : column;
    }

    @Override
    public Split split(double width, Room room) {
        double used = sum(header, width);
        for (int i = 0; i < rows.size(); i++) {
            var row = rows.get(i);
            double height = height(row, width);
            if (!room.holds(used + height)) {
                return divided(i, width, room.less(used, placed(i).isEmpty()));
            }
            used += height;
        }
        return Split.whole(this);
    }

    /** The rows before one that may stay on the page without it. */
    private List<Row> placed(int at) {
        int keep = at;
        while (keep > 0 && rows.get(keep - 1).clings()) {
            keep--;
        }
        return rows.subList(0, keep);
    }

    private Split divided(int at, double width, Room left) {
        // On a fresh page a row that does not fit is broken, with the rows that cling to it above.
        var head = new ArrayList<>(left.fresh() ? rows.subList(0, at) : placed(at));
        var rest = new ArrayList<>(rows.subList(head.size(), rows.size()));
        if (left.fresh()) {
            breakRow(head, rest, width, left);
        }
        return head.isEmpty() ? Split.nothing(this) : Split.of(with(head), with(rest));
    }

    private void breakRow(List<Row> head, List<Row> rest, double width, Room left) {
        var row = rest.get(0);
        var room = left.less(row.above() + row.below(), true);
        var heads = new ArrayList<Block>();
        var rests = new ArrayList<Block>();
        boolean any = false;
        for (int i = 0; i < row.cells().size(); i++) {
            var split = row.cells().get(i).split(place(row, i, width).width(), room);
            any |= split.head().isPresent();
            heads.add(split.head().orElse(new Space(0)));
            rests.add(split.rest().orElse(new Space(0)));
        }
        if (any) {
            head.add(row.holding(heads));
            rest.set(0, row.holding(rests));
        }
    }

    private Grid with(List<Row> others) {
        return new Grid(columns, header, others, kind);
    }

    @Override
    public void draw(Pen pen, Place place) {
        if (kind == Kind.TABLE) {
            pen.group(Role.TABLE, () -> drawRows(pen, place));
        } else {
            drawRows(pen, place);
        }
    }

    private void drawRows(Pen pen, Place place) {
        if (kind == Kind.BOXES) {
            drawBoxes(pen, place);
        }
        double top = place.top();
        for (int i = 0; i < header.size() + rows.size(); i++) {
            boolean heads = i < header.size();
            var row = heads ? header.get(i) : rows.get(i - header.size());
            var at = new Place(place.x(), top, place.width());
            double height = height(row, place.width());
            drawGround(pen, row, at, height);
            if (kind == Kind.TABLE) {
                pen.group(Role.ROW, () -> drawCells(pen, row, at, heads ? Role.HEADER_CELL : Role.CELL));
            } else {
                drawCells(pen, row, at, Role.SECTION);
            }
            top += height;
        }
    }

    private void drawBoxes(Pen pen, Place place) {
        double height = height(place.width());
        pen.decor(() -> columns.places(place.width())
                .forEach(column ->
                        pen.frame(new Point(place.x() + column.x(), place.top()), column.width(), height, BOX)));
    }

    private void drawGround(Pen pen, Row row, Place at, double height) {
        pen.decor(() -> {
            row.fill().ifPresent(ink -> pen.rectangle(new Point(at.x(), at.top()), at.width(), height, ink));
            row.rule().ifPresent(stroke -> drawRule(pen, at, at.top() + height - stroke.width() / 2, stroke));
        });
    }

    private void drawRule(Pen pen, Place at, double y, Stroke stroke) {
        var spans = kind == Kind.BOXES ? columns.places(at.width()) : List.of(new Place(0, 0, at.width()));
        for (var span : spans) {
            double left = at.x() + span.x();
            pen.line(new Point(left, y), new Point(left + span.width(), y), stroke);
        }
    }

    private void drawCells(Pen pen, Row row, Place at, Role role) {
        for (int i = 0; i < row.cells().size(); i++) {
            var inside = place(row, i, at.width());
            var cell = row.cells().get(i);
            var spot = new Place(at.x() + inside.x(), at.top() + row.above(), inside.width());
            if (kind == Kind.TABLE) {
                pen.group(role, () -> cell.draw(pen, spot));
            } else {
                cell.draw(pen, spot);
            }
        }
    }
}

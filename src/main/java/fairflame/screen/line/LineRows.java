package fairflame.screen.line;

import fairflame.gas.Layout;
import fairflame.gas.Segment;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Rows and columns of a line's drawing: the longest way runs straight along the top, and every branch hangs from its tee
 * in the first row in which nothing is in its way. A branch far from another shares its row, so that a long line stays
 * low.
 */
final class LineRows {
    private final Layout layout;

    private LineRows(Layout layout) {
        this.layout = layout;
    }

    /** One field of the grid; a run fills the field of its own column, an appliance that of its node. */
    record Cell(int row, int column) {
        Cell lower(int rows) {
            return new Cell(row + rows, column);
        }
    }

    /** What hangs on a node, with the node in row 0. */
    record Block(Map<String, Cell> nodes, Map<String, Cell> appliances, Set<Cell> filled) {
        private static Block empty() {
            return new Block(new HashMap<>(), new HashMap<>(), new HashSet<>());
        }

        /** Hangs another block under a tee in this column, in the first row from this one where it fits. */
        private void hang(Block other, int column, int from) {
            var row = from;
            while (!fits(other, column, row)) {
                row++;
            }
            var down = row;
            for (int i = 1; i <= down; i++) {
                filled.add(new Cell(i, column));
            }
            other.nodes.forEach((node, cell) -> nodes.put(node, cell.lower(down)));
            other.appliances.forEach((id, cell) -> appliances.put(id, cell.lower(down)));
            other.filled.forEach(cell -> filled.add(cell.lower(down)));
        }

        private boolean fits(Block other, int column, int row) {
            for (int i = 1; i < row; i++) {
                if (filled.contains(new Cell(i, column))) {
                    return false;
                }
            }
            return other.filled.stream().map(cell -> cell.lower(row)).noneMatch(filled::contains);
        }
    }

    static Block of(Layout layout) {
        return new LineRows(layout).block(layout.source().node(), 0);
    }

    private Block block(String node, int column) {
        var block = Block.empty();
        block.nodes().put(node, new Cell(0, column));
        for (var segment : out(node)) {
            var branch = block(segment.to(), column + 1);
            branch.filled().add(new Cell(0, column));
            block.hang(branch, column, block.filled().isEmpty() ? 0 : 1);
        }
        for (var appliance : layout.appliances()) {
            if (appliance.node().equals(node)) {
                var box = Block.empty();
                box.appliances().put(appliance.id(), new Cell(0, column));
                box.filled().add(new Cell(0, column));
                block.hang(box, column, block.filled().isEmpty() ? 0 : 1);
            }
        }
        return block;
    }

    /** The runs that leave a node, the one with the longest way behind it first. */
    private List<Segment> out(String node) {
        return layout.segments().stream()
                .filter(segment -> segment.from().equals(node))
                .sorted(Comparator.comparingInt((Segment segment) -> -depth(segment.to())))
                .toList();
    }

    private int depth(String node) {
        return layout.segments().stream()
                .filter(segment -> segment.from().equals(node))
                .mapToInt(segment -> 1 + depth(segment.to()))
                .max()
                .orElse(0);
    }
}

package fairflame.document.page;

import java.util.List;
import java.util.Optional;

/**
 * A row of a grid. The last cell reaches over the columns that have no cell of their own.
 *
 * @param above free points over the cells
 * @param below free points under the cells
 * @param rule line at the foot of the row
 * @param fill behind the row
 * @param clings true to stay with the next row
 */
public record Row(
        List<? extends Block> cells,
        double above,
        double below,
        Optional<Stroke> rule,
        Optional<Ink> fill,
        boolean clings) {
    public Row {
        cells = List.copyOf(cells);
    }

    public static Row of(Block... cells) {
        return new Row(List.of(cells), 0, 0, Optional.empty(), Optional.empty(), false);
    }

    public static Row of(List<? extends Block> cells) {
        return new Row(cells, 0, 0, Optional.empty(), Optional.empty(), false);
    }

    public Row padded(double over, double under) {
        return new Row(cells, over, under, rule, fill, clings);
    }

    public Row ruled(Stroke stroke) {
        return new Row(cells, above, below, Optional.of(stroke), fill, clings);
    }

    public Row filled(Ink ink) {
        return new Row(cells, above, below, rule, Optional.of(ink), clings);
    }

    public Row clinging() {
        return new Row(cells, above, below, rule, fill, true);
    }

    Row holding(List<? extends Block> others) {
        return new Row(others, above, below, rule, fill, clings);
    }
}

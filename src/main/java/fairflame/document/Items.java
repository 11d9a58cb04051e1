package fairflame.document;

import fairflame.catalog.TaxRule;
import fairflame.quote.Line;
import fairflame.quote.Totals;
import java.util.List;

/** Priced lines with their totals and the tax rule that made them: what a sheet of formulas is written from. */
record Items(List<Line> lines, Totals totals, TaxRule rule) {
    Items {
        lines = List.copyOf(lines);
    }

    boolean discounted() {
        return lines.stream().anyMatch(line -> !line.discount().isZero());
    }
}

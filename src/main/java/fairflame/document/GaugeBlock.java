package fairflame.document;

import fairflame.document.page.Align;
import fairflame.document.page.Block;
import fairflame.document.page.Columns;
import fairflame.document.page.Grid;
import fairflame.document.page.Paragraph;
import fairflame.document.page.Picture;
import fairflame.document.page.Row;
import fairflame.document.page.Stack;
import fairflame.document.page.Together;
import fairflame.quote.Gauge;
import fairflame.quote.Gauge.Verdict;
import java.util.ArrayList;
import java.util.List;

/** Gauges side by side: title, picture, verdict by shape and word, and what is allowed. */
final class GaugeBlock {
    /** Width that a gauge needs at least, in points. */
    static final double WIDTH = 124;

    private final PaperText text;

    GaugeBlock(PaperText text) {
        this.text = text;
    }

    /** A row of gauges, as many columns as asked for; the missing ones stay empty. */
    Block row(List<Gauge> gauges, int columns) {
        var rows = List.of(
                cells(gauges, columns, gauge -> Paragraph.of(gauge.title(), Type.SMALL_STRONG)),
                cells(gauges, columns, gauge -> new Picture(new GaugeDrawing(gauge, text)))
                        .padded(3, 5),
                cells(gauges, columns, this::verdict),
                cells(gauges, columns, gauge -> Paragraph.of(gauge.words(), Type.SMALL)),
                cells(gauges, columns, gauge -> Paragraph.of(allowed(gauge), Type.QUIET)));
        return new Together(new Grid(Columns.equal(columns, 12), List.of(), rows, Grid.Kind.LAYOUT));
    }

    private static Row cells(List<Gauge> gauges, int columns, java.util.function.Function<Gauge, Block> cell) {
        var cells = new ArrayList<Block>();
        gauges.forEach(gauge -> cells.add(cell.apply(gauge)));
        while (cells.size() < columns) {
            cells.add(new Stack(List.of()));
        }
        return Row.of(cells);
    }

    private Block verdict(Gauge gauge) {
        var word = Paragraph.of(verdict(gauge.verdict(), text), Type.STRONG.with(VerdictDrawing.ink(gauge.verdict())))
                .aligned(Align.LEFT);
        return Grid.beside(
                new Columns(List.of(Columns.fixed(VerdictDrawing.WIDTH), Columns.share(1)), 6),
                new Picture(new VerdictDrawing(gauge.verdict())),
                word);
    }

    static String verdict(Verdict verdict, PaperText text) {
        return text.say(
                switch (verdict) {
                    case GOOD -> Label.GOOD;
                    case EDGE -> Label.EDGE;
                    case OUTSIDE -> Label.OUTSIDE;
                });
    }

    private String allowed(Gauge gauge) {
        var figures = text.figures();
        var low = gauge.allowedLow().map(figures::shortest);
        var high = gauge.allowedHigh().map(figures::shortest);
        if (low.isPresent() && high.isPresent()) {
            return text.say(Label.ALLOWED_BETWEEN, low.get(), high.get(), gauge.unit());
        }
        return low.map(value -> text.say(Label.ALLOWED_FROM, value, gauge.unit()))
                .or(() -> high.map(value -> text.say(Label.ALLOWED_TO, value, gauge.unit())))
                .orElseGet(() -> text.say(Label.ALLOWED_UNKNOWN));
    }
}

package fairflame.document;

import static org.assertj.core.api.Assertions.assertThat;

import fairflame.document.page.PageFormat;
import fairflame.gas.Drawing;
import fairflame.gas.Drawing.Anchor;
import fairflame.gas.Drawing.Box;
import fairflame.gas.Drawing.Disc;
import fairflame.gas.Drawing.Ink;
import fairflame.gas.Drawing.Line;
import fairflame.gas.Drawing.Words;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class GasLinePictureTest {
    private static Drawing drawing(double width, double height) {
        return new Drawing(
                "Gas piping of the pool house",
                width,
                height,
                List.of(
                        new Line(10, 50, width - 10, 50, Ink.LAGOON, 3, List.of()),
                        new Line(10, 70, width - 10, 70, Ink.OXIDE, 2, List.of(6.0, 4.0)),
                        new Box(10, 20, 80, 24, 5, Ink.PAPER, Ink.INK, 1),
                        new Box(100, 20, 80, 24, 0, Ink.WHITE, Ink.INK, 0),
                        new Disc(width / 2, 50, 5, Ink.WHITE, Ink.COPPER, 2),
                        new Words(20, 36, Anchor.START, 13, true, Ink.INK, "meter"),
                        new Words(width / 2, 92, Anchor.MIDDLE, 12, false, Ink.SLATE, "84 ft of 3/4 in"),
                        new Words(width - 12, height - 10, Anchor.END, 12, false, Ink.INK, "heater 9.4 in w.c.")));
    }

    private static ReadBack paper(Drawing drawing) {
        var picture = Optional.<fairflame.document.page.Drawing>of(GasLinePicture.of(drawing));
        return new ReadBack(
                QuotePdf.write(GasLine.quote(), Optional.empty(), Papers.text(), PageFormat.LETTER, picture));
    }

    @Test
    void aSmallDrawingKeepsItsSizeAndALargeOneIsMadeToFit() {
        assertThat(GasLinePicture.of(drawing(300, 120)).height(504)).isEqualTo(120);
        assertThat(GasLinePicture.of(drawing(1008, 300)).height(504)).isEqualTo(150);
        assertThat(GasLinePicture.of(drawing(500, 2400)).height(504)).isLessThanOrEqualTo(600);
    }

    @Test
    void isSetInsideTheMarginsWithItsWords() throws IOException {
        for (var drawing : List.of(drawing(300, 120), drawing(1008, 300), drawing(500, 2400))) {
            var paper = paper(drawing);
            paper.assertWellSet(PageFormat.LETTER);
            assertThat(paper.text()).contains("84 ft of 3/4 in").contains("heater 9.4 in w.c.");
        }
    }

    @Test
    void everyInkOfADrawingIsAnInkOfThePaper() {
        for (var ink : Ink.values()) {
            assertThat(fairflame.document.page.Ink.valueOf(ink.name())).isNotNull();
        }
    }
}

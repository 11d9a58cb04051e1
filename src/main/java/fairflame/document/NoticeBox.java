package fairflame.document;

import fairflame.document.page.Block;
import fairflame.document.page.Columns;
import fairflame.document.page.Drawing;
import fairflame.document.page.Face;
import fairflame.document.page.Framed;
import fairflame.document.page.Grid;
import fairflame.document.page.Ink;
import fairflame.document.page.Paragraph;
import fairflame.document.page.Pen;
import fairflame.document.page.Picture;
import fairflame.document.page.Place;
import fairflame.document.page.Point;
import fairflame.document.page.Role;
import fairflame.document.page.Space;
import fairflame.document.page.Stack;
import fairflame.document.page.Stroke;
import fairflame.document.page.Style;
import fairflame.document.page.Together;
import java.util.List;
import java.util.Optional;

/** A box that cannot be missed: heavy frame, a bar at the left, a warning sign. */
final class NoticeBox {
    private static final double SIGN = 22;

    private NoticeBox() {}

    static Block of(String title, List<String> sentences, Ink ink) {
        var words = Stack.of(
                Paragraph.heading(Role.HEADING_3, title, Type.HEADING.sized(12).with(Face.BOLD)),
                new Space(3),
                Bullets.led(sentences, Type.TEXT));
        return around(words, ink);
    }

    /** One sentence in the same box. */
    static Block line(String sentence, Ink ink) {
        return around(Stack.of(new Space(3), Paragraph.of(sentence, Type.STRONG)), ink);
    }

    /** Any words in the same box. */
    static Block around(Block words, Ink ink) {
        var columns = new Columns(List.of(Columns.fixed(SIGN), Columns.share(1)), 10);
        var inside = Grid.beside(columns, new Picture(new Sign(ink)), words);
        return new Together(
                new Framed(inside, 9, Ink.PAPER, Stroke.solid(ink, 1.6), Optional.of(Stroke.solid(ink, 6))));
    }

    /** A triangle with an exclamation mark. */
    private record Sign(Ink ink) implements Drawing {
        @Override
        public double height(double width) {
            return width * 0.88;
        }

        @Override
        public String told() {
            return "";
        }

        @Override
        public void draw(Pen pen, Place place) {
            double middle = place.x() + place.width() / 2;
            double foot = place.top() + height(place.width());
            pen.area(
                    List.of(
                            new Point(middle, place.top()),
                            new Point(place.x() + place.width(), foot),
                            new Point(place.x(), foot)),
                    ink);
            pen.words("!", new Style(Face.BOLD, 13, 13, Ink.WHITE), middle - 2.1, foot - 3.2);
        }
    }
}

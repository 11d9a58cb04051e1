package fairflame.gas;

import java.util.Locale;
import java.util.stream.Collectors;

/** Writes a drawing as an SVG text that scales to any width. */
public final class SvgDrawing {
    private static final String FONT = "'Atkinson Hyperlegible Next', sans-serif";

    private SvgDrawing() {}

    public static String of(Drawing drawing) {
        var shapes = drawing.shapes().stream().map(SvgDrawing::shape).collect(Collectors.joining("\n"));
        return String.format(
                Locale.ROOT,
                """
                <svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 %s %s" width="%s" height="%s" role="img"\
                 font-family="%s">
                <title>%s</title>
                <rect width="100%%" height="100%%" fill="%s"/>
                %s
                </svg>
                """,
                number(drawing.width()),
                number(drawing.height()),
                number(drawing.width()),
                number(drawing.height()),
                FONT,
                escaped(drawing.title()),
                Drawing.Ink.PAPER.hex(),
                shapes);
    }

    private static String shape(Drawing.Shape shape) {
        if (shape instanceof Drawing.Line line) {
            return line(line);
        }
        if (shape instanceof Drawing.Box box) {
            return box(box);
        }
        if (shape instanceof Drawing.Disc disc) {
            return disc(disc);
        }
        return words((Drawing.Words) shape);
    }

    private static String line(Drawing.Line line) {
        var dashes = line.dashes().stream().map(SvgDrawing::number).collect(Collectors.joining(" "));
        return "<line x1=\"" + number(line.x1()) + "\" y1=\"" + number(line.y1()) + "\" x2=\"" + number(line.x2())
                + "\" y2=\"" + number(line.y2()) + "\" stroke=\"" + line.ink().hex() + "\" stroke-width=\""
                + number(line.width()) + "\"" + (dashes.isEmpty() ? "" : " stroke-dasharray=\"" + dashes + "\"") + "/>";
    }

    private static String box(Drawing.Box box) {
        return "<rect x=\"" + number(box.x()) + "\" y=\"" + number(box.y()) + "\" width=\"" + number(box.width())
                + "\" height=\"" + number(box.height()) + "\" rx=\"" + number(box.corner()) + "\" fill=\""
                + box.fill().hex() + "\"" + outline(box.outline(), box.stroke()) + "/>";
    }

    private static String disc(Drawing.Disc disc) {
        return "<circle cx=\"" + number(disc.x()) + "\" cy=\"" + number(disc.y()) + "\" r=\"" + number(disc.radius())
                + "\" fill=\"" + disc.fill().hex() + "\"" + outline(disc.outline(), disc.stroke()) + "/>";
    }

    private static String outline(Drawing.Ink ink, double stroke) {
        return stroke == 0 ? "" : " stroke=\"" + ink.hex() + "\" stroke-width=\"" + number(stroke) + "\"";
    }

    private static String words(Drawing.Words words) {
        return "<text x=\"" + number(words.x()) + "\" y=\"" + number(words.y()) + "\" font-size=\""
                + number(words.size()) + "\"" + (words.bold() ? " font-weight=\"700\"" : "")
                + " text-anchor=\"" + words.anchor().name().toLowerCase(Locale.ROOT) + "\" fill=\""
                + words.ink().hex() + "\">" + escaped(words.text()) + "</text>";
    }

    private static String number(double value) {
        return Figures.plain(value);
    }

    private static String escaped(String text) {
        return text.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;");
    }
}

package fairflame.document.page;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Words in one or more styles, broken into lines that fit a width. A word wider than the line is broken by letter. */
public final class Text {
    private static final int SOFT_HYPHEN = 0xAD;
    // Kept on one line with the number before them.
    private static final Set<String> UNITS = Set.of(
            "in", "ft", "V", "A", "h", "psi", "kPa", "mbar", "cfh", "gpm", "Btu", "kilohm", "ohm", "uA", "k\u03A9",
            "M\u03A9", "\u03A9");

    private final List<Span> spans;
    private final List<Glyph> glyphs;
    // Height, breaking and drawing of a block ask for the same lines again: the last answer is kept.
    private volatile @Nullable Broken broken;

    private record Broken(double width, List<TextLine> lines) {}

    private Text(List<Span> spans) {
        this.spans = spans;
        this.glyphs = spans.stream().flatMap(span -> measured(span).stream()).toList();
    }

    public static Text of(String words, Style style) {
        return new Text(List.of(new Span(words, style)));
    }

    /** This text with more words behind. */
    public Text and(String words, Style style) {
        var longer = new ArrayList<>(spans);
        longer.add(new Span(words, style));
        return new Text(List.copyOf(longer));
    }

    private static List<Glyph> measured(Span span) {
        return Normalizer.normalize(span.words(), Normalizer.Form.NFC)
                .replace("\r\n", "\n")
                .codePoints()
                .filter(c -> c != SOFT_HYPHEN && (c == '\n' || c == '\t' || !Character.isISOControl(c)))
                .mapToObj(c -> Glyph.of(c, span.style()))
                .toList();
    }

    /** Width in points when set in one line. */
    public double width() {
        return glyphs.stream().mapToDouble(Glyph::width).sum();
    }

    List<TextLine> lines(double width) {
        var known = broken;
        if (known == null || known.width() != width) {
            known = new Broken(width, List.copyOf(broken(width)));
            broken = known;
        }
        return known.lines();
    }

    private List<TextLine> broken(double width) {
        var lines = new ArrayList<TextLine>();
        int start = 0;
        while (start < glyphs.size()) {
            int end = lineEnd(start, width);
            boolean newLine = end < glyphs.size() && glyphs.get(end).kind() == Glyph.Kind.NEW_LINE;
            lines.add(line(start, end));
            start = newLine ? end + 1 : end;
        }
        if (lines.isEmpty()) {
            lines.add(line(0, 0));
        }
        return lines;
    }

    private int lineEnd(int start, double width) {
        double used = 0;
        int lastBreak = -1;
        for (int i = start; i < glyphs.size(); i++) {
            var glyph = glyphs.get(i);
            if (glyph.kind() == Glyph.Kind.NEW_LINE) {
                return i;
            }
            // A hundredth of a point forgives the rounding of column widths that were measured on the same text.
            if (used + glyph.width() > width + 0.01 && glyph.kind() != Glyph.Kind.SPACE) {
                return lastBreak > start ? lastBreak : Math.max(i, start + 1);
            }
            used += glyph.width();
            if (i + 1 < glyphs.size() && glyph.mayEndLine(glyphs.get(i + 1)) && !betweenNumberAndUnit(i)) {
                lastBreak = i + 1;
            }
        }
        return glyphs.size();
    }

    // "4 in w.c." is one thing to the eye.
    private boolean betweenNumberAndUnit(int space) {
        if (glyphs.get(space).kind() != Glyph.Kind.SPACE || space == 0) {
            return false;
        }
        if (space + 1 < glyphs.size() && glyphs.get(space + 1).codePoint() == '%') {
            return true;
        }
        var next = word(space + 1, 1);
        boolean inches = next.startsWith("w.c") && word(space - 1, -1).equals("in");
        boolean number = Character.isDigit(glyphs.get(space - 1).codePoint());
        return inches || (number && UNITS.contains(next));
    }

    private String word(int from, int step) {
        var word = new StringBuilder();
        for (int i = from;
                i >= 0 && i < glyphs.size() && Character.isLetter(glyphs.get(i).codePoint());
                i += step) {
            word.appendCodePoint(glyphs.get(i).codePoint());
        }
        if (step > 0 && word.toString().equals("w")) {
            return "w.c";
        }
        return step < 0 ? word.reverse().toString() : word.toString();
    }

    private TextLine line(int start, int end) {
        var part = glyphs.subList(start, end);
        var tallest = part.stream()
                .map(Glyph::style)
                .reduce((a, b) -> b.leading() > a.leading() ? b : a)
                .orElse(spans.get(0).style());
        return new TextLine(part, tallest.leading(), tallest.ascent());
    }

    /** Draws the text in one line, its baseline at a height on the page. */
    public void draw(Pen pen, double x, double baseline) {
        var line = line(0, glyphs.size());
        line.draw(pen, x, baseline - line.ascent());
    }

    /** The same text, shortened with an ellipsis to fit one line. */
    public Text fitted(double width) {
        if (width() <= width) {
            return this;
        }
        var style = spans.get(0).style();
        double room = width - style.face().width("\u2026", style.size());
        var kept = new StringBuilder();
        for (var glyph : glyphs) {
            room -= glyph.width();
            if (room < 0) {
                break;
            }
            kept.appendCodePoint(glyph.codePoint());
        }
        return of(kept.toString().strip() + "\u2026", style);
    }

    @Override
    public String toString() {
        return String.join("", spans.stream().map(Span::words).toList());
    }
}

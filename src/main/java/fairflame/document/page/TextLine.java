package fairflame.document.page;

import java.util.List;

/** One set line. */
record TextLine(List<Glyph> glyphs, double leading, double ascent) {
    TextLine {
        int end = glyphs.size();
        while (end > 0 && glyphs.get(end - 1).kind() == Glyph.Kind.SPACE) {
            end--;
        }
        glyphs = List.copyOf(glyphs.subList(0, end));
    }

    double width() {
        return glyphs.stream().mapToDouble(Glyph::width).sum();
    }

    void draw(Pen pen, double left, double top) {
        double baseline = top + ascent;
        double x = left;
        int i = 0;
        while (i < glyphs.size()) {
            var first = glyphs.get(i);
            double start = x;
            if (first.kind() == Glyph.Kind.SYMBOL || first.kind() == Glyph.Kind.MISSING) {
                first.draw(pen, x, baseline);
                x += first.width();
                i++;
                continue;
            }
            var run = new StringBuilder();
            while (i < glyphs.size() && joins(first, glyphs.get(i))) {
                run.appendCodePoint(glyphs.get(i).codePoint());
                x += glyphs.get(i).width();
                i++;
            }
            pen.words(run.toString(), first.style(), start, baseline);
        }
    }

    private static boolean joins(Glyph first, Glyph next) {
        boolean set = next.kind() == Glyph.Kind.LETTER || next.kind() == Glyph.Kind.SPACE;
        return set && next.style().equals(first.style());
    }
}

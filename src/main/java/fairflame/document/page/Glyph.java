package fairflame.document.page;

import java.util.List;

/** One character of a text, measured: a letter of the face, a drawn symbol, or the box that marks a missing letter. */
record Glyph(int codePoint, Kind kind, Style style, double width) {
    enum Kind {
        LETTER,
        SPACE,
        NEW_LINE,
        SYMBOL,
        MISSING
    }

    static Glyph of(int raw, Style style) {
        int codePoint = Symbol.substitute(raw);
        if (codePoint == '\n') {
            return new Glyph(codePoint, Kind.NEW_LINE, style, 0);
        }
        if (codePoint == ' ' || codePoint == '\t') {
            return new Glyph(' ', Kind.SPACE, style, style.face().width(" ", style.size()));
        }
        var symbol = Symbol.of(codePoint);
        if (symbol.isPresent()) {
            return new Glyph(codePoint, Kind.SYMBOL, style, symbol.get().width(style.size()));
        }
        if (style.face().has(codePoint)) {
            var width = style.face().width(Character.toString(codePoint), style.size());
            return new Glyph(codePoint, Kind.LETTER, style, width);
        }
        return new Glyph(codePoint, Kind.MISSING, style, style.size());
    }

    /** Whether a line may end between this character and the next. */
    boolean mayEndLine(Glyph next) {
        if (kind == Kind.SPACE) {
            return next.kind != Kind.SPACE;
        }
        boolean joint = codePoint == '-' || codePoint == '/' || codePoint == 0x2013;
        return joint && Character.isLetter(next.codePoint);
    }

    void draw(Pen pen, double x, double baseline) {
        if (kind == Kind.SYMBOL) {
            Symbol.of(codePoint).orElseThrow().draw(pen, style, x, baseline);
        } else if (kind == Kind.MISSING) {
            drawMissing(pen, x, baseline);
        }
    }

    // A letter that no face has is never dropped in silence: its box carries the number of the character.
    private void drawMissing(Pen pen, double x, double baseline) {
        double size = style.size();
        pen.standsFor(Character.toString(codePoint), () -> {
            pen.frame(
                    new Point(x + 0.06 * size, baseline - 0.7 * size),
                    0.88 * size,
                    0.8 * size,
                    Stroke.solid(style.ink(), 0.5));
            var tiny = new Style(Face.MONO, size * 0.3, size * 0.3, style.ink());
            var digits = String.format("%04X", codePoint);
            for (var half : List.of(digits.substring(0, 2), digits.substring(2))) {
                double down = half.equals(digits.substring(0, 2)) ? 0.38 : 0.02;
                pen.words(half, tiny, x + 0.3 * size - 0.1 * size * (half.length() - 2), baseline - down * size);
            }
        });
    }
}

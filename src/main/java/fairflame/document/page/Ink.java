package fairflame.document.page;

import java.awt.Color;

/** The colours of the paper. A verdict never rests on its colour alone. */
public enum Ink {
    WHITE(0xFFFFFF),
    /** Warm tint behind quiet boxes and header rows. */
    PAPER(0xFBF8F1),
    /** Tint of an allowed band. */
    BAND(0xDDE9DC),
    /** Quiet rules. */
    RULE(0xC9CBC4),
    /** Text. */
    INK(0x1E2A30),
    /** Secondary text. */
    SLATE(0x55636B),
    COPPER(0x9A4A1C),
    LAGOON(0x0E5E66),
    /** Water in a gauge: a fill, never text. */
    WATER(0x7FB4B8),
    MOSS(0x3B6B2A),
    AMBER(0x7A5200),
    OXIDE(0x9B1C2E);

    private final int rgb;

    Ink(int rgb) {
        this.rgb = rgb;
    }

    /** Red, green and blue, a byte each. */
    public int rgb() {
        return rgb;
    }

    Color color() {
        return new Color(rgb);
    }

    /** Contrast ratio, 1 to 21. */
    public double contrast(Ink other) {
        return contrast(rgb, other.rgb);
    }

    // WCAG 2.1, definition of contrast ratio.
    static double contrast(int one, int other) {
        double a = luminance(one);
        double b = luminance(other);
        return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
    }

    // WCAG 2.1, definition of relative luminance.
    private static double luminance(int rgb) {
        return 0.2126 * channel(rgb >> 16) + 0.7152 * channel(rgb >> 8) + 0.0722 * channel(rgb);
    }

    private static double channel(int shifted) {
        double value = (shifted & 0xFF) / 255.0;
        return value <= 0.03928 ? value / 12.92 : Math.pow((value + 0.055) / 1.055, 2.4);
    }
}

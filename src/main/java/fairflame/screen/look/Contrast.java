package fairflame.screen.look;

import javafx.scene.paint.Color;

/** Contrast between two colours as WCAG 2.2 defines it. */
public final class Contrast {
    // WCAG 2.2, definition of relative luminance: linearisation and weights of the sRGB channels
    private static final double KNEE = 0.04045;
    private static final double SLOPE = 12.92;
    private static final double OFFSET = 0.055;
    private static final double POWER = 2.4;
    private static final double RED = 0.2126;
    private static final double GREEN = 0.7152;
    private static final double BLUE = 0.0722;
    // WCAG 2.2, definition of contrast ratio
    private static final double FLARE = 0.05;

    private Contrast() {}

    /** From 1 (no difference) to 21 (black on white); the order of the two does not matter. */
    public static double ratio(Color one, Color other) {
        var a = luminance(one);
        var b = luminance(other);
        return (Math.max(a, b) + FLARE) / (Math.min(a, b) + FLARE);
    }

    /** A colour with some transparency laid over an opaque one. */
    public static Color over(Color top, Color below) {
        var share = top.getOpacity();
        return new Color(
                top.getRed() * share + below.getRed() * (1 - share),
                top.getGreen() * share + below.getGreen() * (1 - share),
                top.getBlue() * share + below.getBlue() * (1 - share),
                1);
    }

    private static double luminance(Color color) {
        return RED * linear(color.getRed()) + GREEN * linear(color.getGreen()) + BLUE * linear(color.getBlue());
    }

    private static double linear(double channel) {
        return channel <= KNEE ? channel / SLOPE : Math.pow((channel + OFFSET) / (1 + OFFSET), POWER);
    }
}

package fairflame.gas;

import java.util.List;

/**
 * A drawing as plain geometry, for whatever paper or screen it goes to. Lengths are in points of 1/72 in; x grows to the
 * right, y downwards.
 *
 * @param title said for those who cannot see it
 * @param shapes in the order in which they are laid over each other
 */
public record Drawing(String title, double width, double height, List<Shape> shapes) {
    public Drawing {
        shapes = List.copyOf(shapes);
    }

    /** One thing on the drawing. */
    public sealed interface Shape permits Line, Box, Disc, Words {}

    /** A straight line; dashed in the pattern given, unbroken when it is empty. */
    public record Line(double x1, double y1, double x2, double y2, Ink ink, double width, List<Double> dashes)
            implements Shape {
        public Line {
            dashes = List.copyOf(dashes);
        }
    }

    /** A filled rectangle with an outline; no outline when its width is 0. */
    public record Box(
            double x, double y, double width, double height, double corner, Ink fill, Ink outline, double stroke)
            implements Shape {}

    /** A filled circle with an outline. */
    public record Disc(double x, double y, double radius, Ink fill, Ink outline, double stroke) implements Shape {}

    /** One line of text, placed by its base line. */
    public record Words(double x, double y, Anchor anchor, double size, boolean bold, Ink ink, String text)
            implements Shape {
        // Wider than the letters of the bundled font are on average, so that what fits by this fits.
        private static final double WIDTH_OF_A_LETTER = 0.54;

        /** About as wide as it will be, rather more. */
        public double about() {
            return text.length() * size * WIDTH_OF_A_LETTER;
        }
    }

    /** Where text stands to its point. */
    public enum Anchor {
        START,
        MIDDLE,
        END
    }

    /** The inks of the house. */
    public enum Ink {
        PAPER("#FBF8F1"),
        WHITE("#FFFFFF"),
        INK("#1E2A30"),
        SLATE("#55636B"),
        RULE("#C9C3B4"),
        COPPER("#9A4A1C"),
        LAGOON("#0E5E66"),
        MOSS("#3B6B2A"),
        AMBER("#7A5200"),
        OXIDE("#9B1C2E");

        private final String hex;

        Ink(String hex) {
            this.hex = hex;
        }

        /** Such as {@code #1E2A30}. */
        public String hex() {
            return hex;
        }
    }

    /** The same, shifted. */
    Drawing moved(double right, double down) {
        return new Drawing(
                title,
                width,
                height,
                shapes.stream().map(shape -> moved(shape, right, down)).toList());
    }

    private static Shape moved(Shape shape, double right, double down) {
        if (shape instanceof Line line) {
            return new Line(
                    line.x1 + right,
                    line.y1 + down,
                    line.x2 + right,
                    line.y2 + down,
                    line.ink,
                    line.width,
                    line.dashes);
        }
        if (shape instanceof Box box) {
            return new Box(
                    box.x + right, box.y + down, box.width, box.height, box.corner, box.fill, box.outline, box.stroke);
        }
        if (shape instanceof Disc disc) {
            return new Disc(disc.x + right, disc.y + down, disc.radius, disc.fill, disc.outline, disc.stroke);
        }
        var words = (Words) shape;
        return new Words(words.x + right, words.y + down, words.anchor, words.size, words.bold, words.ink, words.text);
    }
}

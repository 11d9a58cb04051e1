package fairflame.document.page;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * Characters that the bundled faces lack, drawn as lines. Each line is a row of points "x,y" in hundredths of the em,
 * baseline at 0, up positive.
 */
enum Symbol {
    RIGHT(0x2192, 95, "6,33 86,33", "60,58 86,33 60,8"),
    LEFT(0x2190, 95, "86,33 6,33", "32,58 6,33 32,8"),
    UP(0x2191, 70, "35,-5 35,70", "10,45 35,70 60,45"),
    DOWN(0x2193, 70, "35,70 35,-5", "10,20 35,-5 60,20"),
    CHECK(0x2713, 85, "10,32 32,6 76,66"),
    CROSS(0x2717, 80, "14,8 66,60", "14,60 66,8"),
    OPEN_BOX(0x2610, 95, "10,-5 85,-5 85,70 10,70 10,-5"),
    TICKED_BOX(0x2611, 95, "10,-5 85,-5 85,70 10,70 10,-5", "22,32 40,12 74,58");

    // Look-alikes that the faces do have: U+03BC for the micro sign U+00B5, U+03A9 for the ohm sign, and so on.
    private static final Map<Integer, Integer> SUBSTITUTES =
            Map.of(0xB5, 0x3BC, 0x2126, 0x3A9, 0x202F, 0xA0, 0x2007, 0xA0, 0x2011, 0x2D, 0x2032, 0x27, 0x2033, 0x22);

    private static final Map<Integer, Symbol> BY_CODE_POINT =
            Arrays.stream(values()).collect(Collectors.toUnmodifiableMap(symbol -> symbol.codePoint, symbol -> symbol));

    private final int codePoint;
    private final double advance;
    private final List<List<Point>> lines;

    Symbol(int codePoint, int advance, String... lines) {
        this.codePoint = codePoint;
        this.advance = advance / 100.0;
        this.lines = Arrays.stream(lines).map(Symbol::points).toList();
    }

    private static List<Point> points(String line) {
        return Arrays.stream(line.split(" "))
                .map(pair -> pair.split(","))
                .map(xy -> new Point(Integer.parseInt(xy[0]) / 100.0, Integer.parseInt(xy[1]) / 100.0))
                .toList();
    }

    static int substitute(int codePoint) {
        return SUBSTITUTES.getOrDefault(codePoint, codePoint);
    }

    static Optional<Symbol> of(int codePoint) {
        return Optional.ofNullable(BY_CODE_POINT.get(codePoint));
    }

    double width(double size) {
        return advance * size;
    }

    void draw(Pen pen, Style style, double x, double baseline) {
        var stroke = Stroke.solid(style.ink(), style.size() * 0.085);
        pen.standsFor(Character.toString(codePoint), () -> {
            for (var line : lines) {
                pen.path(placed(line, style.size(), x, baseline), stroke);
            }
        });
    }

    private static List<Point> placed(List<Point> line, double size, double x, double baseline) {
        return line.stream()
                .map(point -> new Point(x + point.x() * size, baseline - point.y() * size))
                .toList();
    }
}

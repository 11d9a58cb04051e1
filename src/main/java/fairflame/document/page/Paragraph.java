package fairflame.document.page;

import java.util.List;

/**
 * Running words.
 *
 * @param indent points kept free at the right edge when aligned right (to stand on the decimal point), else at the left
 */
public record Paragraph(Text text, Role role, Align align, double indent) implements Block {
    // Fewer than two lines of a paragraph never stand alone on a page.
    private static final int ALONE = 2;

    public static Paragraph of(String words, Style style) {
        return new Paragraph(Text.of(words, style), Role.PARAGRAPH, Align.LEFT, 0);
    }

    public static Paragraph of(Text text) {
        return new Paragraph(text, Role.PARAGRAPH, Align.LEFT, 0);
    }

    public static Paragraph right(String words, Style style) {
        return new Paragraph(Text.of(words, style), Role.PARAGRAPH, Align.RIGHT, 0);
    }

    /** A heading stays with what follows. */
    public static Paragraph heading(Role role, String words, Style style) {
        return new Paragraph(Text.of(words, style), role, Align.LEFT, 0);
    }

    public Paragraph aligned(Align other) {
        return new Paragraph(text, role, other, indent);
    }

    public Paragraph indented(double points) {
        return new Paragraph(text, role, align, points);
    }

    @Override
    public boolean clings() {
        return role == Role.HEADING_1 || role == Role.HEADING_2 || role == Role.HEADING_3;
    }

    @Override
    public double height(double width) {
        return lines(width).height(width);
    }

    @Override
    public void draw(Pen pen, Place place) {
        lines(place.width()).draw(pen, place);
    }

    @Override
    public Split split(double width, Room room) {
        return lines(width).split(width, room);
    }

    private Lines lines(double width) {
        return new Lines(text.lines(width - indent), this);
    }

    /** Some set lines of a paragraph. */
    private record Lines(List<TextLine> lines, Paragraph from) implements Block {
        @Override
        public double height(double width) {
            return lines.stream().mapToDouble(TextLine::leading).sum();
        }

        @Override
        public boolean clings() {
            return from.clings();
        }

        @Override
        public Split split(double width, Room room) {
            int fitting = 0;
            double used = 0;
            while (fitting < lines.size()
                    && room.holds(used + lines.get(fitting).leading())) {
                used += lines.get(fitting).leading();
                fitting++;
            }
            if (fitting == lines.size()) {
                return Split.whole(this);
            }
            int head = Math.min(fitting, lines.size() - ALONE);
            if (room.fresh() && head < 1) {
                head = fitting;
            }
            boolean alone = head < ALONE && !room.fresh();
            return head < 1 || alone
                    ? Split.nothing(this)
                    : Split.of(
                            new Lines(lines.subList(0, head), from),
                            new Lines(lines.subList(head, lines.size()), from));
        }

        @Override
        public void draw(Pen pen, Place place) {
            pen.tagged(from.role, () -> {
                double top = place.top();
                for (var line : lines) {
                    line.draw(pen, left(line, place), top);
                    top += line.leading();
                }
            });
        }

        private double left(TextLine line, Place place) {
            double spare = place.width() - from.indent - line.width();
            return switch (from.align) {
                case LEFT -> place.x() + from.indent;
                case CENTRE -> place.x() + from.indent + spare / 2;
                case RIGHT -> place.x() + spare;
            };
        }
    }
}

package fairflame.document.page;

import java.util.Optional;

/**
 * A block in a box. Broken over pages, each part is boxed.
 *
 * @param padding between frame and content
 * @param bar a heavy bar along the left edge, as wide as its stroke
 */
public record Framed(Block block, double padding, Ink fill, Stroke frame, Optional<Stroke> bar) implements Block {
    public static Framed of(Block block, double padding, Ink fill, Stroke frame) {
        return new Framed(block, padding, fill, frame, Optional.empty());
    }

    private double inner(double width) {
        return width - 2 * padding - barWidth();
    }

    private double barWidth() {
        return bar.map(Stroke::width).orElse(0.0);
    }

    @Override
    public double height(double width) {
        return block.height(inner(width)) + 2 * padding;
    }

    @Override
    public Split split(double width, Room room) {
        var split = block.split(inner(width), room.less(2 * padding, true));
        return new Split(split.head().map(this::around), split.rest().map(this::around));
    }

    private Block around(Block part) {
        return new Framed(part, padding, fill, frame, bar);
    }

    @Override
    public void draw(Pen pen, Place place) {
        double height = height(place.width());
        var corner = new Point(place.x(), place.top());
        pen.decor(() -> {
            pen.rectangle(corner, place.width(), height, fill);
            pen.frame(corner, place.width(), height, frame);
            bar.ifPresent(stroke -> pen.rectangle(corner, stroke.width(), height, stroke.ink()));
        });
        var content = new Place(place.x() + barWidth() + padding, place.top() + padding, inner(place.width()));
        block.draw(pen, content);
    }
}

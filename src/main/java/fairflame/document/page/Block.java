package fairflame.document.page;

/** A piece of a page that knows its height and can be broken over pages. Measures are points. */
public interface Block {
    double height(double width);

    void draw(Pen pen, Place place);

    /** Divides the block so that the head fits the room; an empty head means that nothing fits. */
    default Split split(double width, Room room) {
        return room.holds(height(width)) ? Split.whole(this) : Split.nothing(this);
    }

    /** Whether the block may not stand at the foot of a page without the block that follows it. */
    default boolean clings() {
        return false;
    }

    /** Whether the block may be left out at the top of a page. */
    default boolean vanishes() {
        return false;
    }
}

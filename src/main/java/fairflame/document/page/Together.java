package fairflame.document.page;

/** Keeps a block on one page, unless it is taller than a page. */
public record Together(Block block) implements Block {
    @Override
    public double height(double width) {
        return block.height(width);
    }

    @Override
    public void draw(Pen pen, Place place) {
        block.draw(pen, place);
    }

    @Override
    public Split split(double width, Room room) {
        return room.fresh() ? block.split(width, room) : Block.super.split(width, room);
    }
}

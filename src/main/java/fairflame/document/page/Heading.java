package fairflame.document.page;

/** A block that stays with what follows it. */
public record Heading(Block block) implements Block {
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

    @Override
    public boolean clings() {
        return true;
    }
}

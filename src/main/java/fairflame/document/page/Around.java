package fairflame.document.page;

import java.util.ArrayList;
import java.util.List;

/**
 * A picture at the left with words beside it; words that find no room beside it run on below, over the whole width.
 *
 * @param pictureWidth in points
 * @param gap between picture and words, in points
 */
public record Around(Block picture, double pictureWidth, double gap, Stack words) implements Block {
    // Words may end a little below the picture before they are broken off.
    private static final double OVERHANG = 30;
    private static final double BELOW = 6;

    @Override
    public double height(double width) {
        return set(width).height(width);
    }

    @Override
    public void draw(Pen pen, Place place) {
        set(place.width()).draw(pen, place);
    }

    @Override
    public Split split(double width, Room room) {
        return set(width).split(width, room);
    }

    private Stack set(double width) {
        double room = picture.height(pictureWidth) + OVERHANG;
        var split = words.split(width - pictureWidth - gap, new Room(room, true));
        var columns = new Columns(List.of(Columns.fixed(pictureWidth), Columns.share(1)), gap);
        var blocks = new ArrayList<Block>();
        blocks.add(new Together(Grid.beside(columns, picture, split.head().orElse(new Space(0)))));
        split.rest().ifPresent(rest -> {
            blocks.add(new Space(BELOW));
            blocks.add(rest);
        });
        return new Stack(blocks);
    }
}

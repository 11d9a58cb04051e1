package fairflame.document.page;

import java.util.ArrayList;
import java.util.List;

/** Blocks one below the other. A block that clings is never left alone at the foot of a page. */
public record Stack(List<Block> blocks) implements Block {
    public Stack {
        blocks = List.copyOf(blocks);
    }

    public static Stack of(Block... blocks) {
        return new Stack(List.of(blocks));
    }

    @Override
    public double height(double width) {
        return blocks.stream().mapToDouble(block -> block.height(width)).sum();
    }

    @Override
    public void draw(Pen pen, Place place) {
        double top = place.top();
        for (var block : blocks) {
            block.draw(pen, new Place(place.x(), top, place.width()));
            top += block.height(place.width());
        }
    }

    @Override
    public Split split(double width, Room room) {
        double used = 0;
        for (int i = 0; i < blocks.size(); i++) {
            double height = blocks.get(i).height(width);
            if (!room.holds(used + height)) {
                // Headings alone do not make a page less fresh: what follows them has to be broken here or nowhere.
                boolean first = blocks.subList(0, i).stream().allMatch(Block::clings);
                return divided(i, blocks.get(i).split(width, room.less(used, first)), room);
            }
            used += height;
        }
        return Split.whole(this);
    }

    private Split divided(int at, Split last, Room room) {
        var head = new ArrayList<>(blocks.subList(0, at));
        var rest = new ArrayList<Block>();
        if (last.head().isPresent()) {
            head.add(last.head().get());
        } else {
            int keep = head.size();
            while (keep > 0 && head.get(keep - 1).clings()) {
                keep--;
            }
            if (keep > 0 || !room.fresh()) {
                rest.addAll(head.subList(keep, head.size()));
                head.subList(keep, head.size()).clear();
            }
        }
        last.rest().ifPresent(rest::add);
        rest.addAll(blocks.subList(at + 1, blocks.size()));
        while (!rest.isEmpty() && rest.get(0).vanishes()) {
            rest.remove(0);
        }
        if (rest.isEmpty()) {
            return Split.whole(new Stack(head));
        }
        return head.stream().allMatch(Block::vanishes)
                ? Split.nothing(new Stack(rest))
                : Split.of(new Stack(head), new Stack(rest));
    }
}

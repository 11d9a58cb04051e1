package fairflame.document.page;

import java.util.Optional;

/** A block divided at the foot of a page: at least one of the two parts is there. */
public record Split(Optional<Block> head, Optional<Block> rest) {
    static Split whole(Block block) {
        return new Split(Optional.of(block), Optional.empty());
    }

    static Split nothing(Block block) {
        return new Split(Optional.empty(), Optional.of(block));
    }

    static Split of(Block head, Block rest) {
        return new Split(Optional.of(head), Optional.of(rest));
    }
}

package fairflame.catalog.edit;

import java.util.Optional;

/**
 * One field or row that becomes another.
 *
 * @param before as it stands; absent for what is new. A list of texts has a line each; a whole row or entry is its
 *     source text
 * @param after as it shall stand; absent for what goes
 */
public record FieldEdit(Spot spot, Optional<String> before, Optional<String> after) {
    /** A field that gets another value. */
    public static FieldEdit set(Spot spot, String before, String after) {
        return new FieldEdit(spot, Optional.of(before), Optional.of(after));
    }

    /** A field, row or entry that comes. */
    public static FieldEdit added(Spot spot, String after) {
        return new FieldEdit(spot, Optional.empty(), Optional.of(after));
    }

    /** A field, row or entry that goes. */
    public static FieldEdit removed(Spot spot, String before) {
        return new FieldEdit(spot, Optional.of(before), Optional.empty());
    }

    /** The edit that takes this one back. */
    public FieldEdit reversed() {
        return new FieldEdit(spot, after, before);
    }
}

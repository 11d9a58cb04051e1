package fairflame.catalog.edit;

import java.util.ArrayList;
import java.util.List;

/**
 * A place in a file: names of fields and, in lists, the id of an entry or its position from 0. In a table the first
 * step is the key of the row and the second the column. Without a step it is the whole file.
 */
public record Spot(List<String> steps) {
    public Spot {
        steps = List.copyOf(steps);
    }

    public static Spot of(String... steps) {
        return new Spot(List.of(steps));
    }

    /** The place one step further in. */
    public Spot in(String step) {
        var longer = new ArrayList<>(steps);
        longer.add(step);
        return new Spot(longer);
    }

    /** The last step; empty for the whole file. */
    public String last() {
        return steps.isEmpty() ? "" : steps.get(steps.size() - 1);
    }

    /** The place one step further out; the whole file stays the whole file. */
    public Spot outer() {
        return steps.isEmpty() ? this : new Spot(steps.subList(0, steps.size() - 1));
    }

    /** Whether this is the other place or one inside it. */
    public boolean within(Spot other) {
        return steps.size() >= other.steps.size()
                && steps.subList(0, other.steps.size()).equals(other.steps);
    }

    @Override
    public String toString() {
        return String.join(", ", steps);
    }
}

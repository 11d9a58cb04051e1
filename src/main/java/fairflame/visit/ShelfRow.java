package fairflame.visit;

import fairflame.catalog.edit.Spot;
import java.util.List;
import java.util.Optional;

/**
 * A row of a table of the stock room.
 *
 * @param file that it stands in, relative to the catalog or the templates; empty for parts
 * @param spot place of the row in the file; without a step the whole file
 * @param removable whether it may be taken out
 * @param former true for a part that was superseded or withdrawn
 */
public record ShelfRow(Shelf shelf, String file, Spot spot, List<RowField> fields, boolean removable, boolean former) {
    public ShelfRow {
        fields = List.copyOf(fields);
    }

    /** Tells the row apart from all others of its table; kept in the history. */
    public String key() {
        return spot.steps().isEmpty() ? file : file.isEmpty() ? spot.toString() : file + ": " + spot;
    }

    /** The field whose last step is one of these, the first that is there. */
    public Optional<RowField> field(String... names) {
        return java.util.Arrays.stream(names)
                .flatMap(name ->
                        fields.stream().filter(field -> field.spot().last().equals(name)))
                .findFirst();
    }

    /**
     * One field of a row.
     *
     * @param value as it stands; a list of texts has a line each; empty for an optional field that is not there
     * @param lines whether it is a list of texts
     * @param fixed whether it can only be told when the row is new
     * @param optional whether it may be left out: an empty value takes it away
     * @param absent whether it is not there now
     */
    public record RowField(Spot spot, String value, boolean lines, boolean fixed, boolean optional, boolean absent) {
        static RowField of(Spot spot, String value) {
            return new RowField(spot, value, false, false, false, false);
        }
    }
}

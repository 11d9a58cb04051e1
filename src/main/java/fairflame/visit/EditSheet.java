package fairflame.visit;

import fairflame.catalog.edit.FieldEdit;
import fairflame.catalog.edit.Spot;
import fairflame.visit.ShelfRow.RowField;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * One row opened for a change.
 *
 * @param fresh whether the row is new
 * @param grows place at which further named values may be told; absent where the fields are fixed
 * @param stamp tells whether what the row was read from is still the same
 */
public record EditSheet(ShelfRow row, boolean fresh, Optional<Spot> grows, String stamp) {
    public List<RowField> fields() {
        return row.fields();
    }

    /** What becomes what when these values are kept, in the order of the fields; values that stay are left out. */
    List<FieldEdit> edits(Map<Spot, String> typed) {
        var edits = new ArrayList<FieldEdit>();
        var told = new java.util.LinkedHashMap<>(typed);
        for (var field : fields()) {
            Optional.ofNullable(told.remove(field.spot()))
                    .map(value -> clean(field, value))
                    .filter(value -> !value.equals(field.value()))
                    .ifPresent(value -> edits.add(edit(field, value)));
        }
        told.forEach((spot, value) -> {
            if (!value.isBlank()) {
                edits.add(FieldEdit.added(spot, value.strip()));
            }
        });
        return edits;
    }

    private static String clean(RowField field, String value) {
        return field.lines()
                ? String.join(
                        "\n",
                        value.lines()
                                .map(String::strip)
                                .filter(line -> !line.isEmpty())
                                .toList())
                : value.strip();
    }

    private static FieldEdit edit(RowField field, String value) {
        if (field.absent()) {
            return FieldEdit.added(field.spot(), value);
        }
        return value.isEmpty() && field.optional()
                ? FieldEdit.removed(field.spot(), field.value())
                : FieldEdit.set(field.spot(), field.value(), value);
    }
}

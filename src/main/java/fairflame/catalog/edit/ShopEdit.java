package fairflame.catalog.edit;

import fairflame.Refusal;
import java.time.OffsetDateTime;
import java.util.List;

/**
 * A change that a person made to what the shop sells or prints.
 *
 * @param number from 1, in order
 * @param why in words
 * @param shelf table of the stock room
 * @param entry row of that table
 * @param file changed file, relative to the shop; empty for parts, whose states are kept in the database
 * @param state number of the state of the parts list that it made; 0 for a change of a file
 * @param fields what became what
 * @param takesBack number of the change that this one takes back; 0 for a change of its own
 */
public record ShopEdit(
        int number,
        OffsetDateTime at,
        String who,
        String why,
        String shelf,
        String entry,
        String file,
        int state,
        List<FieldEdit> fields,
        int takesBack) {
    public ShopEdit {
        fields = List.copyOf(fields);
        if (number < 1) {
            throw Refusal.outOfRange("number of a change", number, "1 or more");
        }
        if (why.isBlank()) {
            throw Refusal.missing("reason of the change", "a reason in words");
        }
        if (fields.isEmpty()) {
            throw Refusal.missing("change", "at least one field that becomes another");
        }
    }
}

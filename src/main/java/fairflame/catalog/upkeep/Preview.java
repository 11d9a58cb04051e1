package fairflame.catalog.upkeep;

import fairflame.Refusal;
import java.util.List;

/**
 * What a price list would do to the parts list. Nothing is changed yet.
 *
 * @param supplier id of the supplier
 * @param file name of the price list
 * @param added parts the list has and the shop has not
 * @param changed parts that differ, the superseded ones and those that came back among them
 * @param vanished parts of this supplier that the list no longer has; they stay in the shop's list, marked
 * @param refused rows that cannot be taken over; one is enough to keep the whole list out
 * @param unchanged how many parts stay as they are
 */
public record Preview(
        String supplier,
        String file,
        List<PartChange> added,
        List<PartChange> changed,
        List<PartChange> vanished,
        List<RefusedRow> refused,
        int unchanged) {
    public Preview {
        added = List.copyOf(added);
        changed = List.copyOf(changed);
        vanished = List.copyOf(vanished);
        refused = List.copyOf(refused);
    }

    /** All changes, in the order new, changed, vanished. */
    public List<PartChange> changes() {
        return java.util.stream.Stream.of(added, changed, vanished)
                .flatMap(List::stream)
                .toList();
    }

    /** The changes, for taking over; refused while a single row is. */
    public List<PartChange> accepted() {
        if (!refused.isEmpty()) {
            var first = refused.get(0);
            throw Refusal.notAllowed(
                            "price list with " + refused.size() + " refused rows",
                            first.reason(),
                            "a list without refused rows, because it is taken over whole or not at all")
                    .at(file + " row " + first.row());
        }
        return changes();
    }
}

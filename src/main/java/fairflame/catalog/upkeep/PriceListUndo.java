package fairflame.catalog.upkeep;

import fairflame.Refusal;
import java.util.List;
import java.util.Map;

/** Takes an import back: each part as it was before, new parts gone. */
public final class PriceListUndo {
    private PriceListUndo() {}

    /**
     * Refuses an undo that would wipe out later changes.
     *
     * @param changes of the import
     * @param current imported states by part number
     */
    public static void refuseUnlessLast(List<PartChange> changes, Map<String, Stocked> current) {
        for (var change : changes) {
            var now = current.get(change.number());
            if (!change.after().equals(now)) {
                throw Refusal.notAllowed(
                        "undo of an import that changed part",
                        change.number(),
                        "an import that nothing followed: undo the later import of this part first");
            }
        }
    }
}

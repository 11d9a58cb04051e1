package fairflame.visit;

import fairflame.Refusal;
import fairflame.catalog.edit.FieldEdit;
import fairflame.catalog.edit.Spot;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What a change would do, before anything is kept.
 *
 * @param edits what becomes what
 * @param refused what is wrong, by field
 * @param refusal what is wrong and belongs to no single field
 */
public record EditCheck(List<FieldEdit> edits, Map<Spot, Refusal> refused, Optional<Refusal> refusal) {
    public EditCheck {
        edits = List.copyOf(edits);
        refused = Map.copyOf(refused);
    }

    /** Whether it may be kept. */
    public boolean passes() {
        return refused.isEmpty() && refusal.isEmpty() && !edits.isEmpty();
    }
}

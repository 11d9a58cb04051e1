package fairflame.repair;

import java.util.List;

/**
 * All ways to mend a settled finding that may be offered.
 *
 * @param scopes the suggested one first; none when there is nothing to repair, and the reasons then hold the advice
 * @param reasons why these scopes and no others, a sentence each (the pairing rule, a size, a conflict avoided)
 */
public record RepairPlan(List<Scope> scopes, List<String> reasons) {
    public RepairPlan {
        scopes = List.copyOf(scopes);
        reasons = List.copyOf(reasons);
    }
}

package fairflame.repair;

import fairflame.catalog.PairRule;
import java.util.List;
import java.util.Map;

/**
 * Whether both parts of a pair are renewed.
 *
 * @param dryness by device
 * @param worst device that the readings speak against most
 * @param reasons sentences for the paper
 */
record PairJudgement(PairRule rule, Outcome outcome, Map<String, Dryness> dryness, String worst, List<String> reasons) {
    PairJudgement {
        dryness = Map.copyOf(dryness);
        reasons = List.copyOf(reasons);
    }

    enum Outcome {
        /** Both have to go. */
        BY_RULE("pair-by-rule"),
        /** Both should go; one alone may be offered. */
        RECOMMENDED("pair-recommended"),
        /** One alone is enough. */
        SINGLE_ALLOWED("single-allowed");

        private final String fact;

        Outcome(String fact) {
            this.fact = fact;
        }

        /** The id of the fact that conditions name. */
        String fact() {
            return fact;
        }
    }
}

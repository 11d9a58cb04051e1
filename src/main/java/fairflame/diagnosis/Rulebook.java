package fairflame.diagnosis;

import java.util.List;
import java.util.Map;

/** Everything that concludes something from readings. */
record Rulebook(
        Map<String, Gate> gates,
        Map<String, Cause> causes,
        List<Contradiction> contradictions,
        List<Doubt> doubts,
        Map<String, VerdictRule> verdicts) {}

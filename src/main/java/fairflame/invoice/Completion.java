package fairflame.invoice;

import java.util.Map;
import java.util.Optional;

/**
 * What must be on record before work counts as complete.
 *
 * @param permitNumber number of the permit, or "not required: " and who said so when; empty when neither is known
 * @param fitterName licensed gas fitter who did the gas work; empty when none
 * @param fitterLicence number of the licence; empty when none
 * @param tests result by test letter, such as {@code A}
 * @param pressureTest the test of new gas piping
 * @param leadsRemoved true when every bypass lead is recorded as removed
 */
public record Completion(
        String permitNumber,
        String fitterName,
        String fitterLicence,
        Map<String, TestRecord> tests,
        Optional<PressureTest> pressureTest,
        boolean leadsRemoved) {
    public Completion {
        tests = Map.copyOf(tests);
    }
}

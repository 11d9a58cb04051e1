package fairflame.invoice;

import java.util.Map;

/**
 * What must be on record before work counts as complete.
 *
 * @param permitNumber empty when none was issued
 * @param fitterName licensed gas fitter who did the gas work; empty when none
 * @param fitterLicence number of the licence; empty when none
 * @param tests result in words by test letter, such as {@code A} to "no bubbles, no detector rise"
 * @param leadsRemoved true when every bypass lead is recorded as removed
 */
public record Completion(
        String permitNumber, String fitterName, String fitterLicence, Map<String, String> tests, boolean leadsRemoved) {
    public Completion {
        tests = Map.copyOf(tests);
    }
}

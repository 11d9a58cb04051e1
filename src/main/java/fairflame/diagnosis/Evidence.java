package fairflame.diagnosis;

import java.util.List;

/**
 * One reason for or against a cause.
 *
 * @param rule id of the rule in the knowledge
 * @param checks ids of the checks whose readings it uses
 * @param words one sentence with the values, such as "Valve voltage fell to 15.7 V before the flame went out."
 * @param source key of the source, or "common practice, no source"
 */
public record Evidence(String rule, List<String> checks, String words, String source) {
    public Evidence {
        checks = List.copyOf(checks);
    }
}

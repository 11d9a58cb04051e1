package fairflame.catalog;

import fairflame.quantity.Resistance;
import fairflame.wording.Spoken;
import java.util.List;

/**
 * Two parts that share water, age and place, and when they are renewed together.
 *
 * @param task id of the task that renews them, a piece each
 * @param members the two parts, the one that is renewed first when nothing tells them apart in front
 * @param damagedBelow leak to the body under this is a failed part
 * @param dampBelow leak to the body under this, but not failed, is a damp part
 * @param contactBelow a closed contact under this is good
 * @param age from when on the other part is renewed as well
 * @param facts ids of the facts that decide beside the readings
 */
public record PairRule(
        String id,
        String task,
        List<Member> members,
        Resistance damagedBelow,
        Resistance dampBelow,
        Resistance contactBelow,
        Age age,
        Circumstances facts,
        String source) {
    public PairRule {
        members = List.copyOf(members);
    }

    /**
     * The age of the parts.
     *
     * @param oldAfterYears beyond this age the other part is renewed as well
     * @param checks ids of the checks that tell the age; without an answer the heater's age counts
     */
    public record Age(int oldAfterYears, List<String> checks) {
        public Age {
            checks = List.copyOf(checks);
        }
    }

    /**
     * Ids of facts.
     *
     * @param sameWater the same water reached both
     * @param sameBatch both are of one batch and place
     * @param waterStopped the way of the water is found and stopped
     */
    public record Circumstances(String sameWater, String sameBatch, String waterStopped) {}

    /**
     * One of the two.
     *
     * @param device id of the device and role of its part
     * @param title in plain words
     * @param leakChecks ids of the checks that read its leak to the body
     * @param contactChecks ids of the checks that read its closed contact
     */
    public record Member(String device, @Spoken String title, List<String> leakChecks, List<String> contactChecks) {
        public Member {
            leakChecks = List.copyOf(leakChecks);
            contactChecks = List.copyOf(contactChecks);
        }
    }
}

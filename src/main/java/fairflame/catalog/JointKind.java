package fairflame.catalog;

import fairflame.wording.Spoken;
import java.util.Set;

/**
 * A kind of joint and what may be put on it.
 *
 * @param use roles of the sealants that are right for it; {@link TaskRules#DRY} where it is made dry
 * @param never roles of sealants that are wrong on it
 * @param how how it is made, in words
 */
public record JointKind(
        String id, @Spoken String title, Set<String> use, Set<String> never, String how, String source) {
    public JointKind {
        use = Set.copyOf(use);
        never = Set.copyOf(never);
    }
}

package fairflame.catalog;

import java.util.HashSet;
import java.util.Map;
import java.util.Set;

/**
 * What has to hold before a task may be offered, and what becomes of tasks beside it.
 *
 * @param joints sealant role by kind of joint that the task makes; {@link #DRY} where nothing may be put on
 * @param requires facts that have to hold, such as {@code pipe-sized}
 * @param replaces roles of the parts that it takes out and renews; two tasks may not renew the same part
 * @param leaves those of {@code replaces} that it leaves to another task in the same scope that renews them too
 * @param absorbs ids of tasks that are part of this one and fall away beside it
 * @param companions ids of tasks of which at least one has to stand in the same scope; empty for none
 * @param notForCauses ids of causes under which it would be wrong
 */
public record TaskRules(
        Map<String, String> joints,
        Set<String> requires,
        Set<String> replaces,
        Set<String> leaves,
        Set<String> absorbs,
        Set<String> companions,
        Set<String> notForCauses) {
    /** Stands in the place of a sealant: the joint is made dry. */
    public static final String DRY = "none";

    /** No rule at all. */
    public static final TaskRules NONE = new TaskRules(Map.of(), Set.of(), Set.of(), Set.of(), Set.of(), Set.of());

    public TaskRules {
        joints = Map.copyOf(joints);
        requires = Set.copyOf(requires);
        replaces = Set.copyOf(replaces);
        leaves = Set.copyOf(leaves);
        absorbs = Set.copyOf(absorbs);
        companions = Set.copyOf(companions);
        notForCauses = Set.copyOf(notForCauses);
    }

    /** Rules of a task that leaves nothing to another. */
    public TaskRules(
            Map<String, String> joints,
            Set<String> requires,
            Set<String> replaces,
            Set<String> absorbs,
            Set<String> companions,
            Set<String> notForCauses) {
        this(joints, requires, replaces, Set.of(), absorbs, companions, notForCauses);
    }

    /** The same without renewing a part. */
    TaskRules without(String part) {
        var left = new HashSet<>(replaces);
        left.remove(part);
        return new TaskRules(joints, requires, left, leaves, absorbs, companions, notForCauses);
    }
}

package fairflame.gas;

import java.util.Set;

/**
 * What one search may use.
 *
 * @param raised whether the delivery is raised; then it must be
 * @param own appliances that may get a line of their own
 * @param forced appliances of which exactly that is asked
 * @param materials that may be laid
 */
record PlanScope(boolean raised, Set<String> own, Set<String> forced, Set<Material> materials) {}

package fairflame.diagnosis;

import java.util.Set;

/**
 * Causes that cannot settle while something stands in the way.
 *
 * @param causes their ids; {@link #EVERYTHING} for all
 * @param spared ids that may settle all the same, because they would explain what stands in the way
 */
record Held(Set<String> causes, Set<String> spared) {
    static final String EVERYTHING = "all";
    static final Held NOTHING = new Held(Set.of(), Set.of());

    Held {
        causes = Set.copyOf(causes);
        spared = Set.copyOf(spared);
    }

    boolean holds(String cause) {
        return (causes.contains(cause) || causes.contains(EVERYTHING)) && !spared.contains(cause);
    }
}

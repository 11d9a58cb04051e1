package fairflame.gas;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.TreeMap;

/**
 * The states at a point of which none is at least as good as another in cost, load and budget. What is left out can
 * never be part of a cheaper plan: upstream, losses and prices only grow with the load.
 */
final class Front {
    static final Front NOTHING = new Front(List.of(State.NOTHING));

    private static final Comparator<State> BY_COST = Comparator.comparingLong(State::cents)
            .thenComparingDouble(State::load)
            .thenComparing(Comparator.comparingDouble(State::budget).reversed());

    private final List<State> states;

    private Front(List<State> states) {
        this.states = states;
    }

    /** The best of some states; each is compared with all. */
    static Front of(List<State> candidates) {
        candidates.sort(BY_COST);
        return new Front(oneLoad(candidates) ? bestOfOneLoad(candidates) : best(candidates));
    }

    private static boolean oneLoad(List<State> candidates) {
        return candidates.stream()
                .allMatch(state -> state.load() == candidates.get(0).load());
    }

    private static List<State> bestOfOneLoad(List<State> candidates) {
        var kept = new ArrayList<State>();
        var budget = Double.NEGATIVE_INFINITY;
        for (var state : candidates) {
            if (state.budget() > budget) {
                kept.add(state);
                budget = state.budget();
            }
        }
        return kept;
    }

    private static List<State> best(List<State> candidates) {
        var kept = new ArrayList<State>();
        // By load, the greatest budget that a state of no greater cost and load has; both rise.
        var reach = new TreeMap<Double, Double>();
        for (var state : candidates) {
            var best = reach.floorEntry(state.load());
            if (best == null || best.getValue() < state.budget()) {
                kept.add(state);
                reach.put(state.load(), state.budget());
                var next = reach.higherEntry(state.load());
                while (next != null && next.getValue() <= state.budget()) {
                    reach.remove(next.getKey());
                    next = reach.higherEntry(state.load());
                }
            }
        }
        return kept;
    }

    List<State> states() {
        return states;
    }

    int size() {
        return states.size();
    }

    /** Both at once: costs and loads add up, the smaller budget counts. */
    Front and(Front other) {
        if (this == NOTHING) {
            return other;
        }
        var sums = new ArrayList<State>();
        var others = other.byLoad();
        for (var mine : byLoad()) {
            for (var theirs : others) {
                sweep(mine, theirs, sums);
            }
        }
        return of(sums);
    }

    /** States of one load, by rising cost and so by rising budget. */
    List<List<State>> byLoad() {
        var groups = new TreeMap<Double, List<State>>();
        states.forEach(state ->
                groups.computeIfAbsent(state.load(), load -> new ArrayList<>()).add(state));
        return List.copyOf(groups.values());
    }

    /** Raises whichever budget is the smaller: every other pair costs more for no more budget. */
    private static void sweep(List<State> mine, List<State> theirs, List<State> sums) {
        int i = 0;
        int j = 0;
        while (i < mine.size() && j < theirs.size()) {
            var one = mine.get(i);
            var two = theirs.get(j);
            sums.add(new State(
                    one.cents() + two.cents(),
                    one.load() + two.load(),
                    Math.min(one.budget(), two.budget()),
                    one.trace().and(two.trace())));
            if (one.budget() <= two.budget()) {
                i++;
            }
            if (two.budget() <= one.budget()) {
                j++;
            }
        }
    }
}

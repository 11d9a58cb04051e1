package fairflame.diagnosis;

import java.util.List;
import java.util.function.Function;

/** What the readings prove. Only a {@link Settled} finding can be repaired and priced: the scope takes no other type. */
public sealed interface Finding {
    /** All causes of the complaint, settled first, then by standing and weight of support, ruled out last. */
    List<Candidate> candidates();

    /** Contradictions and doubts about readings, in words. */
    List<String> conflicts();

    <R> R match(Function<Settled, R> settled, Function<Unsettled, R> unsettled, Function<StopWork, R> stopWork);

    /**
     * At least one cause is proved by its deciding check, no contradiction is open and every gate is answered no.
     *
     * @param causes the settled causes, one or more
     */
    record Settled(List<Candidate> causes, List<Candidate> candidates, List<String> conflicts) implements Finding {
        public Settled {
            causes = List.copyOf(causes);
            candidates = List.copyOf(candidates);
            conflicts = List.copyOf(conflicts);
        }

        @Override
        public <R> R match(Function<Settled, R> s, Function<Unsettled, R> u, Function<StopWork, R> w) {
            return s.apply(this);
        }
    }

    /**
     * Too little or contradictory evidence.
     *
     * @param next the checks to do next, best first, at least one
     */
    record Unsettled(List<NextCheck> next, List<Candidate> candidates, List<String> conflicts) implements Finding {
        public Unsettled {
            next = List.copyOf(next);
            candidates = List.copyOf(candidates);
            conflicts = List.copyOf(conflicts);
        }

        @Override
        public <R> R match(Function<Settled, R> s, Function<Unsettled, R> u, Function<StopWork, R> w) {
            return u.apply(this);
        }
    }

    /**
     * Dangerous evidence: stop work, no repair price.
     *
     * @param dangers every open gate, at least one
     */
    record StopWork(List<Danger> dangers, List<Candidate> candidates, List<String> conflicts) implements Finding {
        public StopWork {
            dangers = List.copyOf(dangers);
            candidates = List.copyOf(candidates);
            conflicts = List.copyOf(conflicts);
        }

        @Override
        public <R> R match(Function<Settled, R> s, Function<Unsettled, R> u, Function<StopWork, R> w) {
            return w.apply(this);
        }
    }

    /**
     * An open danger gate.
     *
     * @param gate id, such as {@code G1}
     * @param title what the danger is
     * @param found the answer or reading that opened it
     * @param advice what to do now, a sentence each
     * @param source key of the source
     */
    record Danger(String gate, String title, String found, List<String> advice, String source) {
        public Danger {
            advice = List.copyOf(advice);
        }
    }
}

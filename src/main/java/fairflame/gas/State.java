package fairflame.gas;

/**
 * One way to settle everything behind a point of the piping.
 *
 * @param cents what it costs
 * @param load flow that still comes through the point, cubic feet per hour
 * @param budget potential that may still be lost before the point; infinite when nothing is fed through it
 * @param trace how it came about
 */
record State(long cents, double load, double budget, Trace trace) {
    static final State NOTHING = new State(0, 0, Double.POSITIVE_INFINITY, Trace.NONE);

    /** Less than this of potential is arithmetic, not pressure. */
    static final double HAIR = 1e-9;

    boolean feasible() {
        return budget >= -HAIR;
    }

    /** Decisions, shared between states. */
    static final class Trace {
        static final Trace NONE = new Trace();

        private final Decision decision;
        private final Trace one;
        private final Trace other;

        private Trace() {
            this.decision = Decision.NONE;
            this.one = this;
            this.other = this;
        }

        private Trace(Decision decision, Trace one, Trace other) {
            this.decision = decision;
            this.one = one;
            this.other = other;
        }

        Trace and(Decision next) {
            return new Trace(next, this, NONE);
        }

        Trace and(Trace sibling) {
            if (sibling == NONE) {
                return this;
            }
            return this == NONE ? sibling : new Trace(Decision.NONE, this, sibling);
        }

        void each(java.util.function.Consumer<Decision> use) {
            var waiting = new java.util.ArrayDeque<Trace>();
            waiting.push(this);
            while (!waiting.isEmpty()) {
                var trace = waiting.pop();
                if (trace != NONE) {
                    if (!trace.decision.equals(Decision.NONE)) {
                        use.accept(trace.decision);
                    }
                    waiting.push(trace.one);
                    waiting.push(trace.other);
                }
            }
        }
    }

    /**
     * One thing done.
     *
     * @param kind of the change
     * @param at segment or appliance
     * @param pipe laid; that of {@link OwnLine} for a line of its own, any where no pipe is laid
     * @param load flow at full fire
     */
    record Decision(Change.Kind kind, String at, Pipe pipe, double load, long cents) {
        private static final Pipe ANY = new Pipe(Material.STEEL_SCHEDULE_40, "1");
        static final Decision NONE = new Decision(Change.Kind.ONCE, "", ANY, 0, 0);

        static Decision regulator(String at, double load, long cents) {
            return new Decision(Change.Kind.REGULATOR, at, ANY, load, cents);
        }

        static Decision valve(String at, double load, long cents) {
            return new Decision(Change.Kind.EXCESS_FLOW_VALVE, at, ANY, load, cents);
        }
    }
}

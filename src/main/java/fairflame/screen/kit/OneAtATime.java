package fairflame.screen.kit;

import fairflame.visit.Progress;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.Consumer;
import java.util.function.Function;

/** The long work of one model: while some of it runs, a key that is pressed again is not heeded. */
public final class OneAtATime implements LongWork {
    private final LongWork runner;
    private final AtomicBoolean taken = new AtomicBoolean();

    public OneAtATime(LongWork runner) {
        this.runner = runner;
    }

    @Override
    public <T> void run(String key, Function<Progress, T> work, Consumer<T> done, Consumer<Ended> ended) {
        if (taken.getAndSet(true)) {
            return;
        }
        runner.run(
                key,
                progress -> {
                    try {
                        return work.apply(progress);
                    } finally {
                        // Also when the work fails by a fault of the program: the key stays of use.
                        taken.set(false);
                    }
                },
                done,
                ended);
    }
}

package fairflame.screen.kit;

import fairflame.visit.Progress;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Function;

/** Keeps work until it is told to run it, as if it took its time. */
public final class Later implements LongWork {
    private final List<Runnable> waiting = new ArrayList<>();

    @Override
    public <T> void run(String key, Function<Progress, T> work, Consumer<T> done, Consumer<Ended> ended) {
        waiting.add(() -> new AtOnce().run(key, work, done, ended));
    }

    /** How much work was asked for and is not done. */
    public int waiting() {
        return waiting.size();
    }

    /** Does all of it. */
    public void go() {
        var all = List.copyOf(waiting);
        waiting.clear();
        all.forEach(Runnable::run);
    }
}

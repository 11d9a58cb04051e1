package fairflame.screen.kit;

import fairflame.Refusal;
import fairflame.screen.look.Words;
import fairflame.visit.Progress;
import java.util.concurrent.CancellationException;
import java.util.function.Consumer;
import java.util.function.Function;
import javafx.concurrent.Task;

/** Runs long work off the window's thread, with its progress on a sheet after a second. */
public final class BesideWindow implements LongWork {
    private final Busy busy;
    private final Words words;

    public BesideWindow(Veil veil, Words words) {
        this.busy = new Busy(veil, words);
        this.words = words;
    }

    @Override
    public <T> void run(String key, Function<Progress, T> work, Consumer<T> done, Consumer<Ended> ended) {
        var task = new Watched<>(work, words.say("busy.stopping"));
        busy.run(words.say("work." + key), task, done, failure -> {
            if (failure instanceof Refusal refusal) {
                ended.accept(Ended.refused(refusal));
            } else if (failure instanceof CancellationException) {
                ended.accept(Ended.stopped(words.say("busy.stopped")));
            } else {
                throw new IllegalStateException(failure);
            }
        });
    }

    /** Ends only where the work looks up, so that what is told of it is what happened. */
    private static final class Watched<T> extends Task<T> implements Progress {
        private final Function<Progress, T> work;
        private final String stopping;
        private volatile boolean stop;

        Watched(Function<Progress, T> work, String stopping) {
            this.work = work;
            this.stopping = stopping;
        }

        @Override
        protected T call() {
            return work.apply(this);
        }

        @Override
        public void at(long done, long all) {
            if (stop) {
                throw new CancellationException();
            }
            updateProgress(done, all);
        }

        @Override
        public void say(String words) {
            if (!stop) {
                updateMessage(words);
            }
        }

        @Override
        public boolean cancel(boolean mayInterrupt) {
            stop = true;
            updateMessage(stopping);
            return false;
        }
    }
}

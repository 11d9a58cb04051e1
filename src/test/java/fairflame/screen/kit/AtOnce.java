package fairflame.screen.kit;

import fairflame.Refusal;
import fairflame.visit.Progress;
import java.util.concurrent.CancellationException;
import java.util.function.Consumer;
import java.util.function.Function;

/** Runs work at once, where it is asked for. */
public class AtOnce implements LongWork {
    private final Progress progress;

    /** Nobody looks on. */
    public AtOnce() {
        this(Progress.UNWATCHED);
    }

    /** Somebody looks on, and may end the work. */
    public AtOnce(Progress progress) {
        this.progress = progress;
    }

    /** A person who ends the work when it looks up for this time, counted from 0. */
    public static AtOnce endedAt(int look) {
        var looks = new int[1];
        return new AtOnce((done, all) -> {
            if (looks[0]++ == look) {
                throw new CancellationException();
            }
        });
    }

    @Override
    public <T> void run(String key, Function<Progress, T> work, Consumer<T> done, Consumer<Ended> ended) {
        T result;
        try {
            result = work.apply(progress);
        } catch (Refusal refusal) {
            ended.accept(Ended.refused(refusal));
            return;
        } catch (CancellationException stopped) {
            ended.accept(Ended.stopped("ended by hand"));
            return;
        }
        done.accept(result);
    }
}

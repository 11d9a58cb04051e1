package fairflame.screen.kit;

import fairflame.visit.Progress;
import java.util.function.Consumer;
import java.util.function.Function;

/** Runs work that may take its time: beside the window in the program, at once in a test. */
public interface LongWork {
    /**
     * Runs the work; its end is told where the model lives.
     *
     * @param key names the work in words, behind {@code work.}
     * @param done takes the result
     * @param ended takes why there is none: refused, or ended by a person
     */
    <T> void run(String key, Function<Progress, T> work, Consumer<T> done, Consumer<Ended> ended);
}

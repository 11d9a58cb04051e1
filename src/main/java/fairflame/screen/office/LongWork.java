package fairflame.screen.office;

import fairflame.visit.Progress;
import java.util.function.Consumer;
import java.util.function.Function;

/** Runs work that may take its time: beside the window in the program, at once in a test. */
public interface LongWork {
    /**
     * Runs the work; its end is told where the model lives.
     *
     * @param key names the work in words
     * @param done takes the result
     * @param refused takes why there is none, in words; also when a person ended the work
     */
    <T> void run(String key, Function<Progress, T> work, Consumer<T> done, Consumer<String> refused);
}

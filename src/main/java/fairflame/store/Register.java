package fairflame.store;

import java.util.List;
import java.util.Optional;

/**
 * A register of the office. It only grows: a new state of a thing stands beside the former ones, the last counts.
 *
 * @param <T> what is registered
 */
public interface Register<T extends Record> {
    /** Makes this the state that counts; nothing happens when it already is. */
    void put(String key, T thing);

    /** The state that counts. */
    Optional<T> find(String key);

    /** The states that count, in the order in which their keys first came. */
    List<T> all();

    /** All states of a thing, the first one first. */
    List<T> history(String key);
}

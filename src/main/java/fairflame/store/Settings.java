package fairflame.store;

import java.util.Optional;
import java.util.SortedMap;

/** The shop's own choices by name. */
public interface Settings {
    Optional<String> find(String name);

    /** Stores a setting over its former content. */
    void put(String name, String content);

    SortedMap<String, String> all();
}

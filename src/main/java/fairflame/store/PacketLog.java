package fairflame.store;

import java.util.List;
import java.util.Optional;

/** What came in from other laptops, and what did not agree with what was here. */
public interface PacketLog {
    /** The last state taken in of a thing from an origin. */
    Optional<Received> last(String origin, String kind, String key);

    /** Notes a state that was taken in, over the former one. */
    void note(String origin, String kind, String key, Received state);

    /** Keeps what disagrees, beside what is here; once, however often it comes. */
    void conflict(Conflict conflict);

    /** All that disagreed, the first one first; those that a person settled too. */
    List<Conflict> conflicts();

    /** A person has looked at both sides and dealt with it. */
    void settle(int position, String words);

    /**
     * A state of a thing.
     *
     * @param digest SHA-256 of its bytes
     * @param made time at which the packet was made, ISO 8601 in UTC
     */
    record Received(String digest, String made) {}

    /**
     * Two sides that disagree.
     *
     * @param position from 1; 0 before it is stored
     * @param ours digest of what is here, empty when nothing is
     * @param theirs bytes that came in
     * @param settled what a person did, absent while open
     */
    record Conflict(
            int position,
            String origin,
            String kind,
            String key,
            String ours,
            String theirs,
            String reason,
            Optional<String> settled) {}
}

package fairflame.store;

import fairflame.agreement.SignedRevision;
import java.util.List;
import java.util.Optional;

/** Signed revisions. Each is stored once and never changes. */
public interface Agreements {
    /**
     * Stores a signed revision at the end of the chain. Doing so again changes nothing. Refused: a quote that is not
     * stored as it was signed, other content under the same revision, a seal that does not follow the last one.
     */
    void add(SignedRevision signed);

    /**
     * Stores what was signed on another laptop, at the end of that laptop's own chain. Refusals are those of {@link
     * #add}.
     *
     * @param origin name of the laptop, not empty
     */
    void receive(String origin, SignedRevision signed);

    Optional<SignedRevision> find(String quote, int revision);

    /** The signed revision with the highest number. */
    Optional<SignedRevision> latest(String quote);

    /** All, in the order in which they were stored: for one origin that of its chain. */
    List<SignedRevision> all();

    /** Those of one origin, in the order of its chain; the empty origin is this database. */
    List<SignedRevision> of(String origin);

    /** The stored bytes, for proof. */
    Optional<byte[]> bytes(String quote, int revision);
}

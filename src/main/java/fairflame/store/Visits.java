package fairflame.store;

import java.util.List;
import java.util.Optional;

/** Visits as they were taken down, and what is still being typed. */
public interface Visits {
    /** Stores a visit, over the former text of the same visit, and drops its draft. */
    void save(StoredVisit visit);

    Optional<StoredVisit> find(String id);

    /** The latest day first, then by id. */
    List<StoredVisit> all();

    /** The latest day first, then by id. */
    List<StoredVisit> inState(String state);

    /** Keeps what is being typed, over the former draft of the visit. Leaves no trace in the journal. */
    void saveDraft(String visit, String text);

    Optional<Draft> draft(String visit);

    /** All drafts, the last saved first. */
    List<Draft> drafts();

    /** Forgets a draft; does nothing when there is none. */
    void dropDraft(String visit);
}

package fairflame.store;

import java.util.List;
import java.util.Optional;

/** Photographs and other files taken at a visit. A stored file never changes; it may be taken out. */
public interface Attachments {
    /** Stores a file. Doing so again changes nothing; other content under the same name is refused. */
    void add(Attachment attachment);

    /** Takes a file out again; nothing happens when it is not there. It stands in the journal. */
    void remove(String visit, String name);

    Optional<Attachment> find(String visit, String name);

    /** Those of a visit, by name. */
    List<Attachment> of(String visit);

    /** All, by visit and name. */
    List<Attachment> all();
}

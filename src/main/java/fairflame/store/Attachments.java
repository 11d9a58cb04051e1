package fairflame.store;

import java.util.List;
import java.util.Optional;

/** Photographs and other files taken at a visit. A stored file never changes. */
public interface Attachments {
    /** Stores a file. Doing so again changes nothing; other content under the same name is refused. */
    void add(Attachment attachment);

    Optional<Attachment> find(String visit, String name);

    /** Those of a visit, by name. */
    List<Attachment> of(String visit);

    /** All, by visit and name. */
    List<Attachment> all();
}

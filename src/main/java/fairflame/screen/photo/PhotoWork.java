package fairflame.screen.photo;

import fairflame.quote.Photo;
import fairflame.visit.Progress;
import java.nio.file.Path;
import java.util.List;

/** What photographs ask of the use cases. */
public interface PhotoWork {
    /** Those of a visit, in the order in which they came. */
    List<Photo> of(String visit);

    /** The picture of one, a JPEG. */
    byte[] picture(String visit, String name);

    /** Takes a picture in; refused when it is none, too large, or damaged. May take seconds. */
    Photo add(String visit, Path file, Progress progress);

    /** Says something else of one; refused when it is sealed. */
    void tell(String visit, Photo told);

    /** Takes one out again; refused when it is sealed. */
    void remove(String visit, String name);
}

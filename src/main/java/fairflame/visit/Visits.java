package fairflame.visit;

import fairflame.Refusal;
import fairflame.store.TextFile;
import java.nio.file.Path;

/** Reads visits from files. */
public final class Visits {
    private Visits() {}

    /** The visit in a file, its gas line too; a refusal names the file. */
    public static VisitRecord read(Path file, Library library) {
        var text = TextFile.read(file);
        try {
            var visit = library.visits().read(text);
            Examination.layout(visit, library);
            return visit;
        } catch (Refusal refusal) {
            throw refusal.at(file.toString());
        }
    }
}

package fairflame.screen.handover;

import fairflame.agreement.SignedRevision;
import fairflame.visit.Progress;
import java.nio.file.Path;

/** What giving the customer a copy asks of the use cases. */
public interface CopyWork {
    /** Folder that copies go to: the one chosen last, else the shop's. */
    Path folder();

    /** Writes the signed paper into a folder, remembers the folder and gives the paper's place. */
    Path paper(SignedRevision signed, Path folder, Progress progress);

    /** Writes an e-mail draft with the signed paper attached and gives its place. */
    Path mail(SignedRevision signed, Progress progress);

    /** Prints the signed paper and gives the printer's name; refused, saying what to do, when there is none. */
    String print(SignedRevision signed, Progress progress);
}

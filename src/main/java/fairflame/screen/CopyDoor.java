package fairflame.screen;

import fairflame.agreement.SignedRevision;
import fairflame.screen.handover.CopyWork;
import fairflame.visit.CustomerCopy;
import fairflame.visit.Drafts;
import fairflame.visit.Progress;
import fairflame.visit.Workplace;
import java.nio.file.Files;
import java.nio.file.Path;

/** The part of the door for the customer's copy. */
final class CopyDoor implements CopyWork {
    private static final String FOLDER = "copy-folder";

    private final Workplace workplace;
    private final Drafts drafts;

    CopyDoor(Workplace workplace, Drafts drafts) {
        this.workplace = workplace;
        this.drafts = drafts;
    }

    @Override
    public Path folder() {
        // A stick that was pulled out since is no place to write to.
        return drafts.remembered(FOLDER)
                .map(Path::of)
                .filter(Files::isDirectory)
                .orElse(workplace.papers());
    }

    @Override
    public Path paper(SignedRevision signed, Path folder, Progress progress) {
        var place = new CustomerCopy(workplace, signed, progress).paper(folder);
        drafts.remember(FOLDER, folder.toString());
        return place;
    }

    @Override
    public Path mail(SignedRevision signed, Progress progress) {
        return new CustomerCopy(workplace, signed, progress).mail();
    }

    @Override
    public String print(SignedRevision signed, Progress progress) {
        return new CustomerCopy(workplace, signed, progress).print();
    }
}

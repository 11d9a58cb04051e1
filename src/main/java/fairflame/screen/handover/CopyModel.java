package fairflame.screen.handover;

import fairflame.Refusal;
import fairflame.agreement.SignedRevision;
import fairflame.screen.look.Words;
import java.nio.file.Path;
import java.util.function.Supplier;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;

/** The customer's copy at once, without a window. */
final class CopyModel {
    private final CopyWork work;
    private final SignedRevision signed;
    private final String language;
    private final StringProperty folder;
    private final StringProperty said = new SimpleStringProperty("");
    private final StringProperty refusal = new SimpleStringProperty("");

    CopyModel(CopyWork work, SignedRevision signed, String language) {
        this.work = work;
        this.signed = signed;
        this.language = language;
        this.folder = new SimpleStringProperty(work.folder().toString());
    }

    /** Folder that the paper goes to. */
    StringProperty folder() {
        return folder;
    }

    /** What the last act did. */
    StringProperty said() {
        return said;
    }

    /** Why the last act was refused, and what to do. */
    StringProperty refusal() {
        return refusal;
    }

    void paper(Words words) {
        act(() -> words.say(
                "handover.copied",
                work.paper(signed, language, Path.of(folder.get())).toString()));
    }

    void mail(Words words) {
        act(() -> words.say("handover.copied", work.mail(signed, language).toString()));
    }

    /** Prints; may run beside the window. Gives the printer's name. */
    String print() {
        return work.print(signed, language);
    }

    /** Takes over what {@link #print} gave; on the window's thread. */
    void printed(Words words, String printer) {
        refusal.set("");
        said.set(words.say("handover.printed", printer));
    }

    /** Takes over that printing failed; what is no refusal is a fault of the program and thrown on. */
    void failed(Throwable thrown) {
        if (!(thrown instanceof Refusal refused)) {
            throw new IllegalStateException(thrown);
        }
        said.set("");
        refusal.set(refused.getMessage());
    }

    private void act(Supplier<String> act) {
        try {
            said.set(act.get());
            refusal.set("");
        } catch (Refusal refused) {
            failed(refused);
        }
    }
}

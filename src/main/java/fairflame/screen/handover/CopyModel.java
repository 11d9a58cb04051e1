package fairflame.screen.handover;

import fairflame.agreement.SignedRevision;
import fairflame.screen.kit.Ended;
import fairflame.screen.kit.LongWork;
import fairflame.screen.kit.OneAtATime;
import fairflame.screen.look.Words;
import fairflame.visit.Progress;
import java.nio.file.Path;
import java.util.function.Function;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;

/** The customer's copy at once, without a window. */
final class CopyModel {
    private static final String COPIED = "handover.copied";

    private final CopyWork work;
    private final SignedRevision signed;
    private final LongWork runner;
    private final Words words;
    private final StringProperty folder;
    private final StringProperty said = new SimpleStringProperty("");
    private final StringProperty refusal = new SimpleStringProperty("");

    CopyModel(CopyWork work, SignedRevision signed, LongWork runner, Words words) {
        this.work = work;
        this.signed = signed;
        this.runner = new OneAtATime(runner);
        this.words = words;
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

    void paper() {
        var to = Path.of(folder.get());
        act("copy", COPIED, progress -> work.paper(signed, to, progress).toString());
    }

    void mail() {
        act("copy", COPIED, progress -> work.mail(signed, progress).toString());
    }

    void print() {
        act("print", "handover.printed", progress -> work.print(signed, progress));
    }

    private void act(String key, String told, Function<Progress, String> act) {
        said.set("");
        refusal.set("");
        runner.run(key, act, done -> said.set(words.say(told, done)), Ended.in(refusal));
    }
}

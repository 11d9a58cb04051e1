package fairflame.screen.away;

import fairflame.Refusal;
import fairflame.agreement.SignedRevision;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;

/** One quote's paper for a customer who is away, without a window. What takes long is handed out as an act. */
public final class AwayModel {
    private final AwayWork work;
    private final String quote;
    private final String language;
    private final Consumer<SignedRevision> signed;
    private final StringProperty file = new SimpleStringProperty("");
    private final StringProperty refusal = new SimpleStringProperty("");
    private final ReadOnlyObjectWrapper<Optional<AwayWork.Sent>> sent = new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ReadOnlyObjectWrapper<Optional<AwayWork.Answer>> answer =
            new ReadOnlyObjectWrapper<>(Optional.empty());

    /** The paper of a quote; {@code signed} is told when a returned one was sealed. */
    public AwayModel(AwayWork work, String quote, String language, Consumer<SignedRevision> signed) {
        this.work = work;
        this.quote = quote;
        this.language = language;
        this.signed = signed;
        file.addListener((property, before, now) -> refusal.set(""));
    }

    /** Number of the quote. */
    public String quote() {
        return quote;
    }

    /** Path of the returned file, as typed, chosen or dropped. */
    public StringProperty file() {
        return file;
    }

    /** Why the last act was refused; empty when it was not. */
    public StringProperty refusal() {
        return refusal;
    }

    public ReadOnlyObjectProperty<Optional<AwayWork.Sent>> sent() {
        return sent.getReadOnlyProperty();
    }

    public ReadOnlyObjectProperty<Optional<AwayWork.Answer>> answer() {
        return answer.getReadOnlyProperty();
    }

    /** Writes the paper; may run beside the window. */
    public AwayWork.Sent write() {
        return work.write(quote, language);
    }

    /** Reads the returned file; may run beside the window. */
    public AwayWork.Answer read() {
        var typed = file.get().strip();
        if (typed.isEmpty()) {
            throw Refusal.missing("returned paper", "the file that the customer sent back");
        }
        try {
            return work.read(quote, Path.of(typed));
        } catch (InvalidPathException e) {
            throw Refusal.malformed("returned paper", typed, "the path of a file");
        }
    }

    /** Takes over what {@link #write} gave; on the window's thread. */
    public void wrote(AwayWork.Sent done) {
        refusal.set("");
        sent.set(Optional.of(done));
    }

    /** Takes over what {@link #read} gave; on the window's thread. */
    public void wasRead(AwayWork.Answer done) {
        refusal.set("");
        answer.set(Optional.of(done));
        done.signed().ifPresent(signed);
    }

    /** Takes over that an act failed; what is no refusal is a fault of the program and thrown on. */
    public void failed(Throwable thrown) {
        if (thrown instanceof Refusal refused) {
            refusal.set(refused.getMessage());
        } else {
            throw new IllegalStateException(thrown);
        }
    }
}

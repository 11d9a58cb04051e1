package fairflame.screen.away;

import fairflame.Refusal;
import fairflame.agreement.SignedRevision;
import fairflame.screen.kit.Ended;
import fairflame.screen.kit.LongWork;
import fairflame.screen.kit.OneAtATime;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;

/** One quote's paper for a customer who is away, without a window. */
public final class AwayModel {
    private final AwayWork work;
    private final String quote;
    private final String language;
    private final LongWork runner;
    private final Consumer<SignedRevision> signed;
    private final StringProperty file = new SimpleStringProperty("");
    private final StringProperty refusal = new SimpleStringProperty("");
    private final ReadOnlyObjectWrapper<Optional<AwayWork.Sent>> sent = new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ReadOnlyObjectWrapper<Optional<AwayWork.Answer>> answer =
            new ReadOnlyObjectWrapper<>(Optional.empty());

    /** The paper of a quote; {@code signed} is told when a returned one was sealed. */
    public AwayModel(AwayWork work, String quote, String language, LongWork runner, Consumer<SignedRevision> signed) {
        this.work = work;
        this.runner = new OneAtATime(runner);
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

    /** Writes the paper. */
    public void write() {
        runner.run(
                "away",
                progress -> work.write(quote, language, progress),
                done -> {
                    refusal.set("");
                    sent.set(Optional.of(done));
                },
                Ended.in(refusal));
    }

    /** Reads the returned file. */
    public void read() {
        var typed = file.get().strip();
        runner.run(
                "returned",
                progress -> work.read(quote, path(typed), progress),
                done -> {
                    refusal.set("");
                    answer.set(Optional.of(done));
                    done.signed().ifPresent(signed);
                },
                Ended.in(refusal));
    }

    private static Path path(String typed) {
        if (typed.isEmpty()) {
            throw Refusal.missing("returned paper", "the file that the customer sent back");
        }
        try {
            return Path.of(typed);
        } catch (InvalidPathException e) {
            throw Refusal.malformed("returned paper", typed, "the path of a file");
        }
    }
}

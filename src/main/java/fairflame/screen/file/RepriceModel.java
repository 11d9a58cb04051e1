package fairflame.screen.file;

import fairflame.screen.kit.LongWork;
import fairflame.screen.kit.OneAtATime;
import fairflame.visit.Repricing;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;

/** What an unsigned quote would come to today, without a window. */
public final class RepriceModel {
    private final FileWork work;
    private final String quote;
    private final LongWork runner;
    private final Consumer<String> done;
    private final Form form = new Form();
    private final ReadOnlyObjectWrapper<Optional<List<Repricing.Difference>>> found =
            new ReadOnlyObjectWrapper<>(Optional.empty());

    /** The prices of a quote; {@code done} is told the key of what was done. */
    public RepriceModel(FileWork work, String quote, LongWork runner, Consumer<String> done) {
        this.work = work;
        this.quote = quote;
        this.runner = new OneAtATime(runner);
        this.done = done;
    }

    public Form form() {
        return form;
    }

    /** What would be otherwise; empty until it is asked for. */
    public ReadOnlyObjectProperty<Optional<List<Repricing.Difference>>> found() {
        return found.getReadOnlyProperty();
    }

    /** Prices the quote as of today and keeps nothing. */
    public void show() {
        form.submit(() -> found.set(Optional.empty()));
        runner.run("prices", progress -> work.differences(quote), now -> found.set(Optional.of(now)), form::tell);
    }

    /** Makes the new revision. */
    public void make() {
        form.submit(() -> {});
        runner.run(
                "quote",
                progress -> {
                    work.reprice(quote, progress);
                    return "file.said.repriced";
                },
                done,
                form::tell);
    }
}

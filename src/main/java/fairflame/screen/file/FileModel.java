package fairflame.screen.file;

import fairflame.visit.JobFile;
import java.util.function.Consumer;
import java.util.function.Supplier;

/** The file of one signed job without a window: its cards and what happens after an act. */
public final class FileModel {
    private final FileWork work;
    private final JobFile job;
    private final Consumer<String> done;

    /**
     * A file.
     *
     * @param done told the key of what was done, with the file written after a tab, after which the file is read again
     */
    public FileModel(FileWork work, JobFile job, Consumer<String> done) {
        this.work = work;
        this.job = job;
        this.done = done;
    }

    public FileWork work() {
        return work;
    }

    public JobFile job() {
        return job;
    }

    public String quote() {
        return job.quote();
    }

    /** Does an act of a form and tells of it; false when it was refused. */
    boolean act(Form form, String said, Runnable act) {
        return written(form, said, () -> {
            act.run();
            return "";
        });
    }

    /** Does an act of a form and tells of it with the name of the file that it wrote; false when it was refused. */
    boolean written(Form form, String said, Supplier<String> act) {
        var told = new StringBuilder(said);
        var ok = form.submit(() -> {
            var file = act.get();
            told.append(file.isEmpty() ? "" : "\t" + file);
        });
        if (ok) {
            done.accept(told.toString());
        }
        return ok;
    }
}

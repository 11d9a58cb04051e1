package fairflame.screen.file;

import fairflame.screen.kit.LongWork;
import fairflame.screen.kit.OneAtATime;
import fairflame.visit.JobFile;
import fairflame.visit.Progress;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;

/** The file of one signed job without a window: its cards and what happens after an act. */
public final class FileModel {
    private final FileWork work;
    private final JobFile job;
    private final LongWork runner;
    private final Consumer<String> done;

    /**
     * A file.
     *
     * @param runner runs what makes papers
     * @param done told the key of what was done, with the file written after a tab, after which the file is read again
     */
    public FileModel(FileWork work, JobFile job, LongWork runner, Consumer<String> done) {
        this.work = work;
        this.job = job;
        this.runner = new OneAtATime(runner);
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
        var ok = form.submit(act);
        if (ok) {
            done.accept(said);
        }
        return ok;
    }

    /**
     * Reads a form, does the act that makes papers where long work runs, and tells of it.
     *
     * @param act reads the form and gives what is to be done, which gives the name of a file to be told, or none
     */
    void written(Form form, String said, Supplier<Function<Progress, String>> act) {
        form.read(act)
                .ifPresent(work -> runner.run(
                        "papers", work, file -> done.accept(file.isEmpty() ? said : said + "\t" + file), form::tell));
    }
}

package fairflame.screen.office;

import fairflame.screen.kit.Ended;
import fairflame.screen.kit.LongWork;
import fairflame.visit.Progress;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import java.util.function.Function;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;

/** Journal, electronic invoices, data and backup, without a window. */
public final class BooksModel {
    private static final int MOST_NUMBERS = 6;

    private final OfficeWork work;
    private final LongWork runner;
    private final SpanModel span;
    private final List<String> numbers;
    private final Typed invoice = new Typed("");
    private final Typed export;
    private final Typed backup;
    private final Typed data = new Typed("");
    private final Typed dataFolder = new Typed("");
    private final Typed copy = new Typed("");
    private final Typed copyFolder = new Typed("");
    private final ObjectProperty<Said> said = new SimpleObjectProperty<>(new Said("", "", 0));

    public BooksModel(OfficeWork work, LongWork runner) {
        this.work = work;
        this.runner = runner;
        this.span = new SpanModel(work.today());
        this.numbers = work.invoices();
        this.export = new Typed(
                work.papers().resolve("data-" + work.today() + ".jsonl").toString());
        this.backup = new Typed(
                work.papers().resolve("backup-" + work.today() + ".db").toString());
    }

    /**
     * What the last act did.
     *
     * @param act one of journal, ubl, export, import, backup, restore; empty for none
     * @param place of what was made
     * @param count of entries or rows
     */
    public record Said(String act, String place, long count) {}

    public ObjectProperty<Said> said() {
        return said;
    }

    public SpanModel span() {
        return span;
    }

    /** Number of an invoice or credit note. */
    public Typed invoice() {
        return invoice;
    }

    /** Numbers that hold the typed letters, at most six; none once a number is whole. */
    public List<String> numbers() {
        var letters = invoice.text().toLowerCase(Locale.ROOT);
        return numbers.stream()
                .filter(number -> number.toLowerCase(Locale.ROOT).contains(letters))
                .limit(numbers.contains(invoice.text()) ? 0 : MOST_NUMBERS)
                .toList();
    }

    /** Where the data lines go. */
    public Typed export() {
        return export;
    }

    /** Where the backup goes. */
    public Typed backup() {
        return backup;
    }

    /** Data lines to be read into {@link #dataFolder}. */
    public Typed data() {
        return data;
    }

    public Typed dataFolder() {
        return dataFolder;
    }

    /** Backup to be put into {@link #copyFolder}. */
    public Typed copy() {
        return copy;
    }

    public Typed copyFolder() {
        return copyFolder;
    }

    private void run(String act, Function<Progress, Said> doing, Consumer<Ended> ended) {
        said.set(new Said("", "", 0));
        runner.run(act, doing, said::set, ended);
    }

    /** Writes the journal of the typed days. */
    public void writeJournal() {
        span.read()
                .ifPresent(days -> run(
                        "journal",
                        progress -> {
                            var journal = work.journal(days);
                            return new Said("journal", journal.file().toString(), journal.entries());
                        },
                        Ended.in(span.to().refusal())));
    }

    /** Writes the invoice as UBL. */
    public void writeElectronic() {
        invoice.words("number", "the number of an invoice or credit note")
                .ifPresent(number -> run(
                        "ubl",
                        progress -> new Said("ubl", work.electronic(number).toString(), 1),
                        Ended.in(invoice.refusal())));
    }

    /** Writes everything as data lines. */
    public void writeData() {
        export.path("file")
                .ifPresent(file -> run(
                        "export",
                        progress -> new Said("export", file.toString(), work.exportAll(file, progress)),
                        Ended.in(export.refusal())));
    }

    /** Reads data lines into a folder without a database. */
    public void readData() {
        var file = data.path("file");
        var folder = dataFolder.path("folder");
        if (file.isPresent() && folder.isPresent()) {
            run(
                    "import",
                    progress -> new Said(
                            "import", folder.get().toString(), work.importAll(file.get(), folder.get(), progress)),
                    refusal(file.get(), data, dataFolder));
        }
    }

    /** Copies the database. */
    public void writeBackup() {
        backup.path("file")
                .ifPresent(file -> run(
                        "backup",
                        progress -> {
                            work.backup(file, progress);
                            return new Said("backup", file.toString(), 1);
                        },
                        Ended.in(backup.refusal())));
    }

    /** Puts a backup into a folder whose database is gone. */
    public void putBack() {
        var file = copy.path("file");
        var folder = copyFolder.path("folder");
        if (file.isPresent() && folder.isPresent()) {
            run(
                    "restore",
                    progress -> {
                        work.restore(file.get(), folder.get(), progress);
                        return new Said("restore", folder.get().toString(), 1);
                    },
                    refusal(file.get(), copy, copyFolder));
        }
    }

    /** A refusal that names the file stands beside the file, any other beside the folder. */
    private static Consumer<Ended> refusal(Path file, Typed from, Typed to) {
        return ended ->
                (ended.words().contains(file.toString()) ? from : to).refusal().set(ended.words());
    }
}

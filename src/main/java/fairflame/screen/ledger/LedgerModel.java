package fairflame.screen.ledger;

import fairflame.agreement.SignedRevision;
import fairflame.invoice.Invoice;
import fairflame.screen.file.Section;
import fairflame.screen.kit.Ended;
import fairflame.screen.kit.LongWork;
import fairflame.screen.kit.OneAtATime;
import fairflame.visit.NextStep;
import fairflame.visit.Progress;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import org.jspecify.annotations.Nullable;

/** The office's list and the file that lies open, without a window. */
public final class LedgerModel {
    /** What {@link #said} holds when a seal was proved. */
    static final String PROVED = "proved";

    private final LedgerWork work;
    private final LongWork runner;
    private final StringProperty search = new SimpleStringProperty("");
    private final StringProperty visit = new SimpleStringProperty("");
    private final StringProperty refusal = new SimpleStringProperty("");
    private final StringProperty said = new SimpleStringProperty("");
    private final ObjectProperty<@Nullable Section> section = new SimpleObjectProperty<>();
    private final ReadOnlyObjectWrapper<Map<NextStep, List<LedgerWork.Entry>>> groups =
            new ReadOnlyObjectWrapper<>(Map.of());
    private final ReadOnlyObjectWrapper<Optional<LedgerWork.File>> file = new ReadOnlyObjectWrapper<>(Optional.empty());

    /** The ledger; {@code runner} runs what makes papers. */
    public LedgerModel(LedgerWork work, LongWork runner) {
        this.work = work;
        this.runner = new OneAtATime(runner);
        search.addListener((property, before, now) -> list());
        visit.addListener((property, before, now) -> {
            section.set(null);
            read();
        });
        list();
    }

    public LedgerWork work() {
        return work;
    }

    /** Runs what makes papers. */
    public LongWork runner() {
        return runner;
    }

    public StringProperty search() {
        return search;
    }

    /** Number of the visit whose file lies open; empty for none. */
    public StringProperty visit() {
        return visit;
    }

    /** Why the last act was refused. */
    public StringProperty refusal() {
        return refusal;
    }

    /** What the last act did. */
    public StringProperty said() {
        return said;
    }

    /** The visits by what has to happen next, in the order of the day. */
    public ReadOnlyObjectProperty<Map<NextStep, List<LedgerWork.Entry>>> groups() {
        return groups.getReadOnlyProperty();
    }

    public ReadOnlyObjectProperty<Optional<LedgerWork.File>> file() {
        return file.getReadOnlyProperty();
    }

    /** The open visit's row. */
    public Optional<LedgerWork.Entry> entry() {
        return groups.get().values().stream()
                .flatMap(List::stream)
                .filter(entry -> entry.visit().equals(visit.get()))
                .findFirst();
    }

    public void list() {
        var sorted = new LinkedHashMap<NextStep, List<LedgerWork.Entry>>();
        var all = work.entries(search.get().strip());
        for (var next : NextStep.values()) {
            var group = all.stream().filter(entry -> entry.next() == next).toList();
            if (!group.isEmpty()) {
                sorted.put(next, group);
            }
        }
        groups.set(sorted);
    }

    /** Reads list and file anew, after something was done elsewhere. */
    public void again() {
        list();
        read();
    }

    private void read() {
        refusal.set("");
        said.set("");
        file.set(visit.get().isEmpty() ? Optional.empty() : Optional.of(work.file(visit.get())));
    }

    /** Part of the file that is shown; {@link #begin} until somebody chooses one. */
    public ObjectProperty<@Nullable Section> section() {
        return section;
    }

    /** Where the file opens: at what has to happen next. */
    public Section begin() {
        return entry().map(entry -> switch (entry.next()) {
                    case CONFLICT -> Section.WORK;
                    case PERMIT, INSPECTION -> Section.PERMIT;
                    case PERMIT_ISSUED, BOOK, CANCEL_RUNS, BOOKED -> Section.DAYS;
                    case REFUND -> Section.MONEY;
                    default -> Section.BILL;
                })
                .orElse(Section.BILL);
    }

    /** Reads list and file again after an act and says what it did. */
    public void done(String what) {
        list();
        read();
        said.set(what);
    }

    /** Writes an invoice or credit note as paper. */
    public void print(Invoice invoice) {
        written(progress -> work.papers().paper(invoice, progress));
    }

    /** Writes the signed quote as paper. */
    public void paper(SignedRevision signed) {
        written(progress -> work.papers().signedPaper(signed, progress));
    }

    private void written(Function<Progress, Path> paper) {
        said.set("");
        refusal.set("");
        runner.run("papers", paper, place -> said.set("ledger.written\t" + place), Ended.in(refusal));
    }

    /** Proves the seal of the open visit's signed quote. */
    public void verify() {
        var signed = file.get().flatMap(LedgerWork.File::signed).orElseThrow();
        said.set("");
        refusal.set("");
        runner.run(
                "proof",
                progress -> String.join(" ", work.verify(signed.quote().number())),
                differences -> {
                    said.set(differences.isEmpty() ? PROVED : "");
                    refusal.set(differences);
                },
                Ended.in(refusal));
    }
}

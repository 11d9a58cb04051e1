package fairflame.screen;

import fairflame.screen.bench.BenchModel;
import fairflame.screen.bench.Draft;
import fairflame.screen.bench.Judged;
import fairflame.screen.ledger.LedgerWork;
import fairflame.screen.look.Words;
import fairflame.screen.office.OfficePage;
import java.util.Arrays;
import java.util.Optional;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;

/** Where the user is and which visit lies on the bench, without a window. */
public final class ShellModel {
    /** Stops of the way of a visit, in order. */
    public enum Stop {
        COMPLAINT,
        READINGS,
        FINDING,
        REPAIR,
        PAPER,
        SIGNATURE,
        INVOICE,
        PAID
    }

    private static final String VISIT = "visit";
    private static final String PLACE = "screen";

    private final ScreenWork work;
    private final ObjectProperty<Place> place = new SimpleObjectProperty<>(Place.LEDGER);
    private final ObjectProperty<OfficePage> page = new SimpleObjectProperty<>(OfficePage.VISITS);
    private final StringProperty language;
    private final ReadOnlyObjectWrapper<Optional<BenchModel>> bench = new ReadOnlyObjectWrapper<>(Optional.empty());

    private Optional<LedgerWork.File> papers = Optional.empty();

    public ShellModel(ScreenWork work) {
        this.work = work;
        var kept = work.remembered("language");
        this.language = new SimpleStringProperty(Words.LANGUAGES.contains(kept) ? kept : Words.LANGUAGES.get(0));
        language.addListener((property, before, now) -> work.remember("language", now));
        place.addListener((property, before, now) -> work.remember(PLACE, now.name()));
    }

    public ScreenWork work() {
        return work;
    }

    public ObjectProperty<Place> place() {
        return place;
    }

    /** The page of the ledger that lies open. */
    public ObjectProperty<OfficePage> page() {
        return page;
    }

    public StringProperty language() {
        return language;
    }

    /** The visit on the bench. */
    public ReadOnlyObjectProperty<Optional<BenchModel>> bench() {
        return bench.getReadOnlyProperty();
    }

    /** The next language, for the key that switches. */
    public String otherLanguage() {
        var next = Words.LANGUAGES.indexOf(language.get()) + 1;
        return Words.LANGUAGES.get(next % Words.LANGUAGES.size());
    }

    /** Puts a fresh visit on the bench. */
    public void start() {
        lay(work.newVisit());
    }

    /** Puts a kept visit on the bench; nothing happens when there is no draft of it. */
    public void open(String visit) {
        work.draft(visit).ifPresent(this::lay);
    }

    /** Puts the visit that lay on the bench last there again and goes to the place where one was. */
    public void resume() {
        work.draft(work.remembered(VISIT)).ifPresent(draft -> bench.set(Optional.of(new BenchModel(work, draft))));
        Arrays.stream(Place.values())
                .filter(known -> known.name().equals(work.remembered(PLACE)))
                .filter(known -> bench.get().isPresent() || known == Place.LEDGER || known == Place.STOCK)
                .findFirst()
                .ifPresent(place::set);
        if (bench.get().filter(BenchModel::held).isPresent()) {
            place.set(Place.BENCH);
        }
    }

    private void lay(Draft draft) {
        work.remember(VISIT, draft.get("id"));
        bench.set(Optional.of(new BenchModel(work, draft)));
        place.set(Place.BENCH);
    }

    /** Reads the papers of the visit on the bench anew: after signing, billing, paying. */
    public void refresh() {
        papers = bench.get().map(model -> work.file(model.draft().get("id")));
    }

    /** Index of the last stop whose work is done, -1 for none. */
    public int reached() {
        if (bench.get().isEmpty()) {
            return -1;
        }
        var model = bench.get().get();
        if (papers.isPresent() && !papers.get().bills().isEmpty()) {
            var due = papers.get().bills().stream().anyMatch(bill -> bill.due().isPositive());
            return due ? Stop.INVOICE.ordinal() : Stop.PAID.ordinal();
        }
        if (papers.flatMap(LedgerWork.File::signed).isPresent()) {
            return Stop.SIGNATURE.ordinal();
        }
        var judged = model.judged().get();
        if (judged.flatMap(Judged::quote).isPresent()) {
            return Stop.PAPER.ordinal();
        }
        if (judged.isEmpty()) {
            return model.draft().has("complaint") ? Stop.COMPLAINT.ordinal() : -1;
        }
        return judged.get()
                .finding()
                .match(
                        settled -> Stop.FINDING.ordinal(),
                        unsettled -> model.draft().numbers("reading").isEmpty()
                                ? Stop.COMPLAINT.ordinal()
                                : Stop.READINGS.ordinal(),
                        stop -> -1);
    }
}

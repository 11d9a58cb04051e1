package fairflame.visit;

import fairflame.Refusal;
import fairflame.quote.Quote;
import fairflame.quote.StopWorkSheet;
import fairflame.store.Records;
import fairflame.store.StoredVisit;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;

/** Makes a visit's quote and keeps it, or the stop-work sheet where there may be no price. */
public final class Offer {
    /** Setting that names the series of quote numbers, so that no two laptops give the same number. */
    static final String SERIES_SETTING = "quote series";

    private static final String SERIES = "Q";

    private final Workplace workplace;
    private final Progress progress;

    public Offer(Workplace workplace) {
        this(workplace, Progress.UNWATCHED);
    }

    /** As it is watched: ended before all papers are made, it keeps nothing. */
    public Offer(Workplace workplace, Progress progress) {
        this.workplace = workplace;
        this.progress = progress;
    }

    /** What a visit ended in. */
    public sealed interface Result {
        Examination examined();

        /** Names of the files written. */
        List<String> files();

        <R> R match(Function<Quoted, R> quoted, Function<Halted, R> halted);
    }

    /** A quote, for the repair or for the diagnosis only. */
    public record Quoted(Examination examined, Quote quote, List<String> files) implements Result {
        @Override
        public <R> R match(Function<Quoted, R> quoted, Function<Halted, R> halted) {
            return quoted.apply(this);
        }
    }

    /** A danger: no price. */
    public record Halted(Examination examined, StopWorkSheet sheet, List<String> files) implements Result {
        @Override
        public <R> R match(Function<Quoted, R> quoted, Function<Halted, R> halted) {
            return halted.apply(this);
        }
    }

    /**
     * Takes a visit as far as it may go. Asking again for the same unchanged visit gives the quote that was made; a
     * changed one makes a new revision.
     *
     * @param done what the technician did about a danger, a sentence each
     */
    public Result make(VisitRecord visit, List<String> done) {
        var examined = Examination.of(visit, workplace.library());
        return examined.finding()
                .match(
                        settled -> quoted(examined, State.QUOTED),
                        unsettled -> quoted(examined, State.DIAGNOSED),
                        danger -> {
                            var sheet = Stopped.sheet(examined, danger, workplace.library(), workplace.now(), done);
                            return new Halted(examined, sheet, kept(visit, sheet));
                        });
    }

    private List<String> kept(VisitRecord visit, StopWorkSheet sheet) {
        return new Filing(workplace, progress)
                .keep(
                        records -> {
                            records.visits().save(stored(visit, State.STOPPED));
                            return sheet;
                        },
                        same -> new Papers(workplace, progress).stopWork(same, visit.language()))
                .files();
    }

    /** A quote and the text of its visit as they stand in the records. */
    private record Offered(Quote quote, Optional<String> visit) {}

    private Result quoted(Examination examined, State state) {
        var filed = new Filing(workplace, progress)
                .keep(
                        records -> {
                            var quote = quote(records, examined, state);
                            return new Offered(
                                    quote, records.visits().find(quote.visit()).map(StoredVisit::text));
                        },
                        offered -> new Papers(workplace, progress).quote(offered.quote(), offered.visit()));
        return new Quoted(examined, filed.content().quote(), filed.files());
    }

    /** The quote that was made, when nothing has changed; else the next revision, or the first. */
    private Quote quote(Records records, Examination examined, State state) {
        var making = new QuoteMaking(workplace.library());
        var visit = examined.visit();
        var photos = Photos.listed(records, visit.id());
        var former = records.quotes().rows().stream()
                .filter(row -> row.visit().equals(visit.id()))
                .findFirst();
        if (former.isPresent()) {
            var row = former.get();
            var stored = records.quotes().find(row.number(), row.revision()).orElseThrow();
            // A photograph that came after the signature changes nothing of what was signed.
            var shown = row.signed() ? stored.photos() : photos;
            var same = making.quote(examined, row.number(), row.revision(), row.made())
                    .with(shown);
            if (same.equals(stored)) {
                return stored;
            }
            refuseSigned(row.signed(), row.number());
            var next = making.quote(examined, row.number(), row.revision() + 1, workplace.today())
                    .with(photos);
            records.quotes().add(next);
            records.visits().save(stored(visit, state));
            return next;
        }
        records.visits().save(stored(visit, state));
        return records.quotes()
                .issue(
                        records.settings().find(SERIES_SETTING).orElse(SERIES),
                        workplace.today().getYear(),
                        number -> making.quote(examined, Objects.requireNonNull(number), 1, workplace.today())
                                .with(photos));
    }

    private static void refuseSigned(boolean signed, String number) {
        if (signed) {
            throw Refusal.notAllowed(
                    "changing quote " + number, "signed already", "a change order signed by the customer");
        }
    }

    private static StoredVisit stored(VisitRecord visit, State state) {
        return new StoredVisit(visit.id(), state.word(), visit.customerOnPaper().name(), visit.on(), visit.json());
    }
}

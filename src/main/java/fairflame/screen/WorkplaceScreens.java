package fairflame.screen;

import fairflame.Refusal;
import fairflame.agreement.SignedRevision;
import fairflame.agreement.SigningAct;
import fairflame.diagnosis.Finding;
import fairflame.diagnosis.Knowledge;
import fairflame.diagnosis.NextCheck;
import fairflame.quote.Quote;
import fairflame.screen.away.AwayWork;
import fairflame.screen.bench.Draft;
import fairflame.screen.bench.DraftOfVisit;
import fairflame.screen.bench.Drafting;
import fairflame.screen.bench.Judged;
import fairflame.screen.file.FileWork;
import fairflame.screen.handover.CopyWork;
import fairflame.screen.line.LineWork;
import fairflame.screen.office.OfficeWork;
import fairflame.screen.photo.PhotoWork;
import fairflame.screen.pin.PinWork;
import fairflame.screen.stock.StockWork;
import fairflame.visit.Agreeing;
import fairflame.visit.Drafts;
import fairflame.visit.Examination;
import fairflame.visit.Gauges;
import fairflame.visit.Library;
import fairflame.visit.LineStory;
import fairflame.visit.Offer;
import fairflame.visit.Progress;
import fairflame.visit.Proof;
import fairflame.visit.QuoteMaking;
import fairflame.visit.RefusalWords;
import fairflame.visit.Workplace;
import fairflame.wording.Language;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** The screens' door to a shop at work. Every line of it asks a use case; nothing is decided here. */
public final class WorkplaceScreens implements ScreenWork {
    private static final String PREVIEW = "draft";

    private final Workplace workplace;
    private final boolean demo;
    private final Drafts drafts;
    private Made quotes;
    private final LedgerRows ledger;

    public WorkplaceScreens(Workplace workplace, boolean demo) {
        this.workplace = workplace;
        this.demo = demo;
        this.drafts = new Drafts(workplace);
        this.quotes = Made.of(workplace.library());
        this.ledger = new LedgerRows(workplace, drafts);
    }

    /** Lets go of the shop's folder. */
    void close() {
        workplace.close();
    }

    @Override
    public Knowledge knowledge() {
        return workplace.library().knowledge();
    }

    @Override
    public List<Option> places() {
        return workplace.library().shop().jurisdictions().stream()
                .map(place -> new Option(place.id(), place.name()))
                .toList();
    }

    @Override
    public List<Option> zones() {
        return options(workplace.library().shop().rates().trip().keySet().stream());
    }

    @Override
    public List<Option> timeConditions() {
        var rates = workplace.library().shop().rates();
        return options(Stream.concat(rates.ownFactors().keySet().stream(), rates.ownHours().keySet().stream()));
    }

    @Override
    public List<Option> facts() {
        return workplace.library().shop().book().facts().stream()
                .map(fact -> new Option(fact.id(), fact.words()))
                .toList();
    }

    private static List<Option> options(Stream<String> keys) {
        return keys.sorted().map(key -> new Option(key, key.replace('-', ' '))).toList();
    }

    @Override
    public Judged judge(String visitJson) {
        var visit = workplace.library().visits().read(visitJson);
        var examined = Examination.of(visit, workplace.library());
        var next = examined.finding()
                .match(settled -> List.<NextCheck>of(), Finding.Unsettled::next, stop -> List.<NextCheck>of());
        var notPriced = "";
        var quote = Optional.<Quote>empty();
        if (!(examined.finding() instanceof Finding.StopWork)
                && visit.customer().isPresent()) {
            try {
                quote = Optional.of(quotes().quote(examined, PREVIEW, 1, workplace.today()));
            } catch (Refusal refusal) {
                notPriced = String.valueOf(refusal.getMessage());
            }
        }
        return new Judged(
                examined.finding(), examined.verdicts(), Gauges.of(examined.verdicts()), next, quote, notPriced);
    }

    /** Prices by the shop as it now is: what the stock room changes counts at once. */
    private QuoteMaking quotes() {
        if (!quotes.from().equals(workplace.library())) {
            quotes = Made.of(workplace.library());
        }
        return quotes.making();
    }

    private record Made(Library from, QuoteMaking making) {
        static Made of(Library library) {
            return new Made(library, new QuoteMaking(library));
        }
    }

    @Override
    public void keep(Draft draft) {
        drafts.keep(draft.get("id"), draft.text());
    }

    @Override
    public String shopName() {
        return workplace.library().shopName();
    }

    @Override
    public boolean demo() {
        return demo;
    }

    @Override
    public Draft newVisit() {
        var draft = Drafting.fresh(drafts.nextNumber(), workplace.today(), workplace.who());
        var place = remembered("place");
        var known = places().stream().map(Option::id).toList();
        return draft.with("jurisdiction", known.contains(place) || known.isEmpty() ? place : known.get(0));
    }

    @Override
    public Optional<Draft> draft(String visit) {
        return drafts.find(visit).map(Draft::parse).or(() -> drafts.visit(visit).map(DraftOfVisit::read));
    }

    @Override
    public Quote offer(Draft draft, Progress progress) {
        remember("place", draft.get("jurisdiction"));
        var visit = workplace.library().visits().read(Drafting.visitText(draft));
        return new Offer(workplace, progress).make(visit, List.of()).match(Offer.Quoted::quote, halted -> {
            throw Refusal.stopWork("quote", visit.id(), "a stop-work sheet");
        });
    }

    @Override
    public Path printStopWork(Draft draft, Progress progress) {
        var visit = workplace.library().visits().read(Drafting.visitText(draft));
        var files = new Offer(workplace, progress).make(visit, List.of()).files();
        return workplace.papers().resolve(files.get(0));
    }

    @Override
    public List<Promise> promises(Quote quote, String choice, String language) {
        var agreeing = new Agreeing(workplace);
        var consent = agreeing.consent(quote, choice);
        var promises = new java.util.ArrayList<Promise>();
        agreeing.declines(quote, choice).forEach((id, words) -> promises.add(new Promise("decline-" + id, id, words)));
        promises.add(new Promise(SigningAct.AUTHORISE, "", consent.get(0)));
        promises.add(new Promise(SigningAct.ELECTRONIC, "", consent.get(1)));
        return promises;
    }

    @Override
    public String told(Refusal refusal, String language) {
        return RefusalWords.of(
                refusal, workplace.library().in(Language.of(language)).wording());
    }

    @Override
    public Optional<LineStory> line(Quote quote) {
        return LineStory.of(workplace, quote);
    }

    @Override
    public SignedRevision sign(Quote quote, String choice, Act act, Progress progress) {
        var accepted = new HashSet<String>();
        var declined = new HashMap<String, String>();
        for (var promise : act.accepted()) {
            if (promise.declined().isEmpty()) {
                accepted.add(promise.id());
            } else {
                declined.put(promise.declined(), promise.words());
            }
        }
        return new Agreeing(workplace, progress)
                .sign(
                        quote.number(),
                        choice,
                        new SigningAct(
                                act.name(),
                                act.role(),
                                workplace.now(),
                                accepted,
                                declined,
                                act.strokes(),
                                act.witness()))
                .signed();
    }

    @Override
    public CopyWork copies() {
        return new CopyDoor(workplace, drafts);
    }

    @Override
    public PinWork pin() {
        return new PinDoor(workplace, demo);
    }

    @Override
    public List<Entry> entries(String words) {
        return ledger.entries(words);
    }

    @Override
    public File file(String visit) {
        return ledger.file(visit);
    }

    @Override
    public List<String> verify(String quote) {
        return new Proof(workplace)
                .of(quote).differences().stream()
                        .map(difference -> difference.toString())
                        .toList();
    }

    @Override
    public PhotoWork photos() {
        return new PhotoDoor(workplace);
    }

    @Override
    public AwayWork away() {
        return new AwayDoor(workplace);
    }

    @Override
    public FileWork papers() {
        return new FileDoor(workplace);
    }

    @Override
    public LineWork line() {
        return new LineDoor(workplace);
    }

    @Override
    public StockWork stock() {
        return new StockDoor(workplace);
    }

    @Override
    public OfficeWork office() {
        return new OfficeDoor(workplace);
    }

    @Override
    public String remembered(String key) {
        return drafts.remembered(key).orElse("");
    }

    @Override
    public void remember(String key, String value) {
        drafts.remember(key, value);
    }
}

package fairflame.screen;

import fairflame.screen.bench.Draft;
import fairflame.screen.bench.DraftOfVisit;
import fairflame.screen.ledger.LedgerWork;
import fairflame.visit.Drafts;
import fairflame.visit.State;
import fairflame.visit.VisitPapers;
import fairflame.visit.Workplace;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.joda.money.Money;

/** The rows of the ledger: drafts and stored visits with their papers, as the office lists them. */
final class LedgerRows {
    private final Workplace workplace;
    private final Drafts drafts;

    LedgerRows(Workplace workplace, Drafts drafts) {
        this.workplace = workplace;
        this.drafts = drafts;
    }

    List<LedgerWork.Entry> entries(String words) {
        var wanted = words.toLowerCase(Locale.ROOT);
        var papers = VisitPapers.all(workplace);
        var rows = new ArrayList<LedgerWork.Entry>();
        papers.stream()
                .filter(paper -> text(paper).contains(wanted))
                .map(this::stored)
                .forEach(rows::add);
        for (var kept : drafts.all()) {
            var known = papers.stream().anyMatch(paper -> paper.visit().equals(kept.visit()));
            if (!known && kept.text().toLowerCase(Locale.ROOT).contains(wanted)) {
                rows.add(drafted(Draft.parse(kept.text())));
            }
        }
        rows.sort(Comparator.comparing(LedgerWork.Entry::visit).reversed());
        return rows;
    }

    LedgerWork.File file(String visit) {
        var paper = VisitPapers.find(workplace, visit);
        var draft = drafts.find(visit).map(Draft::parse).or(() -> paper.map(each -> DraftOfVisit.read(each.text())));
        return new LedgerWork.File(
                visit,
                paper.flatMap(VisitPapers::quote),
                paper.flatMap(VisitPapers::signed),
                paper.map(VisitPapers::bills).orElse(List.of()),
                draft.map(LedgerRows::leads).orElse(0L));
    }

    private static long leads(Draft draft) {
        return draft.numbers("lead").stream()
                .filter(number -> !draft.get("lead." + number + ".removed").equals("yes"))
                .count();
    }

    /** Everything that a search may hit: what was typed and the numbers of the papers. */
    private static String text(VisitPapers paper) {
        var text = new StringBuilder(paper.visit() + " " + paper.customer() + " " + paper.text());
        paper.quote()
                .ifPresent(quote -> text.append(' ')
                        .append(quote.number())
                        .append(' ')
                        .append(quote.finding().headline()));
        paper.signed().ifPresent(signed -> text.append(' ').append(signed.seal().brief()));
        paper.bills().forEach(bill -> text.append(' ').append(bill.invoice().number()));
        return text.toString().toLowerCase(Locale.ROOT);
    }

    private LedgerWork.Entry stored(VisitPapers paper) {
        var place = paper.quote().map(quote -> quote.site().address().get(0)).orElse("");
        return new LedgerWork.Entry(paper.visit(), paper.customer(), place, paper.on(), next(paper), amount(paper));
    }

    private LedgerWork.Next next(VisitPapers paper) {
        if (!paper.bills().isEmpty()) {
            return paper.bills().stream().anyMatch(bill -> bill.due().isPositive())
                    ? LedgerWork.Next.PAYMENT
                    : LedgerWork.Next.NOTHING;
        }
        if (paper.signed().isPresent()) {
            return LedgerWork.Next.INVOICE;
        }
        if (paper.state().filter(state -> state == State.STOPPED).isPresent()) {
            return LedgerWork.Next.STOPPED;
        }
        return paper.quote()
                .map(quote ->
                        quote.validUntil().isBefore(workplace.today()) ? LedgerWork.Next.EXPIRED : LedgerWork.Next.SIGN)
                .orElse(LedgerWork.Next.FINISH);
    }

    private static Optional<Money> amount(VisitPapers paper) {
        if (!paper.bills().isEmpty()) {
            return Optional.of(paper.bills().get(paper.bills().size() - 1).due());
        }
        return paper.signed()
                .map(signed -> signed.taken().totals().total())
                .or(() -> paper.quote()
                        .map(quote -> quote.choices().get(0).totals().total()));
    }

    private LedgerWork.Entry drafted(Draft draft) {
        var date = draft.has("date") ? LocalDate.parse(draft.get("date")) : workplace.today();
        return new LedgerWork.Entry(
                draft.get("id"),
                draft.get("customer.name"),
                draft.get("customer.address").lines().findFirst().orElse(""),
                date,
                LedgerWork.Next.FINISH,
                Optional.empty());
    }
}

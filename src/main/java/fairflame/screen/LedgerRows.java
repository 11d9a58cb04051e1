package fairflame.screen;

import fairflame.screen.bench.Draft;
import fairflame.screen.bench.DraftOfVisit;
import fairflame.screen.ledger.LedgerWork;
import fairflame.visit.Drafts;
import fairflame.visit.JobFile;
import fairflame.visit.NextStep;
import fairflame.visit.VisitList;
import fairflame.visit.VisitPapers;
import fairflame.visit.Workplace;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/** The rows of the ledger: drafts and stored visits with their papers, as the office lists them. */
final class LedgerRows {
    private final Workplace workplace;
    private final Drafts drafts;
    private final VisitList list;

    LedgerRows(Workplace workplace, Drafts drafts) {
        this.workplace = workplace;
        this.drafts = drafts;
        this.list = new VisitList(workplace);
    }

    List<LedgerWork.Entry> entries(String words) {
        var wanted = words.toLowerCase(Locale.ROOT).split("\\s+");
        var stored = list.all();
        var rows = new ArrayList<LedgerWork.Entry>();
        stored.stream()
                .filter(row -> holds(row.text(), wanted))
                .map(LedgerRows::entry)
                .forEach(rows::add);
        var known = stored.stream().map(VisitList.Row::visit).collect(Collectors.toSet());
        for (var kept : drafts.all()) {
            if (!known.contains(kept.visit()) && holds(kept.text().toLowerCase(Locale.ROOT), wanted)) {
                rows.add(drafted(Draft.parse(kept.text())));
            }
        }
        rows.sort(Comparator.comparing(LedgerWork.Entry::visit).reversed());
        return rows;
    }

    /** Every word has to be found, in whatever order. */
    private static boolean holds(String text, String[] words) {
        return Arrays.stream(words).allMatch(text::contains);
    }

    private static LedgerWork.Entry entry(VisitList.Row row) {
        return new LedgerWork.Entry(row.visit(), row.customer(), row.place(), row.on(), row.next(), row.amount());
    }

    LedgerWork.File file(String visit) {
        var paper = VisitPapers.find(workplace, visit);
        var draft = drafts.find(visit).map(Draft::parse).or(() -> paper.map(each -> DraftOfVisit.read(each.text())));
        return new LedgerWork.File(
                visit,
                paper.flatMap(VisitPapers::quote),
                paper.flatMap(VisitPapers::signed),
                paper.map(VisitPapers::bills).orElse(List.of()),
                paper.flatMap(VisitPapers::signed)
                        .map(signed -> JobFile.of(workplace, signed.quote().number())),
                draft.map(LedgerRows::leads).orElse(0L));
    }

    private static long leads(Draft draft) {
        return draft.numbers("lead").stream()
                .filter(number -> !draft.get("lead." + number + ".removed").equals("yes"))
                .count();
    }

    private LedgerWork.Entry drafted(Draft draft) {
        var date = draft.has("date") ? LocalDate.parse(draft.get("date")) : workplace.today();
        return new LedgerWork.Entry(
                draft.get("id"),
                draft.get("customer.name"),
                draft.get("customer.address").lines().findFirst().orElse(""),
                date,
                NextStep.FINISH,
                Optional.empty());
    }
}

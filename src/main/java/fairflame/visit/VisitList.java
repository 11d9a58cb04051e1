package fairflame.visit;

import fairflame.quote.Quote;
import fairflame.store.PacketLog;
import fairflame.store.Records;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.joda.money.Money;

/** All stored visits with what has to happen next and the words by which each is found. */
public final class VisitList {
    private final Workplace workplace;
    private List<Row> rows = List.of();
    private Mark read = new Mark(-1, LocalDate.MIN);

    public VisitList(Workplace workplace) {
        this.workplace = workplace;
    }

    /**
     * One visit.
     *
     * @param place first line of the address of the site
     * @param amount of the quote, the signed work or what is due, whichever comes last
     * @param text everything that a search may hit, in small letters
     */
    public record Row(
            String visit,
            String customer,
            String place,
            LocalDate on,
            NextStep next,
            Optional<Money> amount,
            String text) {}

    /** What the rows were read from; they are read again only when it has changed. */
    private record Mark(long journal, LocalDate day) {}

    /** All rows, in the order in which the visits were stored. */
    public synchronized List<Row> all() {
        var now = new Mark(workplace.store().reading(records -> records.audit().last()), workplace.today());
        if (!now.equals(read)) {
            var papers = VisitPapers.all(workplace);
            rows = workplace.store().reading(records -> {
                var conflicts = records.packets().conflicts().stream()
                        .filter(conflict -> conflict.settled().isEmpty())
                        .toList();
                return papers.stream()
                        .map(paper -> row(records, paper, conflicts))
                        .toList();
            });
            read = now;
        }
        return rows;
    }

    private Row row(Records records, VisitPapers paper, List<PacketLog.Conflict> conflicts) {
        var job = paper.signed()
                .map(signed -> JobFile.of(
                        records, workplace, Signed.of(records, signed.quote().number())));
        var names = paper.quote().map(Quote::number).orElse(paper.visit());
        var open = conflicts.stream()
                .anyMatch(conflict ->
                        conflict.key().startsWith(names) || conflict.key().startsWith(paper.visit()));
        var next = open
                ? NextStep.CONFLICT
                : job.map(file -> NextStep.of(file, workplace.today())).orElseGet(() -> unsigned(paper));
        return new Row(
                paper.visit(),
                paper.customer(),
                paper.quote().map(quote -> quote.site().address().get(0)).orElse(""),
                paper.on(),
                next,
                amount(paper, job),
                words(paper, job));
    }

    private NextStep unsigned(VisitPapers paper) {
        if (paper.state().filter(state -> state == State.STOPPED).isPresent()) {
            return NextStep.STOPPED;
        }
        return paper.quote()
                .map(quote -> quote.validUntil().isBefore(workplace.today()) ? NextStep.EXPIRED : NextStep.SIGN)
                .orElse(NextStep.FINISH);
    }

    private static Optional<Money> amount(VisitPapers paper, Optional<JobFile> job) {
        return job.map(VisitList::amount)
                .or(() -> paper.quote()
                        .map(quote -> quote.choices().get(0).totals().total()));
    }

    /** What is still to come in: what is billed and open, and what is agreed and not billed. */
    private static Money amount(JobFile job) {
        return job.isBilled()
                ? job.account().balance()
                : job.agreed()
                        .totals()
                        .total()
                        .minus(job.billedTotal())
                        .plus(job.account().balance());
    }

    private static String words(VisitPapers paper, Optional<JobFile> job) {
        var text = new StringBuilder(paper.visit() + ' ' + paper.customer() + ' ' + paper.text());
        paper.quote().ifPresent(quote -> quoted(quote, text));
        job.ifPresent(file -> {
            add(
                    text,
                    file.agreed().signed().seal().brief(),
                    file.permit().permit().number());
            file.permit().gasWork().ifPresent(work -> add(text, work.fitter(), work.licence()));
            file.booking()
                    .ifPresent(
                            booking -> add(text, booking.crew(), booking.day().toString()));
            file.agreed().lines().forEach(line -> add(text, line.item(), line.description()));
            file.agreed().orders().forEach(order -> add(text, order.number(), order.reason()));
            file.papers().forEach(bill -> add(text, bill.number()));
            file.movements().forEach(movement -> add(text, movement.id(), movement.reason()));
        });
        return text.toString().toLowerCase(Locale.ROOT);
    }

    private static void quoted(Quote quote, StringBuilder text) {
        add(text, quote.number(), quote.heater(), quote.place());
        quote.site().address().forEach(line -> add(text, line));
        quote.customer().address().forEach(line -> add(text, line));
        add(text, quote.finding().headline());
        quote.finding().causes().forEach(line -> add(text, line));
        quote.finding().supports().forEach(line -> add(text, line));
        quote.choices().forEach(choice -> {
            add(text, choice.title());
            choice.lines().forEach(line -> add(text, line.item(), line.description()));
        });
    }

    private static void add(StringBuilder text, String... words) {
        for (var word : words) {
            text.append(' ').append(word);
        }
    }
}

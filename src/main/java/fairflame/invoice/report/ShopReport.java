package fairflame.invoice.report;

import fairflame.agreement.SignedRevision;
import fairflame.invoice.Invoice;
import fairflame.quote.Quote;
import fairflame.quote.Work;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/**
 * Figures of the shop over a time.
 *
 * @param wins by cause, the most quoted first
 * @param revenue by work, the largest first
 * @param hours against standard
 */
public record ShopReport(
        LocalDate from, LocalDate to, List<WinRate> wins, List<Revenue> revenue, List<TimeComparison> hours) {
    public ShopReport {
        wins = List.copyOf(wins);
        revenue = List.copyOf(revenue);
        hours = List.copyOf(hours);
    }

    /**
     * How many repair quotes for a cause were signed.
     *
     * @param cause id of the cause; a quote that mends several counts for each
     */
    public record WinRate(String cause, int quoted, int signed) {
        /** Share in thousandths, so that it needs no rounding to be drawn. */
        public int perMille() {
            return quoted == 0 ? 0 : Math.round(1000f * signed / quoted);
        }
    }

    /**
     * What was invoiced for work, before tax, credit notes taken out.
     *
     * @param work the tasks of a job, because access and hours of a job are shared between its tasks
     */
    public record Revenue(String work, int jobs, Money amount) {}

    /** The wins among the latest revisions of quotes. */
    public static List<WinRate> wins(Collection<Quote> quotes, Collection<SignedRevision> signed) {
        var numbers = new TreeSet<String>();
        signed.forEach(revision -> numbers.add(revision.quote().number()));
        var quoted = new TreeMap<String, int[]>();
        quotes.stream()
                .filter(Quote::repair)
                .forEach(quote -> causes(quote).forEach(cause -> {
                    var counts = quoted.computeIfAbsent(cause, key -> new int[2]);
                    counts[0]++;
                    counts[1] += numbers.contains(quote.number()) ? 1 : 0;
                }));
        return quoted.entrySet().stream()
                .map(entry -> new WinRate(entry.getKey(), entry.getValue()[0], entry.getValue()[1]))
                .sorted(Comparator.comparing(WinRate::quoted).reversed().thenComparing(WinRate::cause))
                .toList();
    }

    private static TreeSet<String> causes(Quote quote) {
        var causes = new TreeSet<String>();
        quote.choices()
                .forEach(choice -> choice.work().stream().map(Work::cause).forEach(causes::add));
        return causes;
    }

    /** Revenue by work; an invoice of a quote that is not signed here counts as other work. */
    public static List<Revenue> revenue(
            Collection<Invoice> papers, Collection<SignedRevision> signed, CurrencyUnit currency) {
        var work = new HashMap<String, String>();
        signed.forEach(revision -> work.put(revision.quote().number(), tasks(revision)));
        Map<String, Money> sums = new TreeMap<>();
        var jobs = new HashMap<String, TreeSet<String>>();
        for (var paper : papers) {
            var name = work.getOrDefault(paper.quote(), "other work");
            sums.merge(name, paper.totals().beforeTax(), Money::plus);
            jobs.computeIfAbsent(name, key -> new TreeSet<>()).add(paper.quote());
        }
        var rows = new ArrayList<Revenue>();
        sums.forEach((name, sum) -> rows.add(
                new Revenue(name, jobs.getOrDefault(name, new TreeSet<>()).size(), sum)));
        rows.sort(Comparator.comparing(Revenue::amount).reversed().thenComparing(Revenue::work));
        return rows;
    }

    private static String tasks(SignedRevision revision) {
        var ids = new TreeSet<String>();
        revision.taken().work().forEach(work -> ids.add(work.task()));
        return ids.isEmpty() ? "diagnosis" : String.join(" + ", ids);
    }
}

package fairflame.quote;

import fairflame.Refusal;
import fairflame.catalog.Jurisdiction;
import fairflame.catalog.PermitNeed;
import fairflame.catalog.Shop;
import fairflame.catalog.Task;
import fairflame.catalog.Trade;
import fairflame.diagnosis.Candidate;
import fairflame.repair.Scope;
import fairflame.repair.ScopedTask;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.joda.money.Money;

/**
 * Prices a scope. In this order: parts, consumables, labour, minimum charge, trip, permit fee, other lines; line
 * discounts; document discount shared to the cent; diagnostic fee credited; tax; deposit. Each amount is rounded once.
 */
public final class Pricing {
    private final Shop shop;
    private final Jurisdiction place;
    private final PricingInputs inputs;
    private final LocalDate made;

    /**
     * Prices for one quote.
     *
     * @param made day of the quote, for the days in which a diagnostic fee is credited
     */
    public Pricing(Shop shop, Jurisdiction place, PricingInputs inputs, LocalDate made) {
        this.shop = shop;
        this.place = place;
        this.inputs = inputs;
        this.made = made;
    }

    /**
     * The price of a repair.
     *
     * @param causes what the repair rests on; their reasons become the basis of the lines
     */
    public Priced repair(Scope scope, List<Candidate> causes) {
        var grounds = Grounds.of(causes);
        var bill = new Labour(shop, place).bill(scope.tasks(), inputs.conditions());
        var duties = duties(scope);
        var drafts = new ArrayList<Draft>();
        drafts.addAll(new PartLines(shop, grounds).of(scope.tasks()));
        drafts.addAll(new LabourLines(shop, place, grounds).of(bill, scope.tasks()));
        drafts.addAll(new FeeLines(shop, place, inputs).repair(scope.id(), duties));
        var discounted = Discounting.lines(drafts, inputs.lineDiscounts());
        var further = inputs.further().contains(scope.id());
        return priced(bill.hours(), duties, credited(lines(discounted, further), further));
    }

    /** The price of a diagnosis without repair: its fee and the trip, never a repair line. */
    public Priced diagnosis() {
        var drafts = new FeeLines(shop, place, inputs).diagnosis();
        return priced(BigDecimal.ZERO, Duties.NONE, lines(drafts, false));
    }

    private List<Line> lines(List<Draft> drafts, boolean further) {
        var currency = shop.currency();
        var shares = inputs.discount()
                .map(discount -> Discounting.shares(drafts, discount, place, currency))
                .orElseGet(
                        () -> drafts.stream().map(draft -> Money.zero(currency)).toList());
        var lines = new ArrayList<Line>();
        for (int i = 0; i < drafts.size(); i++) {
            lines.add(drafts.get(i).line("L" + (i + 1), shares.get(i), place, further));
        }
        return lines;
    }

    private Priced priced(BigDecimal hours, Duties duties, List<Line> lines) {
        var totals = Taxation.of(lines, place.tax(), shop.currency());
        return new Priced(hours, duties, lines, totals, Deposit.of(place.deposit(), totals.total()));
    }

    private List<Line> credited(List<Line> lines, boolean further) {
        var paid = inputs.paidDiagnosis().filter(this::inTime);
        if (paid.isEmpty()) {
            return lines;
        }
        var zero = Money.zero(shop.currency());
        var most = Taxation.of(lines, place.tax(), shop.currency()).beforeTax();
        var credit = paid.get().amount().isGreaterThan(most) ? most : paid.get().amount();
        var result = with(lines, credit, paid.get(), further);
        var total = Taxation.of(result, place.tax(), shop.currency()).total();
        while (total.isLessThan(zero)) {
            // A taxed fee against an untaxed repair: the credit takes its tax with it, so less of it fits.
            credit = credit.plus(total);
            result = with(lines, credit, paid.get(), further);
            total = Taxation.of(result, place.tax(), shop.currency()).total();
        }
        return credit.isPositive() ? result : lines;
    }

    private List<Line> with(List<Line> lines, Money credit, PaidDiagnosis paid, boolean further) {
        var words = "diagnostic fee " + paid.amount() + " paid on " + paid.on() + ", credited when the repair follows "
                + "within " + shop.rates().creditDays() + " days, at most down to a total of zero"
                + (paid.sameTrip() ? "; the trip was paid with it and is not charged again" : "");
        var draft = Draft.of(
                        LineKind.DIAGNOSIS,
                        "",
                        "Diagnostic fee credited",
                        Draft.Count.once("each", credit.negated()),
                        List.of(new Basis("credit", words, shop.rates().source())))
                .fixed();
        var all = new ArrayList<>(lines);
        all.add(draft.line("L" + (lines.size() + 1), Money.zero(shop.currency()), place, further));
        return all;
    }

    private boolean inTime(PaidDiagnosis paid) {
        if (!paid.amount().isPositive()) {
            throw Refusal.outOfRange("diagnostic fee paid", paid.amount(), "above zero");
        }
        if (paid.on().isAfter(made)) {
            throw Refusal.outOfRange("day on which the diagnostic fee was paid", paid.on(), "up to " + made);
        }
        return ChronoUnit.DAYS.between(paid.on(), made) <= shop.rates().creditDays();
    }

    private Duties duties(Scope scope) {
        var tasks = scope.tasks().stream().map(ScopedTask::task).toList();
        var permit = tasks.stream()
                .map(task -> place.permit(task.permitClass()))
                .max(Comparator.naturalOrder())
                .orElse(PermitNeed.NO);
        return new Duties(
                tasks.stream().anyMatch(this::regulated), permit, scope.tests().contains(Duties.PRESSURE_TEST));
    }

    private boolean regulated(Task task) {
        return task.regulatedGas() || Crew.of(task, place).contains(Trade.GAS_FITTER);
    }
}

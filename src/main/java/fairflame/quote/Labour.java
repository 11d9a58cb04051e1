package fairflame.quote;

import fairflame.Refusal;
import fairflame.catalog.Jurisdiction;
import fairflame.catalog.Shop;
import fairflame.catalog.Trade;
import fairflame.repair.ScopedTask;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.joda.money.Money;

/**
 * Hours from standard times. In this order: own time of every task by its counts; each access step once for the union of
 * all tasks; condition factors on own time only; hours that a condition adds, once; rounded up once at the end.
 *
 * <p>Where trades have different rates, a task counts at the dearest rate of the people it needs. Access shared by
 * several tasks, added hours and the rounding count at the cheapest, so that sharing never costs the customer more.
 */
public final class Labour {
    private final Shop shop;
    private final Jurisdiction place;

    public Labour(Shop shop, Jurisdiction place) {
        this.shop = shop;
        this.place = place;
    }

    /**
     * The hours of one visit.
     *
     * @param conditions keys of the shop's time conditions, such as {@code tight-space}
     */
    public LabourBill bill(List<ScopedTask> tasks, Set<String> conditions) {
        if (tasks.isEmpty()) {
            return new LabourBill(BigDecimal.ZERO, List.of());
        }
        var groups = new TreeMap<Money, Group>();
        tasks.forEach(task -> addOwn(groups, task, conditions));
        new AccessOnce(shop.access()).union(tasks).forEach(shared -> addAccess(groups, shared));
        addHours(groups, conditions);
        var exact = groups.values().stream().map(group -> group.hours).reduce(BigDecimal.ZERO, BigDecimal::add);
        var billed = roundedUp(exact);
        groups.firstEntry()
                .getValue()
                .add(
                        billed.subtract(exact),
                        new Basis(
                                "rounding",
                                OwnTime.plain(exact) + " h in all, rounded up once to " + OwnTime.plain(billed) + " h",
                                shop.rates().source()));
        var shares = groups.entrySet().stream()
                .map(entry -> entry.getValue().share(entry.getKey()))
                .toList();
        return new LabourBill(billed, shares);
    }

    /** What an hour of a trade costs; a trade without its own rate works at the technician's. */
    Money rate(Trade trade) {
        var hourly = shop.rates().hourly();
        return Optional.ofNullable(hourly.get(trade))
                .or(() -> Optional.ofNullable(hourly.get(Trade.TECHNICIAN)))
                .orElseThrow(() -> Refusal.missing("hourly rate of the service technician", "an amount of money"));
    }

    private void addOwn(NavigableMap<Money, Group> groups, ScopedTask scoped, Set<String> conditions) {
        var own = OwnTime.of(scoped);
        var hours = own.hours();
        var words = new StringBuilder(scoped.task().id() + ", " + scoped.task().title() + ": " + own.words());
        for (var condition : new TreeSet<>(conditions)) {
            var factor = shop.rates().ownFactors().get(condition);
            if (factor != null) {
                hours = hours.multiply(factor);
                words.append("; x ")
                        .append(OwnTime.plain(factor))
                        .append(" for ")
                        .append(condition);
                words.append(" = ").append(OwnTime.plain(hours)).append(" h");
            }
        }
        var basis = new Basis("standard time", words.toString(), scoped.task().source());
        groups.computeIfAbsent(rate(scoped), any -> new Group()).add(hours, basis, Crew.of(scoped.task(), place));
    }

    private void addAccess(NavigableMap<Money, Group> groups, AccessOnce.Shared shared) {
        var cheapest = shared.users().stream().map(this::rate).min(Comparator.naturalOrder());
        var step = shared.step();
        var words = step.id() + ", " + step.title() + ": " + OwnTime.plain(step.hours()) + " h, once for "
                + String.join(", ", shared.taskIds());
        groups.computeIfAbsent(cheapest.orElseThrow(), any -> new Group())
                .add(step.hours(), new Basis("access step", words, step.source()));
    }

    private void addHours(NavigableMap<Money, Group> groups, Set<String> conditions) {
        var rates = shop.rates();
        for (var condition : new TreeSet<>(conditions)) {
            var hours = rates.ownHours().get(condition);
            if (hours != null) {
                var words = condition + ": " + OwnTime.plain(hours) + " h, once";
                groups.firstEntry().getValue().add(hours, new Basis("condition", words, rates.source()));
            } else if (!rates.ownFactors().containsKey(condition)) {
                var known = new TreeSet<>(rates.ownFactors().keySet());
                known.addAll(rates.ownHours().keySet());
                throw Refusal.unknown("time condition", condition, String.join(", ", known));
            }
        }
    }

    private Money rate(ScopedTask scoped) {
        return Crew.of(scoped.task(), place).stream()
                .map(this::rate)
                .max(Comparator.naturalOrder())
                .orElseThrow(
                        () -> Refusal.missing("trade of task " + scoped.task().id(), "T, T*, G, E, U"));
    }

    private BigDecimal roundedUp(BigDecimal exact) {
        var step = shop.rates().roundUpTo();
        return exact.divide(step, 0, RoundingMode.CEILING).multiply(step);
    }

    private static final class Group {
        private final EnumSet<Trade> trades = EnumSet.noneOf(Trade.class);
        private final List<Basis> basis = new ArrayList<>();
        private BigDecimal hours = BigDecimal.ZERO;

        void add(BigDecimal more, Basis why, Set<Trade> crew) {
            trades.addAll(crew);
            add(more, why);
        }

        void add(BigDecimal more, Basis why) {
            hours = hours.add(more);
            basis.add(why);
        }

        LabourBill.Share share(Money rate) {
            return new LabourBill.Share(rate, trades, hours, basis);
        }
    }
}

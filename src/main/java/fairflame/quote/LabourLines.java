package fairflame.quote;

import fairflame.catalog.Jurisdiction;
import fairflame.catalog.Shop;
import fairflame.catalog.Trade;
import fairflame.money.Amounts;
import fairflame.money.Rounding;
import fairflame.repair.ScopedTask;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** One line for each hourly rate, and the shop's minimum as a line of its own where the hours stay below it. */
final class LabourLines {
    private final Shop shop;
    private final Jurisdiction place;
    private final Grounds grounds;

    LabourLines(Shop shop, Jurisdiction place, Grounds grounds) {
        this.shop = shop;
        this.place = place;
        this.grounds = grounds;
    }

    List<Draft> of(LabourBill bill, List<ScopedTask> tasks) {
        var drafts = new ArrayList<Draft>();
        for (var share : bill.shares()) {
            var basis = new ArrayList<Basis>(reasons(tasks));
            basis.addAll(share.basis());
            basis.add(new Basis("rate", share.rate() + " an hour", shop.rates().source()));
            var words = share.trades().isEmpty() ? "" : ", " + Crew.words(share.trades(), place);
            drafts.add(Draft.of(
                    LineKind.LABOUR,
                    "",
                    "Labour" + words,
                    new Draft.Count(tidy(share.hours()), "h", share.rate()),
                    basis));
        }
        if (!drafts.isEmpty()) {
            minimum(drafts);
        }
        return drafts;
    }

    private void minimum(List<Draft> drafts) {
        var rates = shop.rates();
        var hourly = new Labour(shop, place).rate(Trade.TECHNICIAN);
        var least = Rounding.NEAREST.times(hourly, rates.minimumHours());
        var sum = Amounts.sum(shop.currency(), drafts.stream().map(Draft::net).toList());
        var missing = least.minus(sum);
        if (missing.isPositive()) {
            var words = "labour of a visit is at least " + OwnTime.plain(rates.minimumHours()) + " h x " + hourly
                    + " = " + least + "; hours come to " + sum;
            drafts.add(Draft.of(
                    LineKind.LABOUR,
                    "",
                    "Minimum labour charge, difference",
                    Draft.Count.once("visit", missing),
                    List.of(new Basis("minimum charge", words, rates.source()))));
        }
    }

    private Set<Basis> reasons(List<ScopedTask> tasks) {
        var reasons = new LinkedHashSet<Basis>();
        for (var task : tasks) {
            reasons.addAll(grounds.of(task.cause()));
        }
        for (var task : tasks) {
            reasons.add(new Basis(
                    "task",
                    task.task().id() + ", " + task.task().title() + ": " + task.reason(),
                    task.task().source()));
        }
        return reasons;
    }

    private static BigDecimal tidy(BigDecimal hours) {
        var stripped = hours.stripTrailingZeros();
        return stripped.scale() < 2 ? stripped.setScale(2) : stripped;
    }
}

package fairflame.quote;

import fairflame.Refusal;
import fairflame.catalog.Part;
import fairflame.catalog.Shop;
import fairflame.repair.ScopedPart;
import fairflame.repair.ScopedTask;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;

/** Parts, then consumables: one line for each catalog row, however many tasks use it. */
final class PartLines {
    private final Shop shop;
    private final Grounds grounds;

    PartLines(Shop shop, Grounds grounds) {
        this.shop = shop;
        this.grounds = grounds;
    }

    List<Draft> of(List<ScopedTask> tasks) {
        var sums = new LinkedHashMap<String, Sum>();
        for (var task : tasks) {
            for (var part : task.parts()) {
                sums.computeIfAbsent(part.part().number(), any -> new Sum(part.part()))
                        .add(task, part, grounds);
            }
        }
        var drafts = new ArrayList<Draft>();
        sums.values().stream().filter(sum -> !sum.part.consumable()).forEach(sum -> drafts.add(draft(sum)));
        sums.values().stream().filter(sum -> sum.part.consumable()).forEach(sum -> drafts.add(draft(sum)));
        return drafts;
    }

    private Draft draft(Sum sum) {
        var price = UnitPrice.of(sum.part, shop);
        var basis = new ArrayList<Basis>(sum.basis);
        basis.addAll(price.basis());
        return Draft.of(
                sum.part.consumable() ? LineKind.CONSUMABLE : LineKind.PART,
                sum.part.number(),
                sum.part.description(),
                new Draft.Count(sum.quantity, sum.part.unit(), price.price()),
                basis);
    }

    private static final class Sum {
        private final Part part;
        private final LinkedHashSet<Basis> basis = new LinkedHashSet<>();
        private BigDecimal quantity = BigDecimal.ZERO;

        Sum(Part part) {
            this.part = part;
        }

        void add(ScopedTask task, ScopedPart need, Grounds grounds) {
            if (need.quantity().signum() <= 0) {
                throw Refusal.outOfRange(
                        "quantity of part " + part.number(), need.quantity().toPlainString(), "above zero");
            }
            quantity = quantity.add(need.quantity());
            basis.addAll(grounds.of(task.cause()));
            basis.add(new Basis(
                    "task",
                    task.task().id() + ", " + task.task().title() + ": " + task.reason(),
                    task.task().source()));
            basis.add(new Basis(
                    "quantity",
                    OwnTime.plain(need.quantity()) + " " + part.unit() + ": " + need.why(),
                    task.task().source()));
        }
    }
}

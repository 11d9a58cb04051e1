package fairflame.invoice.actual;

import fairflame.agreement.Agreed;
import fairflame.quote.Line;
import java.math.BigDecimal;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Lays what was told of the work over the agreed lines. A change order's line for the same thing covers what goes beyond
 * another line, unless its own quantity was told.
 */
final class ActualRows {
    private final Agreed agreed;
    private final Actuals actuals;
    private final Set<String> added;
    private final Map<String, BigDecimal> room = new HashMap<>();
    private final Map<String, BigDecimal> covered = new HashMap<>();

    ActualRows(Agreed agreed, Actuals actuals) {
        this.agreed = agreed;
        this.actuals = actuals;
        this.added = agreed.orders().stream()
                .flatMap(order -> order.added().stream())
                .map(Line::id)
                .collect(Collectors.toSet());
        agreed.lines().stream().filter(this::canCover).forEach(line -> room.put(line.id(), line.quantity()));
        agreed.lines().forEach(this::cover);
    }

    List<ActualRow> all() {
        return agreed.lines().stream().map(this::row).toList();
    }

    private boolean canCover(Line line) {
        return added.contains(line.id()) && !actuals.quantities().containsKey(line.id());
    }

    private void cover(Line line) {
        var excess =
                actuals.quantities().getOrDefault(line.id(), line.quantity()).subtract(line.quantity());
        for (var other : agreed.lines()) {
            var free = room.getOrDefault(other.id(), BigDecimal.ZERO);
            if (excess.signum() > 0 && free.signum() > 0 && isSameThing(line, other)) {
                var part = excess.min(free);
                excess = excess.subtract(part);
                room.put(other.id(), free.subtract(part));
                covered.merge(line.id(), part, BigDecimal::add);
            }
        }
    }

    private static boolean isSameThing(Line one, Line other) {
        return one.kind() == other.kind()
                && one.unit().equals(other.unit())
                && one.item().equals(other.item())
                && (!one.item().isEmpty() || one.description().equals(other.description()));
    }

    private ActualRow row(Line line) {
        var told = actuals.quantities().get(line.id());
        // What a covering line gave away is counted where it was done, not twice.
        var actual = told != null ? told : room.getOrDefault(line.id(), line.quantity());
        return new ActualRow(
                line,
                told != null,
                actual,
                covered.getOrDefault(line.id(), BigDecimal.ZERO),
                actuals.borne().contains(line.id()));
    }
}

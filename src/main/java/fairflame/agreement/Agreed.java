package fairflame.agreement;

import fairflame.Refusal;
import fairflame.quote.Duties;
import fairflame.quote.Line;
import fairflame.quote.Taxation;
import fairflame.quote.Totals;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * All that was agreed: the signed revision and its signed change orders, in order, each proved by its seal. Altered
 * content is refused by the name of the field.
 */
public record Agreed(SignedRevision signed, List<ChangeOrder> orders) {
    public Agreed {
        orders = List.copyOf(orders);
        refuseAltered(signed.quote().number() + " revision " + signed.quote().revision(), Sealing.verify(signed));
        var follows = signed.seal().chain();
        var lines = signed.taken().lines();
        for (var order : orders) {
            refuseAltered("change order " + order.number(), Sealing.verify(order));
            if (!order.agreement().equals(follows)) {
                throw Refusal.notAllowed(
                        "change order " + order.number(), "follows seal " + order.agreement(), "seal " + follows);
            }
            follows = order.seal().chain();
            lines = changed(lines, order.added(), order.removed());
        }
    }

    public static Agreed of(SignedRevision signed) {
        return new Agreed(signed, List.of());
    }

    /** The lines that hold now. */
    public List<Line> lines() {
        var lines = signed.taken().lines();
        for (var order : orders) {
            lines = changed(lines, order.added(), order.removed());
        }
        return lines;
    }

    /** The totals that hold now, computed from the lines by the tax rule of the quote. */
    public Totals totals() {
        return totals(lines());
    }

    /** What the law of the place asks of all the work, change orders included. */
    public Duties duties() {
        return orders.stream().map(ChangeOrder::duties).reduce(signed.taken().duties(), Duties::and);
    }

    /** Letters of the tests after all the work, change orders included. */
    public List<String> tests() {
        return Stream.concat(signed.taken().tests().stream(), orders.stream().flatMap(order -> order.tests().stream()))
                .distinct()
                .toList();
    }

    Totals totals(List<Line> lines) {
        return Taxation.of(lines, signed.quote().rules().tax(), signed.quote().currency());
    }

    /** Chain value of the last seal: what the next change order follows. */
    public String seal() {
        return orders.isEmpty()
                ? signed.seal().chain()
                : orders.get(orders.size() - 1).seal().chain();
    }

    static List<Line> changed(List<Line> lines, List<Line> added, List<String> removed) {
        var ids = lines.stream().map(Line::id).collect(Collectors.toCollection(HashSet::new));
        for (var id : removed) {
            if (!ids.remove(id)) {
                throw Refusal.unknown(
                        "line to remove", id, lines.stream().map(Line::id).collect(Collectors.joining(", ")));
            }
        }
        var changed = new ArrayList<>(
                lines.stream().filter(line -> ids.contains(line.id())).toList());
        for (var line : added) {
            if (lines.stream().anyMatch(old -> old.id().equals(line.id())) || !ids.add(line.id())) {
                throw Refusal.notAllowed(
                        "id of an added line", line.id(), "an id that the agreement does not have yet");
            }
            changed.add(line);
        }
        return List.copyOf(changed);
    }

    private static void refuseAltered(String subject, List<Difference> differences) {
        if (!differences.isEmpty()) {
            throw Refusal.notAllowed(
                    subject,
                    differences.stream().limit(3).map(Difference::toString).collect(Collectors.joining("; ")),
                    "content as it was signed and sealed");
        }
    }
}

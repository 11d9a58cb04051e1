package fairflame.catalog.upkeep;

import fairflame.catalog.Part;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.joda.money.Money;

/**
 * What an import does to one part.
 *
 * @param row of the price list; 0 when the part is not in it
 * @param before as it stood; absent for a new part
 * @param after as it will stand
 */
public record PartChange(int row, Optional<Stocked> before, Stocked after) {
    public String number() {
        return after.part().number();
    }

    /** The differing fields, a phrase each: {@code cost USD 32.00 -> USD 33.10}. */
    public List<String> words() {
        if (before.isEmpty()) {
            return List.of("new, cost " + after.part().cost());
        }
        var old = before.get();
        var words = new ArrayList<String>();
        tell(words, "cost", old, Part::cost);
        tell(
                words,
                "list price",
                old,
                part -> part.listPrice().map(Money::toString).orElse("by the ladder"));
        tell(words, "description", old, Part::description);
        tell(words, "unit", old, Part::unit);
        tell(words, "role", old, Part::role);
        tell(words, "size", old, Part::size);
        tell(words, "consumable", old, Part::consumable);
        tell(words, "warranty months", old, Part::warrantyMonths);
        if (!old.replacedBy().equals(after.replacedBy())) {
            words.add(
                    after.withdrawn()
                            ? "withdrawn"
                            : after.replacedBy().isEmpty() ? "sold again" : "replaced by " + after.replacedBy());
        }
        if (old.vanished() != after.vanished()) {
            words.add(after.vanished() ? "no longer in the supplier's list" : "back in the supplier's list");
        }
        return List.copyOf(words);
    }

    private void tell(List<String> words, String what, Stocked old, Function<Part, ?> field) {
        var then = field.apply(old.part());
        var now = field.apply(after.part());
        if (!then.equals(now)) {
            words.add(what + " " + then + " -> " + now);
        }
    }
}

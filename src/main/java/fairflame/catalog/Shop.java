package fairflame.catalog;

import fairflame.Refusal;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/**
 * Everything a shop keeps in its catalog folder, checked as a whole.
 *
 * @param name the shop's name and town, in words
 * @param version name and date of this state of the catalog, kept with every quote
 * @param book remedies, pairs, tests, warranties, joints
 * @param unknownPlace what is charged in a place without a profile; without it such a place is refused
 */
public record Shop(
        String name,
        String version,
        CurrencyUnit currency,
        List<Part> parts,
        List<Supplier> suppliers,
        List<AccessStep> access,
        List<Task> tasks,
        Rates rates,
        PriceLadder ladder,
        List<Jurisdiction> jurisdictions,
        RepairBook book,
        Optional<UnknownPlace> unknownPlace) {
    private static final Comparator<Part> PREFERRED_FIRST = Comparator.comparing(part -> !part.preferred());

    public Shop {
        parts = List.copyOf(parts);
        suppliers = List.copyOf(suppliers);
        access = List.copyOf(access);
        tasks = List.copyOf(tasks);
        jurisdictions = List.copyOf(jurisdictions);
    }

    /** A shop that only prices: without a repair book and without a rule for unknown places. */
    public Shop(
            String version,
            CurrencyUnit currency,
            List<Part> parts,
            List<Supplier> suppliers,
            List<AccessStep> access,
            List<Task> tasks,
            Rates rates,
            PriceLadder ladder,
            List<Jurisdiction> jurisdictions) {
        this(
                "",
                version,
                currency,
                parts,
                suppliers,
                access,
                tasks,
                rates,
                ladder,
                jurisdictions,
                RepairBook.EMPTY,
                Optional.empty());
    }

    /** The part with this number. */
    public Part part(String number) {
        return parts.stream()
                .filter(part -> part.number().equals(number))
                .findFirst()
                .orElseThrow(() -> Refusal.unknown("part number", number, "a number in parts.csv"));
    }

    /** The part that serves a role in a size: the preferred one, else the first of the list. */
    public Part part(String role, String size) {
        return parts(role)
                .filter(part -> part.size().equals(size))
                .min(PREFERRED_FIRST)
                .orElseThrow(() -> Refusal.unknown(
                        "part for " + role + ", size", size, "a row in parts.csv; sizes there: " + sizes(role)));
    }

    /** The part that serves a role when its size has to be read off the old part: the preferred one of any size. */
    public Part anySize(String role) {
        return parts(role)
                .min(PREFERRED_FIRST)
                .orElseThrow(() -> Refusal.unknown("part for", role, "a row in parts.csv with this role"));
    }

    /** Whether the list has a part for this role. */
    public boolean serves(String role) {
        return parts(role).findAny().isPresent();
    }

    private Stream<Part> parts(String role) {
        return parts.stream().filter(part -> part.role().equals(role));
    }

    private String sizes(String role) {
        var sizes = parts(role)
                .map(part -> part.size().isEmpty() ? "(none)" : part.size())
                .distinct()
                .collect(Collectors.joining(", "));
        return sizes.isEmpty() ? "no part has this role" : sizes;
    }

    public Task task(String id) {
        return tasks.stream()
                .filter(task -> task.id().equals(id))
                .findFirst()
                .orElseThrow(() -> Refusal.unknown("task", id, "an id in tasks.yaml"));
    }

    public Supplier supplier(String id) {
        return suppliers.stream()
                .filter(supplier -> supplier.id().equals(id))
                .findFirst()
                .orElseThrow(() -> Refusal.unknown("supplier", id, "an id in suppliers.csv"));
    }

    /** Whether the shop has written down the rules of this place. */
    public boolean knowsPlace(String id) {
        return jurisdictions.stream().anyMatch(place -> place.id().equals(id));
    }

    /**
     * The rules of a place. A place that the shop has no profile for gets the most cautious one, taxed as
     * {@link #unknownPlace} states.
     */
    public Jurisdiction jurisdiction(String id) {
        return jurisdictions.stream()
                .filter(place -> place.id().equals(id))
                .findFirst()
                .orElseGet(() -> unknownPlace
                        .map(charged -> Jurisdiction.cautious(id, charged))
                        .orElseThrow(() -> Refusal.unknown(
                                "jurisdiction",
                                id,
                                "one of " + placeIds() + "; or state the tax of other places in unknown-place.yaml")));
    }

    /** The rules of a place under a tax rule that somebody states for this visit; works for any place. */
    public Jurisdiction jurisdiction(String id, TaxRule stated) {
        return jurisdictions.stream()
                .filter(place -> place.id().equals(id))
                .findFirst()
                .orElseGet(() -> Jurisdiction.cautious(
                        id,
                        unknownPlace.orElseGet(() -> new UnknownPlace(stated, Money.zero(currency), stated.source()))))
                .withTax(stated);
    }

    private String placeIds() {
        return jurisdictions.stream().map(Jurisdiction::id).collect(Collectors.joining(", "));
    }

    /** The access steps of a visit on which these tasks are done, each once. */
    public Set<AccessStep> accessFor(Collection<Task> together) {
        return AccessUnion.of(access, together);
    }

    /** The same shop with another parts list and other tasks. */
    public Shop with(List<Part> otherParts, List<Task> otherTasks) {
        return new Shop(
                name,
                version,
                currency,
                otherParts,
                suppliers,
                access,
                otherTasks,
                rates,
                ladder,
                jurisdictions,
                book,
                unknownPlace);
    }
}

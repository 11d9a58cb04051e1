package fairflame.catalog.upkeep;

import fairflame.Refusal;
import fairflame.catalog.Part;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.joda.money.CurrencyUnit;

/** Compares a supplier's price list with the parts list. */
public final class PriceListImport {
    /** Role of a part that no task asks for. */
    public static final String NO_ROLE = "stock";

    private final PriceSheet sheet;
    private final ColumnMapping mapping;
    private final CurrencyUnit currency;
    private final Watch watch;
    private final Map<String, Stocked> current = new HashMap<>();
    private final List<RefusedRow> refused = new ArrayList<>();

    private PriceListImport(
            PriceSheet sheet, ColumnMapping mapping, CurrencyUnit currency, Collection<Stocked> current, Watch watch) {
        this.sheet = sheet;
        this.mapping = mapping;
        this.currency = currency;
        this.watch = watch;
        current.forEach(stocked -> this.current.put(stocked.part().number(), stocked));
    }

    /**
     * What the list would change.
     *
     * @param currency of the shop
     * @param current the parts list as it stands
     */
    public static Preview preview(
            PriceSheet sheet, ColumnMapping mapping, CurrencyUnit currency, Collection<Stocked> current) {
        return preview(sheet, mapping, currency, current, Watch.NONE);
    }

    /** As {@link #preview(PriceSheet, ColumnMapping, CurrencyUnit, Collection)}, watched. */
    public static Preview preview(
            PriceSheet sheet, ColumnMapping mapping, CurrencyUnit currency, Collection<Stocked> current, Watch watch) {
        return new PriceListImport(sheet, mapping, currency, current, watch).preview();
    }

    private Preview preview() {
        var offers = offers();
        var numbers = new HashSet<String>();
        offers.forEach(offer -> numbers.add(offer.number()));
        var changes = new ArrayList<PartChange>();
        for (var offer : offers) {
            watch.passing(Watch.Stage.COMPARING, changes.size());
            attempt(offer.row(), offer.number(), () -> change(offer, numbers)).ifPresent(changes::add);
        }
        var sound = withoutCircles(changes);
        var added = sound.stream().filter(change -> change.before().isEmpty()).toList();
        var changed = sound.stream().filter(PriceListImport::differs).toList();
        return new Preview(
                mapping.supplier(),
                sheet.name(),
                added,
                changed,
                vanished(numbers),
                refused,
                sound.size() - added.size() - changed.size());
    }

    private static boolean differs(PartChange change) {
        return change.before().map(before -> !before.equals(change.after())).orElse(false);
    }

    /** Refuses the rows whose replacements lead in a circle. */
    private List<PartChange> withoutCircles(List<PartChange> changes) {
        var next = new HashMap<String, String>();
        current.forEach((number, stocked) -> next.put(number, stocked.replacedBy()));
        changes.forEach(change -> next.put(change.number(), change.after().replacedBy()));
        return changes.stream()
                .filter(change -> attempt(change.row(), change.number(), () -> refuseCircle(change.number(), next))
                        .isPresent())
                .toList();
    }

    private static boolean refuseCircle(String number, Map<String, String> next) {
        if (next.getOrDefault(number, "").isEmpty()) {
            return true;
        }
        var met = new HashSet<String>();
        for (var at = number; !at.isEmpty(); at = next.getOrDefault(at, "")) {
            if (!met.add(at)) {
                throw Refusal.notAllowed("replacement of " + number, at, "a row of replacements that ends");
            }
        }
        return true;
    }

    private List<Offer> offers() {
        var reader = new OfferReader(sheet, mapping, currency);
        var offers = new ArrayList<Offer>();
        for (var row : sheet.rows()) {
            attempt(row.number(), reader.shownNumber(row), () -> reader.read(row))
                    .ifPresent(offers::add);
        }
        if (sheet.rows().isEmpty()) {
            throw Refusal.missing("row below the headings", "at least one row").at(sheet.name());
        }
        return offers;
    }

    private <T> Optional<T> attempt(int row, String number, java.util.function.Supplier<T> work) {
        try {
            return Optional.of(work.get());
        } catch (Refusal refusal) {
            var reason = refusal.what() + " '" + refusal.value() + "' is refused; allowed: " + refusal.allowed();
            refused.add(new RefusedRow(row, number, reason));
            return Optional.empty();
        }
    }

    private PartChange change(Offer offer, Set<String> listed) {
        var before = Optional.ofNullable(current.get(offer.number()));
        before.map(Stocked::part)
                .map(Part::supplier)
                .filter(supplier -> !supplier.equals(mapping.supplier()))
                .ifPresent(supplier -> {
                    throw Refusal.notAllowed(
                            "part number",
                            offer.number(),
                            "parts of " + mapping.supplier() + "; this one comes from " + supplier);
                });
        offer.replacedBy().ifPresent(other -> refuseWrongReplacement(offer, other, listed));
        var part = before.map(old -> renewed(old.part(), offer)).orElseGet(() -> fresh(offer));
        var replacedBy =
                offer.replacedBy().orElse(before.map(Stocked::replacedBy).orElse(""));
        return new PartChange(offer.row(), before, new Stocked(part, replacedBy, false));
    }

    private void refuseWrongReplacement(Offer offer, String other, Set<String> listed) {
        if (other.equals(offer.number())) {
            throw Refusal.notAllowed("replacement", other, "another part than the one replaced");
        }
        if (!listed.contains(other) && !current.containsKey(other)) {
            throw Refusal.unknown("replacement", other, "a part of this price list or of the shop");
        }
    }

    private static Part renewed(Part old, Offer offer) {
        return new Part(
                old.number(),
                offer.role().orElse(old.role()),
                offer.size().orElse(old.size()),
                offer.description().orElse(old.description()),
                offer.consumable().orElse(old.consumable()),
                offer.unit().orElse(old.unit()),
                offer.cost(),
                offer.listPrice().or(old::listPrice),
                old.supplier(),
                offer.warrantyMonths().orElse(old.warrantyMonths()),
                old.preferred(),
                old.source());
    }

    private Part fresh(Offer offer) {
        return new Part(
                offer.number(),
                offer.role().orElse(NO_ROLE),
                offer.size().orElse(""),
                offer.description()
                        .orElseThrow(() -> Refusal.missing("description", "a description for a part that is new")),
                offer.consumable().orElse(false),
                offer.unit().orElse("each"),
                offer.cost(),
                offer.listPrice(),
                mapping.supplier(),
                offer.warrantyMonths().orElse(0),
                "price list " + sheet.name());
    }

    /** Parts of the supplier that the list leaves out; a row that was refused still counts as listed. */
    private List<PartChange> vanished(Set<String> listed) {
        var named = new HashSet<>(listed);
        refused.forEach(row -> named.add(row.number()));
        return current.values().stream()
                .filter(stocked -> stocked.part().supplier().equals(mapping.supplier()))
                .filter(stocked ->
                        !stocked.vanished() && !named.contains(stocked.part().number()))
                .sorted(java.util.Comparator.comparing(stocked -> stocked.part().number()))
                .map(stocked -> new PartChange(
                        0, Optional.of(stocked), new Stocked(stocked.part(), stocked.replacedBy(), true)))
                .toList();
    }
}

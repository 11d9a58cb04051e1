package fairflame.catalog.upkeep;

import fairflame.Refusal;
import fairflame.catalog.Part;
import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The parts list of a shop with what its imports changed laid over the rows of its folder. */
public final class Upkept {
    private final Map<String, Stocked> parts = new LinkedHashMap<>();

    private Upkept() {}

    /**
     * The list.
     *
     * @param folder rows of the shop's folder
     * @param imported states that imports left behind, each in place of the folder's row with that number
     */
    public static Upkept of(Collection<Part> folder, Collection<Stocked> imported) {
        var list = new Upkept();
        folder.forEach(part -> list.parts.put(part.number(), Stocked.of(part)));
        imported.forEach(stocked -> list.parts.put(stocked.part().number(), stocked));
        return list;
    }

    public List<Stocked> all() {
        return List.copyOf(parts.values());
    }

    /**
     * What new quotes are made from. A superseded part is not in it; the part that takes its place gets its role and
     * size when it has none of its own, so that tasks find it.
     */
    public List<Part> forQuotes() {
        var heirs = new LinkedHashMap<String, Part>();
        parts.values().stream().filter(stocked -> !stocked.current()).forEach(old -> {
            var heir = heir(old);
            if (heir.current() && heir.part().role().equals(PriceListImport.NO_ROLE)) {
                heirs.put(heir.part().number(), old.part());
            }
        });
        return parts.values().stream()
                .filter(Stocked::current)
                .map(stocked -> Optional.ofNullable(heirs.get(stocked.part().number()))
                        .map(old -> inherited(stocked.part(), old))
                        .orElse(stocked.part()))
                .toList();
    }

    /** The last part of the row of replacements, sold or withdrawn; refused when it leads in a circle or nowhere. */
    public Stocked heir(Stocked old) {
        var met = new HashSet<String>();
        var at = old;
        while (!at.current() && !at.withdrawn()) {
            if (!met.add(at.part().number())) {
                throw Refusal.notAllowed(
                        "replacement of part",
                        old.part().number(),
                        "a row of replacements that ends; this one leads back to "
                                + at.part().number());
            }
            var next = parts.get(at.replacedBy());
            if (next == null) {
                throw Refusal.unknown(
                        "replacement of part " + at.part().number(), at.replacedBy(), "a part in the list");
            }
            at = next;
        }
        return at;
    }

    private static Part inherited(Part heir, Part old) {
        return new Part(
                heir.number(),
                old.role(),
                heir.size().isEmpty() ? old.size() : heir.size(),
                heir.description(),
                old.consumable() || heir.consumable(),
                heir.unit(),
                heir.cost(),
                heir.listPrice(),
                heir.supplier(),
                heir.warrantyMonths(),
                old.preferred() || heir.preferred(),
                heir.source());
    }
}

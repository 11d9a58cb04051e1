package fairflame.visit;

import fairflame.Refusal;
import fairflame.catalog.ShopFiles;
import fairflame.catalog.edit.FieldEdit;
import fairflame.catalog.edit.Spot;
import fairflame.catalog.upkeep.PartChange;
import fairflame.catalog.upkeep.Preview;
import fairflame.catalog.upkeep.PriceListImport;
import fairflame.catalog.upkeep.Stocked;
import fairflame.catalog.upkeep.Upkept;
import fairflame.store.Records;
import fairflame.visit.ShelfRow.RowField;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.joda.money.Money;

/** Parts: their states are kept in the database over the rows of the shop's folder, as those of price lists are. */
final class PartEditing {
    private static final String NUMBER = "number";
    private static final String REPLACED_BY = "replaced_by";
    private static final String SOLD = "sold";

    private final Workplace workplace;

    PartEditing(Workplace workplace) {
        this.workplace = workplace;
    }

    ShelfRow row(Stocked stocked) {
        var part = stocked.part();
        var values = new LinkedHashMap<String, String>();
        values.put(NUMBER, part.number());
        values.put("description", part.description());
        values.put("cost", part.cost().getAmount().toPlainString());
        values.put("list_price", part.listPrice().map(PartEditing::plain).orElse(""));
        values.put("unit", part.unit());
        values.put("role", part.role());
        values.put("size", part.size());
        values.put("supplier", part.supplier());
        values.put("consumable", word(part.consumable()));
        values.put("preferred", word(part.preferred()));
        values.put("warranty_months", String.valueOf(part.warrantyMonths()));
        values.put("source", part.source());
        values.put(SOLD, word(!stocked.withdrawn()));
        values.put(REPLACED_BY, stocked.withdrawn() ? "" : stocked.replacedBy());
        return row(part.number(), values, !stocked.current());
    }

    private static ShelfRow row(String number, Map<String, String> values, boolean former) {
        var fields = values.entrySet().stream()
                .map(value -> new RowField(
                        Spot.of(number, value.getKey()),
                        value.getValue(),
                        false,
                        value.getKey().equals(NUMBER) && !number.isEmpty(),
                        false,
                        false))
                .toList();
        return new ShelfRow(Shelf.PARTS, "", Spot.of(number), fields, false, former);
    }

    private static String plain(Money money) {
        return money.getAmount().toPlainString();
    }

    private static String word(boolean yes) {
        return yes ? "yes" : "no";
    }

    /** The part as it now stands. */
    EditSheet open(String number) {
        var stocked = find(new Upkeep(workplace).list(), number)
                .orElseThrow(() -> Refusal.unknown("part number", number, "a part of the shop"));
        return new EditSheet(row(stocked), false, Optional.empty(), FileEditing.stamp(stocked.toString()));
    }

    /** A part that is not there yet. */
    EditSheet fresh() {
        var values = new LinkedHashMap<String, String>();
        open(workplace.folderShop().parts().get(0).number())
                .fields()
                .forEach(field -> values.put(field.spot().last(), ""));
        values.put("unit", "each");
        values.put("consumable", "no");
        values.put("preferred", "no");
        values.put("warranty_months", "0");
        values.put("role", PriceListImport.NO_ROLE);
        values.remove(SOLD);
        values.remove(REPLACED_BY);
        return new EditSheet(row("", values, false), true, Optional.empty(), "");
    }

    private static Optional<Stocked> find(Upkept list, String number) {
        return list.all().stream()
                .filter(stocked -> stocked.part().number().equals(number))
                .findFirst();
    }

    /** The change of one part, as a price list of one row would make it; refused like a row of {@code parts.csv}. */
    Preview prove(EditSheet sheet, Map<Spot, String> typed, Records records) {
        var list =
                Upkept.of(workplace.folderShop().parts(), records.priceLists().states());
        var cells = new LinkedHashMap<String, String>();
        sheet.fields()
                .forEach(field -> cells.put(
                        field.spot().last(),
                        typed.getOrDefault(field.spot(), field.value()).strip()));
        var number = cells.getOrDefault(NUMBER, "");
        var before = find(list, number);
        if (sheet.fresh() && before.isPresent()) {
            throw Refusal.notAllowed(NUMBER, number, "a number that no other part has")
                    .at(NUMBER);
        }
        if (!sheet.fresh()
                && !before.map(Stocked::toString).map(FileEditing::stamp).equals(Optional.of(sheet.stamp()))) {
            throw Refusal.notAllowed(
                    "part",
                    number + ", changed meanwhile by somebody else",
                    "a change of the part as it is now: open it again");
        }
        var after = after(cells, list);
        var changes = List.of(new PartChange(0, before, after));
        refuseDisagreement(Upkept.of(list.all().stream().map(Stocked::part).toList(), with(list.all(), after)));
        return new Preview(
                after.part().supplier(),
                ShopEditing.BY_HAND,
                before.isEmpty() ? changes : List.of(),
                before.isEmpty() ? List.of() : changes,
                List.of(),
                List.of(),
                0);
    }

    private Stocked after(Map<String, String> cells, Upkept list) {
        var replacement = cells.getOrDefault(REPLACED_BY, "");
        var sold = cells.getOrDefault(SOLD, "yes");
        if (!sold.equals("yes") && !sold.equals("no")) {
            throw Refusal.malformed("answer", sold, "yes, no").at(SOLD);
        }
        var row = new LinkedHashMap<>(cells);
        row.remove(REPLACED_BY);
        row.remove(SOLD);
        var part = ShopFiles.part(row, workplace.folderShop());
        if (replacement.equals(part.number())
                || (!replacement.isEmpty() && find(list, replacement).isEmpty())) {
            throw Refusal.unknown("replacement", replacement, "the number of another part of the shop")
                    .at(REPLACED_BY);
        }
        if (!replacement.isEmpty() && sold.equals("no")) {
            throw Refusal.notAllowed("replacement", replacement, "none for a part that is withdrawn")
                    .at(REPLACED_BY);
        }
        var vanished = find(list, part.number()).map(Stocked::vanished).orElse(false);
        return new Stocked(part, sold.equals("no") ? Stocked.WITHDRAWN : replacement, vanished);
    }

    /** Refuses a state of the list in which a task no longer finds what it found before. */
    void refuseUnlessWhole(Records records) {
        refuseDisagreement(
                Upkept.of(workplace.folderShop().parts(), records.priceLists().states()));
    }

    private void refuseDisagreement(Upkept changed) {
        var shop = workplace.library().shop();
        var known =
                ShopFiles.disagreements(shop).stream().map(Refusal::getMessage).toList();
        ShopFiles.disagreements(shop.with(changed.forQuotes(), shop.tasks())).stream()
                .filter(problem -> !known.contains(problem.getMessage()))
                .findFirst()
                .ifPresent(problem -> {
                    throw problem.at("without this part");
                });
    }

    private static List<Stocked> with(List<Stocked> all, Stocked after) {
        var states = new LinkedHashMap<String, Stocked>();
        all.forEach(stocked -> states.put(stocked.part().number(), stocked));
        states.put(after.part().number(), after);
        return List.copyOf(states.values());
    }

    /** What became what, for the history. */
    List<FieldEdit> edits(Preview preview) {
        var change = preview.changes().get(0);
        var now = row(change.after());
        if (change.before().isEmpty()) {
            return now.fields().stream()
                    .filter(field -> !field.value().isEmpty())
                    .map(field -> FieldEdit.added(field.spot(), field.value()))
                    .toList();
        }
        var then = row(change.before().get());
        return now.fields().stream()
                .flatMap(field -> then
                        .field(field.spot().last())
                        .filter(old -> !old.value().equals(field.value()))
                        .map(old -> FieldEdit.set(field.spot(), old.value(), field.value()))
                        .stream())
                .toList();
    }
}

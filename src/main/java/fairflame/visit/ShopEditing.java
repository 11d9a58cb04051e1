package fairflame.visit;

import fairflame.Refusal;
import fairflame.catalog.edit.FieldEdit;
import fairflame.catalog.edit.ShopEdit;
import fairflame.catalog.edit.Spot;
import fairflame.catalog.upkeep.Stocked;
import fairflame.store.Records;
import fairflame.store.ShopFile;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * Changes what a shop sells and prints, one row at a time, and keeps every change with its day, person and reason. See
 * docs/decisions/0012-editing-the-shop.md.
 */
public final class ShopEditing {
    /** Stands as the file of a change of a part that was made here and not by a price list. */
    public static final String BY_HAND = "stock room";

    private final Workplace workplace;
    private final FileEditing files;
    private final PartEditing parts;

    public ShopEditing(Workplace workplace) {
        this.workplace = workplace;
        this.files = new FileEditing(workplace);
        this.parts = new PartEditing(workplace);
    }

    /** Rows of a table that hold the searched letters. */
    public record Rows(List<ShelfRow> rows, int found) {}

    /** Whether the shop is one's own; the samples are never changed. */
    public boolean own() {
        var sources = workplace.folders().sources();
        return sources.catalog().isPresent() && sources.templates().isPresent();
    }

    /** Reads the shop's files again when somebody changed them by hand; refused as a whole when they no longer fit. */
    public boolean reread() {
        if (!own()) {
            return false;
        }
        var now = Library.load(workplace.folders().sources());
        var changed = !now.versions().equals(workplace.folders().versions());
        if (changed) {
            workplace.reread(now);
        }
        return changed;
    }

    /**
     * The rows of a table that hold these letters, in whatever case; those of former parts last.
     *
     * @param most how many are given; the count is of all
     */
    public Rows rows(Shelf shelf, String letters, int most) {
        var wanted = letters.strip().toLowerCase(Locale.ROOT);
        if (shelf == Shelf.PARTS) {
            var found = new Upkeep(workplace)
                    .list().all().stream()
                            .filter(stocked -> text(stocked).contains(wanted))
                            .sorted(java.util.Comparator.comparing(stocked -> !stocked.current()))
                            .toList();
            return new Rows(found.stream().limit(most).map(parts::row).toList(), found.size());
        }
        var found = files.rows(shelf).stream()
                .filter(row -> text(row).contains(wanted))
                .toList();
        return new Rows(found.stream().limit(most).toList(), found.size());
    }

    private static String text(Stocked stocked) {
        var part = stocked.part();
        return String.join(" ", part.number(), part.description(), part.role(), part.size(), part.supplier())
                .toLowerCase(Locale.ROOT);
    }

    private static String text(ShelfRow row) {
        var text = new StringBuilder(row.key());
        row.fields()
                .forEach(field ->
                        text.append(' ').append(field.spot().last()).append(' ').append(field.value()));
        return text.toString().toLowerCase(Locale.ROOT);
    }

    /** A row opened for a change, as it now stands. */
    public EditSheet open(ShelfRow row) {
        return row.shelf() == Shelf.PARTS ? parts.open(row.spot().last()) : files.open(row);
    }

    /** An empty row for the table of this one; for a place a copy of it. */
    public EditSheet fresh(ShelfRow like) {
        return like.shelf() == Shelf.PARTS ? parts.fresh() : files.fresh(like);
    }

    /** What keeping these values would change and what of it is refused. Nothing is changed. */
    public EditCheck check(EditSheet sheet, Map<Spot, String> typed) {
        var edits = sheet.edits(typed);
        try {
            files.folder(sheet.row().shelf());
            workplace.store().reading(records -> prove(sheet, typed, records));
            return new EditCheck(edits, Map.of(), Optional.empty());
        } catch (Refusal refusal) {
            return refused(sheet, typed, edits, refusal);
        }
    }

    /** Puts a refusal beside the field it names, else beside each field that is refused when it stands alone. */
    private EditCheck refused(EditSheet sheet, Map<Spot, String> typed, List<FieldEdit> edits, Refusal refusal) {
        var named = sheet.fields().stream()
                .map(ShelfRow.RowField::spot)
                .filter(spot -> refusal.where().endsWith(spot.last()))
                .toList();
        if (named.size() == 1) {
            return new EditCheck(edits, Map.of(named.get(0), refusal), Optional.empty());
        }
        var alone = new HashMap<Spot, Refusal>();
        if (!sheet.fresh() && files.folderKnown(sheet.row().shelf())) {
            for (var edit : edits) {
                var one = Map.of(edit.spot(), typed.getOrDefault(edit.spot(), ""));
                attempt(() -> workplace.store().reading(records -> prove(sheet, one, records)))
                        .ifPresent(why -> alone.put(edit.spot(), why));
            }
        }
        var everywhere = alone.values().stream()
                .allMatch(why -> String.valueOf(why.getMessage()).contains("changed meanwhile"));
        return alone.isEmpty() || everywhere
                ? new EditCheck(edits, Map.of(), Optional.of(refusal))
                : new EditCheck(edits, alone, Optional.empty());
    }

    private static Optional<Refusal> attempt(Runnable work) {
        try {
            work.run();
            return Optional.empty();
        } catch (Refusal refusal) {
            return Optional.of(refusal);
        }
    }

    /** Proves a change without making it. */
    private boolean prove(EditSheet sheet, Map<Spot, String> typed, Records records) {
        if (sheet.row().shelf() == Shelf.PARTS) {
            parts.prove(sheet, typed, records);
            return true;
        }
        files.refuseIfChanged(sheet);
        var edits = sheet.fresh() ? files.added(sheet, typed) : sheet.edits(typed);
        files.prove(sheet.row().shelf(), FileEditing.file(sheet, typed), edits, records);
        return true;
    }

    /**
     * Keeps a change: proved as a whole, the file replaced whole, the change in the history; or nothing of it.
     *
     * @throws Refusal with file, row, field, value and what is allowed
     */
    public ShopEdit keep(EditSheet sheet, Map<Spot, String> typed, String why) {
        var shelf = sheet.row().shelf();
        if (shelf == Shelf.PARTS) {
            files.folder(shelf);
            return kept(records -> {
                var preview = parts.prove(sheet, typed, records);
                var state =
                        records.priceLists().take(preview, workplace.today()).id();
                var number = preview.changes().get(0).number();
                return put(records, new Said(shelf, number, "", state, why, 0), parts.edits(preview));
            });
        }
        var edits = sheet.fresh() ? files.added(sheet, typed) : sheet.edits(typed);
        var file = FileEditing.file(sheet, typed);
        var entry = sheet.fresh() ? key(file, edits.get(0).spot()) : sheet.row().key();
        return change(new Said(shelf, entry, file, 0, why, 0), edits, () -> files.refuseIfChanged(sheet));
    }

    private static String key(String file, Spot spot) {
        return spot.steps().isEmpty() ? file : file + ": " + spot;
    }

    /** Takes a row out. */
    public ShopEdit remove(EditSheet sheet, String why) {
        var row = sheet.row();
        if (!row.removable()) {
            throw Refusal.notAllowed("taking out of", row.key(), "a row of a table that grows");
        }
        return change(
                new Said(row.shelf(), row.key(), row.file(), 0, why, 0),
                List.of(FieldEdit.removed(row.spot(), files.source(row))),
                () -> files.refuseIfChanged(sheet));
    }

    /** Takes a change back; refused when a later change touched the same, which has to be taken back first. */
    public ShopEdit takeBack(int number, String why) {
        var edit = history().stream()
                .filter(one -> one.number() == number)
                .findFirst()
                .orElseThrow(() -> Refusal.unknown("change", number, "the number of a change"));
        if (takenBack(number)) {
            throw Refusal.notAllowed("change", number + ", taken back before", "a change that stands");
        }
        var shelf = Shelf.parse(edit.shelf());
        var said = new Said(shelf, edit.entry(), edit.file(), edit.state(), why, number);
        var back = new ArrayList<FieldEdit>();
        edit.fields().forEach(field -> back.add(0, field.reversed()));
        if (edit.state() > 0) {
            return kept(records -> {
                records.priceLists().undo(edit.state(), workplace.today());
                parts.refuseUnlessWhole(records);
                return put(records, said, back);
            });
        }
        return change(said, back, () -> {});
    }

    private boolean takenBack(int number) {
        return history().stream().anyMatch(one -> one.takesBack() == number);
    }

    /** All changes, the last first. */
    public List<ShopEdit> history() {
        var all = new ArrayList<ShopEdit>();
        workplace
                .store()
                .reading(records -> records.registers().shopEdits().all())
                .forEach(edit -> all.add(0, edit));
        return all;
    }

    /** Changes of one row, the last first. */
    public List<ShopEdit> history(ShelfRow row) {
        return history().stream()
                .filter(edit ->
                        edit.shelf().equals(row.shelf().id()) && edit.entry().equals(row.key()))
                .toList();
    }

    private record Said(Shelf shelf, String entry, String file, int state, String why, int takesBack) {}

    private ShopEdit put(Records records, Said said, List<FieldEdit> fields) {
        var edits = records.registers().shopEdits();
        var number = edits.all().size() + 1;
        var edit = new ShopEdit(
                number,
                workplace.now(),
                workplace.who(),
                said.why().strip(),
                said.shelf().id(),
                said.entry(),
                said.file(),
                said.state(),
                fields,
                said.takesBack());
        edits.put(String.valueOf(number), edit);
        return edit;
    }

    private ShopEdit kept(java.util.function.Function<Records, ShopEdit> work) {
        var edit = workplace.store().inTransaction(workplace.by(), work);
        workplace.renew();
        return edit;
    }

    /** The history first, the file last, both under the lock of the database; a failed commit puts the file back. */
    private ShopEdit change(Said said, List<FieldEdit> edits, Runnable before) {
        files.folder(said.shelf());
        var done = new ArrayList<FileEditing.Proved>();
        try {
            var edit = workplace.store().inTransaction(workplace.by(), records -> {
                before.run();
                var proved = files.prove(said.shelf(), said.file(), edits, records);
                var put = put(records, said, edits);
                ShopFile.put(proved.path(), proved.after());
                done.add(proved);
                return put;
            });
            workplace.reread(done.get(0).library());
            return edit;
        } catch (RuntimeException e) {
            done.forEach(proved -> ShopFile.put(proved.path(), proved.before()));
            throw e;
        }
    }
}

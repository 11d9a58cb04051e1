package fairflame.visit;

import fairflame.Refusal;
import fairflame.catalog.ShopFiles;
import fairflame.catalog.edit.CsvText;
import fairflame.catalog.edit.FieldEdit;
import fairflame.catalog.edit.ShopText;
import fairflame.catalog.edit.Spot;
import fairflame.catalog.edit.YamlText;
import fairflame.store.Folder;
import fairflame.store.Records;
import fairflame.visit.ShelfRow.RowField;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** The tables that stand in files of the shop's catalog and templates. */
final class FileEditing {
    private final Workplace workplace;

    FileEditing(Workplace workplace) {
        this.workplace = workplace;
    }

    /**
     * A change that the readers of the shop's files accept.
     *
     * @param path file to be replaced
     * @param after its new text; absent when it goes
     * @param library everything as it will be read
     */
    record Proved(Path path, Optional<String> before, Optional<String> after, Library library) {}

    /** The folder of the shop's own files; refused in the demo shop, whose samples are never changed. */
    Path folder(Shelf shelf) {
        var sources = workplace.folders().sources();
        var folder = shelf.printed() ? sources.templates() : sources.catalog();
        return folder.orElseThrow(() -> Refusal.notAllowed(
                "change of the demo shop", shelf.id(), "a change in a shop of your own: start your own shop first"));
    }

    boolean folderKnown(Shelf shelf) {
        var sources = workplace.folders().sources();
        return (shelf.printed() ? sources.templates() : sources.catalog()).isPresent();
    }

    /** The text of a row in its file. */
    String source(ShelfRow row) {
        return ShopText.of(row.file(), text(texts(row.shelf()), row.file()))
                .at(row.spot())
                .orElseThrow(() -> Refusal.unknown("row", row.key(), "a row that is still there"));
    }

    private Map<String, String> texts(Shelf shelf) {
        var sources = workplace.folders().sources();
        return (shelf.printed() ? sources.templates() : sources.catalog())
                .<Map<String, String>>map(Folder::read)
                .orElseGet(() -> Folder.shipped(shelf.printed() ? "templates" : "catalog-sample"));
    }

    List<ShelfRow> rows(Shelf shelf) {
        var reader = new ShelfReader(shelf);
        var texts = texts(shelf);
        var rows = new ArrayList<ShelfRow>();
        reader.files(texts.keySet()).forEach(file -> rows.addAll(reader.rows(file, text(texts, file))));
        return rows;
    }

    private static String text(Map<String, String> texts, String file) {
        return Optional.ofNullable(texts.get(file))
                .orElseThrow(() -> Refusal.unknown("file", file, String.join(", ", texts.keySet())));
    }

    /** The row as it now stands on the disk. */
    EditSheet open(ShelfRow row) {
        var text = text(texts(row.shelf()), row.file());
        var now = new ShelfReader(row.shelf())
                .rows(row.file(), text).stream()
                        .filter(other -> other.spot().equals(row.spot()))
                        .findFirst()
                        .orElseThrow(() -> Refusal.unknown("row", row.key(), "a row that is still there"));
        var grows = row.shelf() == Shelf.RATES && !row.spot().steps().isEmpty()
                ? Optional.of(row.spot())
                : row.shelf() == Shelf.PLACES && row.spot().steps().isEmpty()
                        ? Optional.of(Spot.of("facts"))
                                .filter(facts ->
                                        ShopText.of(row.file(), text).at(facts).isPresent())
                        : Optional.<Spot>empty();
        return new EditSheet(now, false, grows, stamp(text));
    }

    /** An empty row for a table that grows; for a place a copy of another under its own id. */
    EditSheet fresh(ShelfRow like) {
        var text = text(texts(like.shelf()), like.file());
        var reader = new ShelfReader(like.shelf());
        if (like.shelf() == Shelf.PLACES && like.spot().steps().isEmpty()) {
            var fields = List.of(RowField.of(Spot.of("id"), ""), RowField.of(Spot.of("name"), ""));
            return sheet(like, Spot.of(), fields, text);
        }
        if (!like.removable()) {
            throw Refusal.notAllowed(
                    "new row", like.shelf().id(), "a table that grows; copy an entry of the file by hand");
        }
        var list = reader.growth(like.spot());
        var read = ShopText.of(like.file(), text);
        var place = read instanceof YamlText yaml
                ? list.in(String.valueOf(yaml.steps(list).size()))
                : Spot.of("");
        var fields = like.fields().stream()
                .map(field -> RowField.of(place.in(field.spot().last()), ""))
                .toList();
        return sheet(like, place, fields, text);
    }

    private static EditSheet sheet(ShelfRow like, Spot place, List<RowField> fields, String text) {
        return new EditSheet(
                new ShelfRow(like.shelf(), like.file(), place, fields, false, false),
                true,
                Optional.empty(),
                stamp(text));
    }

    /** What a new row adds: a whole line, entry or file. */
    List<FieldEdit> added(EditSheet sheet, Map<Spot, String> typed) {
        var row = sheet.row();
        var values = new LinkedHashMap<String, String>();
        sheet.fields()
                .forEach(field -> values.put(
                        field.spot().last(),
                        typed.getOrDefault(field.spot(), "").strip()));
        if (row.file().endsWith(".csv")) {
            var key = values.values().iterator().next();
            return List.of(FieldEdit.added(Spot.of(key), CsvText.line(List.copyOf(values.values()))));
        }
        if (row.spot().steps().isEmpty()) {
            var copy = text(texts(row.shelf()), row.file());
            for (var value : values.entrySet()) {
                var yaml = YamlText.parse(row.file(), copy);
                var spot = Spot.of(value.getKey());
                copy = yaml.with(FieldEdit.set(spot, yaml.at(spot).orElse(""), value.getValue()));
            }
            return List.of(FieldEdit.added(Spot.of(), copy));
        }
        return List.of(FieldEdit.added(row.spot(), YamlText.entry(values)));
    }

    /** File of a new row: the one it comes into, or a file of its own for a new place. */
    static String file(EditSheet sheet, Map<Spot, String> typed) {
        var row = sheet.row();
        if (!sheet.fresh() || !row.spot().steps().isEmpty()) {
            return row.file();
        }
        var id = typed.getOrDefault(Spot.of("id"), "").strip();
        if (!id.matches("[A-Za-z0-9][A-Za-z0-9._-]{0,59}")) {
            throw Refusal.malformed("id", id, "up to 60 letters, digits, dots and dashes")
                    .at("place, id");
        }
        return ShelfReader.PLACES + id + ".yaml";
    }

    /** Refuses a file that is no longer as it was when its row was opened. */
    void refuseIfChanged(EditSheet sheet) {
        var now = text(texts(sheet.row().shelf()), sheet.row().file());
        if (!stamp(now).equals(sheet.stamp())) {
            throw Refusal.notAllowed(
                    "file",
                    sheet.row().file() + ", changed meanwhile by somebody else",
                    "a change of the file as it is now: open the row again");
        }
    }

    /** Makes the edits on the file as it is on the disk and reads the whole shop with it. */
    Proved prove(Shelf shelf, String file, List<FieldEdit> edits, Records records) {
        var texts = new TreeMap<>(texts(shelf));
        var before = Optional.ofNullable(texts.get(file));
        var now = before;
        for (var edit : edits) {
            now = edited(file, now, edit);
        }
        now.ifPresentOrElse(text -> texts.put(file, text), () -> texts.remove(file));
        var catalog = shelf.printed() ? texts(Shelf.TASKS) : texts;
        var templates = shelf.printed() ? texts : texts(Shelf.TEXTS);
        var library =
                Library.of(workplace.folders().sources(), catalog, templates).readWhole();
        refuseDisagreement(library, records);
        return new Proved(folder(shelf).resolve(file), before, now, library);
    }

    private static Optional<String> edited(String file, Optional<String> text, FieldEdit edit) {
        if (!edit.spot().steps().isEmpty()) {
            return Optional.of(ShopText.of(file, text.orElse("")).with(edit));
        }
        if (!text.equals(edit.before())) {
            throw Refusal.notAllowed(
                    "file", file, edit.before().isEmpty() ? "a file that is not there yet" : "the file as it was");
        }
        return edit.after();
    }

    /** Imported parts lie over the files: what they need of the files has to stay, and the other way round. */
    private void refuseDisagreement(Library library, Records records) {
        var known = ShopFiles.disagreements(workplace.library().shop()).stream()
                .map(Refusal::getMessage)
                .toList();
        ShopFiles.disagreements(Upkeep.applied(library.shop(), records)).stream()
                .filter(problem -> !known.contains(problem.getMessage()))
                .findFirst()
                .ifPresent(problem -> {
                    throw problem;
                });
    }

    static String stamp(String text) {
        return Integer.toHexString(text.hashCode()) + "-" + text.length();
    }
}

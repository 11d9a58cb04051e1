package fairflame.screen.stock;

import fairflame.catalog.edit.FieldEdit;
import fairflame.catalog.edit.ShopEdit;
import fairflame.screen.kit.Texts;
import fairflame.screen.look.Words;
import fairflame.visit.ShelfRow;
import javafx.geometry.Insets;
import javafx.scene.layout.VBox;

/** Changes as they are told: the day and the person, the reason, what became what. */
final class EditHistory {
    private static final int LONGEST = 160;

    private EditHistory() {}

    static VBox told(ShopEdit edit, Words words, FieldWords names, ShelfRow row) {
        var box = Texts.column(
                2,
                Texts.words(words.say("edit.by", edit.number(), words.moment(edit.at()), edit.who()), "small", "slate"),
                Texts.words(edit.why(), "semi"));
        edit.fields()
                .forEach(field -> box.getChildren()
                        .add(Texts.words(names.field(row, field.spot()) + ":  " + line(field, words), "small")));
        return box;
    }

    private static String line(FieldEdit field, Words words) {
        var before = field.before().filter(text -> !text.isBlank()).map(EditHistory::cut);
        var after = field.after().map(EditHistory::cut);
        if (after.isEmpty()) {
            return words.say("edit.went", before.orElse(""));
        }
        return before.map(text -> words.say("edit.became", text, after.get())).orElse(after.get());
    }

    private static String cut(String text) {
        var line = text.replaceAll("\\s+", " ");
        return line.length() > LONGEST ? line.substring(0, LONGEST) + "\u2026" : line;
    }

    /** All changes of the shop, the last first. */
    static VBox all(StockModel model, Words words, FieldWords names) {
        var box = Texts.column(Texts.GAP, Texts.words(words.say("stock.changes"), "large", "strong"));
        var edits = model.work().history();
        if (edits.isEmpty()) {
            box.getChildren().add(Texts.words(words.say("edit.none"), "slate"));
        }
        edits.stream().limit(StockModel.PAGE).forEach(edit -> {
            var shelf = fairflame.visit.Shelf.parse(edit.shelf());
            var row = new ShelfRow(
                    shelf, edit.file(), fairflame.catalog.edit.Spot.of(), java.util.List.of(), false, false);
            var card = told(edit, words, names, row);
            card.getChildren()
                    .add(0, Texts.words(words.say("stock." + edit.shelf()) + "  \u00B7  " + edit.entry(), "small"));
            card.getStyleClass().add("card");
            card.setPadding(new Insets(8, 12, 8, 12));
            box.getChildren().add(card);
        });
        return box;
    }
}

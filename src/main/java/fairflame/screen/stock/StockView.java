package fairflame.screen.stock;

import fairflame.screen.kit.Leaves;
import fairflame.screen.kit.Press;
import fairflame.screen.kit.Texts;
import fairflame.screen.kit.Ties;
import fairflame.screen.kit.Veil;
import fairflame.screen.look.Look;
import fairflame.screen.look.Words;
import fairflame.visit.Shelf;
import fairflame.visit.ShelfRow;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import javafx.geometry.Insets;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;

/** What the shop sells and by which rules: shelves left, the rows of one shelf right, a row as a sheet over both. */
public final class StockView extends StackPane {
    private static final double LEAST_EMS = 52;
    private static final double SHEET = 860;

    private final StockModel model;
    private final Words words;
    private final FieldWords names;
    private final Look look;
    private final Veil veil;
    private final Optional<Runnable> ownShop;
    private final Ties ties = new Ties();
    private Ties inside = new Ties();
    private final VBox shelves = new VBox(Texts.GAP);
    private final VBox place = new VBox(12);
    private final VBox rows = new VBox(Texts.GAP);
    private final Leaves leaves;

    /** The stock room; {@code ownShop} starts a shop of one's own while there is none. */
    public StockView(StockModel model, Words words, Look look, Veil veil, Optional<Runnable> ownShop) {
        this.model = model;
        this.words = words;
        this.names = new FieldWords(words, model.work().currency());
        this.look = look;
        this.veil = veil;
        this.ownShop = ownShop;
        setPadding(new Insets(12, 14, 12, 14));
        shelves.setPadding(new Insets(0, 10, 8, 2));
        place.setPadding(new Insets(4, 10, 14, 8));
        leaves = new Leaves(
                look,
                LEAST_EMS,
                List.of(
                        new Leaves.Leaf(words.say("stock.shelves"), Texts.scrolling(shelves), 0.26),
                        new Leaves.Leaf(words.say("stock.rows"), Texts.scrolling(place), 0.74)));
        getChildren().add(leaves);
        ties.on(model.table(), table -> {
            shelves();
            open();
        });
        ties.later(model.search(), letters -> fill());
        ties.later(model.changes(), count -> fill());
    }

    public void close() {
        inside.cut();
        ties.cut();
    }

    private void shelves() {
        shelves.getChildren()
                .setAll(Arrays.stream(Shelf.values())
                        .map(shelf -> shelf(shelf.id()))
                        .toList());
        shelves.getChildren().addAll(shelf(StockModel.IMPORT), shelf(StockModel.HOURS), shelf(StockModel.HISTORY));
    }

    private Press shelf(String id) {
        var title = words.say("stock." + id);
        var text = Texts.column(
                0, Texts.words(title, "semi"), Texts.words(words.say("stock.note." + id), "small", "slate"));
        HBox.setHgrow(text, Priority.ALWAYS);
        text.setMinWidth(0);
        var press = new Press(
                title,
                () -> {
                    model.table().set(id);
                    leaves.show(1);
                },
                text);
        press.setId("shelf-" + id);
        press.styled("row");
        return id.equals(model.table().get()) ? press.styled("chosen") : press;
    }

    private void open() {
        inside.cut();
        inside = new Ties();
        place.getChildren().clear();
        switch (model.table().get()) {
            case StockModel.IMPORT -> place.getChildren().add(new PriceListCard(model.list(), words, inside));
            case StockModel.HISTORY ->
                inside.on(model.changes(), count -> place.getChildren().setAll(EditHistory.all(model, words, names)));
            case StockModel.HOURS -> place.getChildren().add(new HoursCard(model, words, inside));
            default -> table();
        }
    }

    private void table() {
        var search = new TextField();
        search.setId("stock-search");
        search.setPromptText(words.say("stock.search"));
        search.setAccessibleText(words.say("stock.search"));
        search.textProperty().bindBidirectional(model.search());
        HBox.setHgrow(search, Priority.ALWAYS);
        var refusal = Texts.words("", "refusal");
        refusal.textProperty().bind(model.refusal());
        refusal.managedProperty().bind(model.refusal().isNotEmpty());
        place.getChildren()
                .addAll(Texts.words(words.say("stock." + model.table().get()), "large", "strong"), refusal);
        if (!model.work().own()) {
            place.getChildren().add(demo());
        }
        var bar = Texts.across(Texts.GAP, search);
        if (model.work().own()) {
            model.growing().ifPresent(like -> {
                var add = Texts.button(words.say("edit.add"), () -> sheet(model.fresh(like)));
                add.setId("stock-add");
                add.setMinWidth(USE_PREF_SIZE);
                bar.getChildren().add(add);
            });
        }
        place.getChildren().addAll(bar, rows);
        fill();
    }

    /** In the demo shop nothing can be kept; the way to a shop of one's own is right here. */
    private VBox demo() {
        var box = Texts.column(Texts.GAP, Texts.words(words.say("edit.demo")));
        ownShop.ifPresent(start -> {
            var key = Texts.button(words.say("own.begin"), start);
            key.setId("stock-own");
            box.getChildren().add(key);
        });
        box.getStyleClass().add("card");
        box.setPadding(new Insets(12, 14, 12, 14));
        return box;
    }

    private void fill() {
        if (!rows.isVisible() || !place.getChildren().contains(rows)) {
            return;
        }
        var found = model.rows();
        rows.getChildren().setAll(found.rows().stream().map(this::row).toList());
        if (found.rows().isEmpty()) {
            rows.getChildren().add(Texts.words(words.say("stock.nothing"), "slate"));
        }
        var hidden = found.found() - found.rows().size();
        if (hidden > 0) {
            var more = Texts.button(words.say("stock.more", hidden), model::more);
            more.setId("stock-more");
            rows.getChildren().add(more);
        }
    }

    private Press row(ShelfRow row) {
        var title = Texts.words(names.title(row), row.former() ? "slate" : "semi");
        var note = Texts.words(names.note(row), "small", "slate");
        var text = Texts.column(0, title, note);
        HBox.setHgrow(text, Priority.ALWAYS);
        text.setMinWidth(0);
        var press = new Press(title.getText(), () -> sheet(model.open(row)), text);
        press.setId(
                "row-" + (row.spot().steps().isEmpty() ? row.file() : row.spot().last()));
        press.styled("row");
        if (row.former()) {
            var mark = Texts.line(words.say("stock.former"), "small", "amber");
            press.getChildren().add(mark);
        }
        return press;
    }

    private void sheet(EditModel edit) {
        veil.lay(new EditSheetView(edit, words, names, veil, model.work().own()), SHEET * Math.max(1, look.em() / 16));
    }
}

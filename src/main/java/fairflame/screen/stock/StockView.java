package fairflame.screen.stock;

import fairflame.catalog.upkeep.PastPrice;
import fairflame.screen.kit.Leaves;
import fairflame.screen.kit.Press;
import fairflame.screen.kit.Texts;
import fairflame.screen.kit.Ties;
import fairflame.screen.kit.Veil;
import fairflame.screen.look.Look;
import fairflame.screen.look.Words;
import java.util.List;
import javafx.geometry.Insets;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;

/** What the shop sells and by which rules: shelves left, the rows of one shelf right. */
public final class StockView extends StackPane {
    private static final double LEAST_EMS = 52;
    private static final double HISTORY = 520;

    private final StockModel model;
    private final Words words;
    private final Veil veil;
    private final Ties ties = new Ties();
    private final VBox shelves = new VBox(Texts.GAP);
    private final VBox place = new VBox(12);
    private final VBox rows = new VBox(Texts.GAP);
    private final Leaves leaves;

    public StockView(StockModel model, Words words, Look look, Veil veil) {
        this.model = model;
        this.words = words;
        this.veil = veil;
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
    }

    public void close() {
        ties.cut();
    }

    private void shelves() {
        shelves.getChildren().setAll(model.tables().stream().map(this::shelf).toList());
        shelves.getChildren().add(shelf(StockModel.IMPORT, words.say("stock.import-note")));
    }

    private Press shelf(StockWork.Table table) {
        return shelf(table.id(), words.say("stock.count", table.rows().size()));
    }

    private Press shelf(String id, String note) {
        var title = words.say("stock." + id);
        var text = Texts.column(0, Texts.words(title, "semi"), Texts.words(note, "small", "slate"));
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
        if (model.table().get().equals(StockModel.IMPORT)) {
            place.getChildren().setAll(new PriceListCard(model, words, ties));
            return;
        }
        var search = new TextField();
        search.setId("stock-search");
        search.setPromptText(words.say("ledger.search"));
        search.setAccessibleText(words.say("ledger.search"));
        search.textProperty().bindBidirectional(model.search());
        place.getChildren()
                .setAll(Texts.words(words.say("stock." + model.table().get()), "large", "strong"), search, rows);
        fill();
    }

    private void fill() {
        rows.getChildren().setAll(model.rows().stream().map(this::row).toList());
    }

    /** A row: its first cell as a name, the second as words, the others as small print below. */
    private javafx.scene.Node row(List<String> cells) {
        var title = Texts.words(cells.size() > 1 ? cells.get(1) : cells.get(0), "semi");
        var note = Texts.words(String.join("  \u00B7  ", rest(cells)), "small", "slate");
        var text = Texts.column(0, title, note);
        HBox.setHgrow(text, Priority.ALWAYS);
        text.setMinWidth(0);
        if (!model.table().get().equals("parts")) {
            var row = Texts.across(Texts.GAP, text);
            row.getStyleClass().add("card");
            row.setPadding(new Insets(8, 12, 8, 12));
            return row;
        }
        var press = new Press(title.getText(), () -> history(cells.get(0), title.getText()), text);
        press.setId("part-" + cells.get(0));
        return press.styled("row");
    }

    private static List<String> rest(List<String> cells) {
        return java.util.stream.IntStream.range(0, cells.size())
                .filter(i -> i != 1 && !cells.get(i).isBlank())
                .mapToObj(cells::get)
                .toList();
    }

    private void history(String part, String title) {
        var box = Texts.column(
                10, Texts.words(title, "large", "strong"), Texts.words(words.say("stock.history"), "slate"));
        for (PastPrice price : model.history(part)) {
            box.getChildren()
                    .add(Texts.words(words.day(price.since()) + ":  " + words.money(price.cost()) + "  \u00B7  "
                            + price.from()));
        }
        var close = Texts.button(words.say("why.close"), veil::lift, "act");
        close.setId("history-close");
        box.getChildren().add(close);
        box.getStyleClass().add("sheet");
        box.setPadding(new Insets(24));
        veil.lay(box, HISTORY);
    }
}

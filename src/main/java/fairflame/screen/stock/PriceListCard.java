package fairflame.screen.stock;

import fairflame.catalog.upkeep.PartChange;
import fairflame.catalog.upkeep.Preview;
import fairflame.catalog.upkeep.TakenOver;
import fairflame.screen.kit.Chips;
import fairflame.screen.kit.Columns;
import fairflame.screen.kit.Slip;
import fairflame.screen.kit.Texts;
import fairflame.screen.kit.Ties;
import fairflame.screen.look.Words;
import javafx.beans.property.SimpleStringProperty;
import javafx.geometry.Insets;
import javafx.scene.input.TransferMode;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** A supplier's price list: what it would change is shown before anything is changed, and it can be taken back. */
final class PriceListCard extends VBox {
    private static final double LEAST = 180;
    private static final int MOST_SHOWN = 60;

    private final StockModel model;
    private final Words words;
    private final VBox outcome = new VBox(Texts.GAP);

    PriceListCard(StockModel model, Words words, Ties ties) {
        super(12);
        this.model = model;
        this.words = words;
        var suppliers = new Chips();
        model.work()
                .suppliers()
                .forEach(supplier -> suppliers.one(
                        "supplier-" + supplier.id(),
                        supplier.title(),
                        supplier.id().equals(model.supplier().get()),
                        () -> model.supplier().set(supplier.id())));
        var none = new SimpleStringProperty("");
        var file = new Slip("list-file", words.say("import.file"), model.file(), none);
        dropped();
        var look = Texts.button(words.say("import.look"), model::look, "act");
        look.setId("list-look");
        var refusal = Texts.words("", "refusal");
        refusal.setId("list-refusal");
        refusal.textProperty().bind(model.refusal());
        refusal.managedProperty().bind(model.refusal().isNotEmpty());
        getChildren()
                .addAll(
                        Texts.words(words.say("stock.import"), "large", "strong"),
                        Texts.words(words.say("import.note"), "slate"),
                        suppliers,
                        file,
                        Texts.words(words.say("import.headings"), "small", "slate"),
                        new Columns(
                                LEAST,
                                12,
                                StockModel.FIELDS.stream()
                                        .map(field -> new Slip(
                                                "heading-" + field,
                                                words.say("import." + field),
                                                model.heading(field),
                                                none))
                                        .toList()),
                        refusal,
                        look,
                        outcome);
        ties.on(model.preview(), preview -> fill());
    }

    /** A file dropped here is the price list. */
    private void dropped() {
        setOnDragOver(event -> {
            if (event.getDragboard().hasFiles()) {
                event.acceptTransferModes(TransferMode.COPY);
            }
            event.consume();
        });
        setOnDragDropped(event -> {
            event.getDragboard().getFiles().stream()
                    .findFirst()
                    .ifPresent(file -> model.file().set(file.getPath()));
            event.setDropCompleted(true);
            event.consume();
        });
    }

    private void fill() {
        outcome.getChildren().clear();
        model.preview().get().ifPresent(this::show);
        var imports = model.work().imports();
        if (!imports.isEmpty()) {
            outcome.getChildren().add(Texts.words(words.say("import.taken"), "large", "strong"));
            imports.forEach(taken -> outcome.getChildren().add(taken(taken)));
        }
    }

    private void show(Preview preview) {
        outcome.getChildren()
                .add(Texts.words(
                        words.say(
                                "import.sum",
                                preview.added().size(),
                                preview.changed().size(),
                                preview.vanished().size(),
                                preview.refused().size(),
                                preview.unchanged()),
                        "strong"));
        preview.refused().stream()
                .limit(MOST_SHOWN)
                .forEach(row -> outcome.getChildren()
                        .add(Texts.words(
                                words.say("import.row", row.row(), row.number()) + " " + row.reason(), "refusal")));
        preview.changes().stream()
                .limit(MOST_SHOWN)
                .forEach(change -> outcome.getChildren().add(change(change)));
        var take = Texts.button(words.say("import.take"), model::take, "act");
        take.setId("list-take");
        take.setDisable(!preview.refused().isEmpty());
        outcome.getChildren().add(take);
    }

    private HBox change(PartChange change) {
        var text = Texts.column(
                0,
                Texts.words(change.number() + "  " + change.after().part().description(), "semi"),
                Texts.words(String.join(", ", change.words()), "small"));
        HBox.setHgrow(text, Priority.ALWAYS);
        text.setMinWidth(0);
        var row = Texts.across(Texts.GAP, text);
        row.getStyleClass().add("card");
        row.setPadding(new Insets(8, 12, 8, 12));
        return row;
    }

    private HBox taken(TakenOver taken) {
        var text =
                Texts.words(words.say("import.one", taken.file(), words.day(taken.day()), taken.who(), taken.parts()));
        HBox.setHgrow(text, Priority.ALWAYS);
        text.setMaxWidth(Double.MAX_VALUE);
        text.setMinWidth(0);
        var row = Texts.across(Texts.GAP, text);
        row.getStyleClass().add("card");
        row.setPadding(new Insets(8, 8, 8, 12));
        if (taken.undone().isEmpty()) {
            var undo = Texts.button(words.say("import.undo"), () -> model.undo(taken.id()));
            undo.setId("list-undo-" + taken.id());
            undo.setMinWidth(USE_PREF_SIZE);
            row.getChildren().add(undo);
        } else {
            row.getChildren().add(Texts.line(words.say("import.undone"), "slate"));
        }
        return row;
    }
}

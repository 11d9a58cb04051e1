package fairflame.screen.stock;

import fairflame.catalog.upkeep.PartChange;
import fairflame.catalog.upkeep.RefusedRow;
import fairflame.catalog.upkeep.TakenOver;
import fairflame.catalog.upkeep.Watch;
import fairflame.screen.kit.Chips;
import fairflame.screen.kit.Choosing;
import fairflame.screen.kit.Columns;
import fairflame.screen.kit.Dropped;
import fairflame.screen.kit.Slip;
import fairflame.screen.kit.Texts;
import fairflame.screen.kit.Ties;
import fairflame.screen.look.Words;
import java.util.Locale;
import javafx.geometry.Insets;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** A supplier's price list: what it would change is shown before anything is changed, and it can be taken back. */
final class PriceListCard extends VBox {
    private static final double LEAST = 180;

    private final PriceListModel model;
    private final Words words;
    private final VBox outcome = new VBox(Texts.GAP);

    PriceListCard(PriceListModel model, Words words, Ties ties) {
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
        Dropped.on(this, file -> model.file().set(file.getPath()));
        var look = Texts.button(words.say("import.look"), () -> model.look(this::tell), "act");
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
                        file(),
                        Texts.words(words.say("import.headings"), "small", "slate"),
                        headings(),
                        refusal,
                        look,
                        outcome);
        ties.on(model.preview(), preview -> fill());
        ties.later(model.kind(), kind -> fill());
        ties.later(model.ends(), count -> fill());
    }

    private HBox file() {
        var slip = new Slip("list-file", words.say("import.file"), model.file(), model.fileRefused());
        HBox.setHgrow(slip, Priority.ALWAYS);
        var choose = Texts.button(words.say("import.choose"), this::choose);
        choose.setId("list-choose");
        choose.setMinWidth(USE_PREF_SIZE);
        var row = Texts.across(Texts.GAP, slip, choose);
        row.setAlignment(javafx.geometry.Pos.BOTTOM_LEFT);
        return row;
    }

    private Columns headings() {
        return new Columns(
                LEAST,
                12,
                PriceListModel.FIELDS.stream()
                        .map(field -> new Slip(
                                "heading-" + field,
                                words.say("import." + field),
                                model.heading(field),
                                model.headingRefused(field)))
                        .toList());
    }

    private void choose() {
        var wanted =
                Choosing.Wanted.file(words.say("import.file"), words.say("import.kinds"), "*.csv", "*.xlsx", "*.txt");
        Choosing.at(this, wanted).ifPresent(file -> model.file().set(file.getPath()));
    }

    private String tell(Watch.Stage stage, int rows) {
        return words.say("import.stage." + stage.name().toLowerCase(Locale.ROOT), rows);
    }

    private void fill() {
        outcome.getChildren().clear();
        model.preview().get().ifPresent(preview -> show(preview.unchanged()));
        var imports = model.work().imports();
        if (!imports.isEmpty()) {
            outcome.getChildren().add(Texts.words(words.say("import.taken"), "large", "strong"));
            imports.forEach(taken -> outcome.getChildren().add(taken(taken)));
        }
    }

    private void show(int unchanged) {
        var kinds = new Chips();
        for (var kind : PriceListModel.Kind.values()) {
            var key = kind.name().toLowerCase(Locale.ROOT);
            kinds.one(
                    "list-" + key,
                    words.say("import.kind." + key, model.count(kind)),
                    kind == model.kind().get(),
                    () -> model.kind().set(kind));
        }
        outcome.getChildren().addAll(Texts.words(words.say("import.unchanged", unchanged), "slate"), kinds);
        model.refusedRows().forEach(row -> outcome.getChildren().add(refused(row)));
        model.changes().forEach(change -> outcome.getChildren().add(change(change)));
        if (model.hidden() > 0) {
            var more = Texts.button(words.say("stock.more", model.hidden()), () -> {
                model.more();
                fill();
            });
            more.setId("list-more");
            outcome.getChildren().add(more);
        }
        var take = Texts.button(words.say("import.take"), () -> model.take(this::tell), "act");
        take.setId("list-take");
        take.setDisable(model.count(PriceListModel.Kind.REFUSED) > 0);
        if (take.isDisable()) {
            outcome.getChildren().add(Texts.words(words.say("import.not-whole"), "amber"));
        }
        outcome.getChildren().add(take);
    }

    private VBox refused(RefusedRow row) {
        return card(Texts.column(
                0,
                Texts.words(words.say("import.row", String.valueOf(row.row()), row.number()), "semi"),
                Texts.words(row.reason(), "refusal")));
    }

    private VBox change(PartChange change) {
        return card(Texts.column(
                0,
                Texts.words(change.number() + "  " + change.after().part().description(), "semi"),
                Texts.words(String.join(", ", change.words()), "small")));
    }

    private static VBox card(VBox box) {
        box.getStyleClass().add("card");
        box.setPadding(new Insets(8, 12, 8, 12));
        return box;
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

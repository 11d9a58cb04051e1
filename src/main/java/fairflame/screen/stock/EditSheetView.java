package fairflame.screen.stock;

import fairflame.catalog.edit.FieldEdit;
import fairflame.catalog.edit.ShopEdit;
import fairflame.catalog.edit.Spot;
import fairflame.screen.kit.Columns;
import fairflame.screen.kit.LinesSlip;
import fairflame.screen.kit.Slip;
import fairflame.screen.kit.Texts;
import fairflame.screen.kit.Ties;
import fairflame.screen.kit.Veil;
import fairflame.screen.look.Words;
import fairflame.visit.EditCheck;
import fairflame.visit.Shelf;
import fairflame.visit.ShelfRow.RowField;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import javafx.beans.property.SimpleStringProperty;
import javafx.geometry.Insets;
import javafx.scene.Node;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** A row as a sheet: its fields as slips, what would become what, and what it was before. */
final class EditSheetView extends VBox {
    private static final double LEAST = 250;
    private static final int LONG = 34;
    private static final Set<String> SHORT = Set.of("id", "boxed", "source");
    private static final double ABOVE = 120;

    private final EditModel model;
    private final Words words;
    private final FieldWords names;
    private final Ties ties = new Ties();
    private final VBox proof = new VBox(Texts.GAP);
    private final Map<Spot, Node> slips = new LinkedHashMap<>();
    private final ScrollPane scroll;

    EditSheetView(EditModel model, Words words, FieldWords names, Veil veil, boolean own) {
        super(12);
        this.model = model;
        this.words = words;
        this.names = names;
        getStyleClass().add("sheet");
        setPadding(new Insets(20, 12, 16, 24));
        var title = model.sheet().fresh() ? words.say("edit.new") : names.title(model.row());
        var content = Texts.column(14, Texts.words(title, "large", "strong"));
        content.setPadding(new Insets(2, 16, 8, 2));
        if (!own) {
            content.getChildren().add(Texts.words(words.say("edit.demo"), "amber"));
        }
        PaperView.of(model, words).ifPresent(paper -> content.getChildren().add(paper));
        content.getChildren().addAll(fields());
        if (own) {
            content.getChildren().addAll(deciding());
        }
        content.getChildren().addAll(history(own));
        scroll = Texts.scrolling(content);
        var close = Texts.button(words.say("why.close"), veil::lift);
        close.setId("edit-close");
        close.setMaxWidth(Double.MAX_VALUE);
        // A border keeps the key whole where the fields want more room than there is.
        var frame = new BorderPane(scroll);
        frame.setBottom(close);
        BorderPane.setMargin(close, new Insets(12, 0, 0, 0));
        frame.setMinHeight(0);
        VBox.setVgrow(frame, Priority.ALWAYS);
        getChildren().add(frame);
        ties.later(model.done(), done -> {
            ties.cut();
            veil.lift();
        });
    }

    private java.util.List<Node> fields() {
        var short_ = new ArrayList<Node>();
        var nodes = new ArrayList<Node>();
        for (var field : model.sheet().fields()) {
            var slip = slip(field);
            if (slip instanceof LinesSlip) {
                flush(short_, nodes);
                nodes.add(slip);
            } else {
                short_.add(slip);
            }
        }
        model.sheet().grows().ifPresent(grows -> {
            flush(short_, nodes);
            nodes.add(Texts.words(words.say("edit.further"), "small", "slate"));
            short_.add(new Slip("further-name", words.say("edit.name"), model.name(), new SimpleStringProperty("")));
            short_.add(new Slip("further-value", words.say("edit.value"), model.value(), new SimpleStringProperty("")));
        });
        flush(short_, nodes);
        return nodes;
    }

    private static void flush(List<Node> waiting, List<Node> nodes) {
        if (!waiting.isEmpty()) {
            nodes.add(new Columns(LEAST, 12, List.copyOf(waiting)));
            waiting.clear();
        }
    }

    private Node slip(RowField field) {
        var spot = field.spot();
        var steps = spot.steps();
        var inside = Math.min(model.row().spot().steps().size(), steps.size() - 1);
        var id = "edit-" + String.join("-", steps.subList(inside, steps.size()));
        var title = names.field(model.row(), spot) + (field.optional() ? " " + words.say("edit.optional") : "");
        var text = model.row().shelf() == Shelf.TEXTS;
        if (field.lines() || field.value().length() > LONG || (text && !SHORT.contains(spot.last()))) {
            var lines = new LinesSlip(
                    id,
                    field.lines() ? title + " " + words.say("edit.lines") : title,
                    model.typed(spot),
                    model.refused(spot));
            lines.field().setEditable(!field.fixed());
            slips.put(spot, lines.field());
            return lines;
        }
        var slip = new Slip(id, title, model.typed(spot), model.refused(spot));
        slip.field().setEditable(!field.fixed());
        slips.put(spot, slip.field());
        return slip;
    }

    private java.util.List<Node> deciding() {
        var refusal = Texts.words("", "refusal");
        refusal.setId("edit-refusal");
        refusal.textProperty().bind(model.refusal());
        refusal.managedProperty().bind(model.refusal().isNotEmpty());
        var why = new Slip("edit-why", words.say("edit.why"), model.why(), model.whyRefused());
        var look = Texts.button(words.say("edit.look"), model::look, "act");
        look.setId("edit-look");
        ties.on(model.check(), this::prove);
        ties.later(model.looks(), count -> lead());
        var keys = Texts.across(Texts.GAP, look);
        if (model.row().removable() && !model.sheet().fresh()) {
            var remove = Texts.button(words.say("edit.remove"), model::remove);
            remove.setId("edit-remove");
            keys.getChildren().add(remove);
        }
        return java.util.List.of(Texts.rule("rule"), why, refusal, keys, proof);
    }

    /** Leads to the first field that is refused. */
    private void lead() {
        slips.entrySet().stream()
                .filter(slip -> !model.refused(slip.getKey()).get().isEmpty())
                .findFirst()
                .ifPresent(slip -> lead(slip.getValue()));
    }

    private void lead(Node field) {
        var content = scroll.getContent();
        scroll.layout();
        var y = content.sceneToLocal(field.localToScene(field.getLayoutBounds()))
                .getMinY();
        var room = content.getLayoutBounds().getHeight()
                - scroll.getViewportBounds().getHeight();
        scroll.setVvalue(room <= 0 ? 0 : Math.max(0, Math.min(1, (y - ABOVE) / room)));
        field.requestFocus();
    }

    private void prove(Optional<EditCheck> check) {
        proof.getChildren().clear();
        check.ifPresent(found -> {
            proof.getChildren().add(Texts.words(words.say("edit.changes"), "semi"));
            found.edits().forEach(edit -> proof.getChildren().add(change(edit)));
            var keep = Texts.button(words.say("edit.keep"), model::keep, "act");
            keep.setId("edit-keep");
            proof.getChildren().add(keep);
        });
    }

    /** Before and now, one above the other, each with its word. */
    private Node change(FieldEdit edit) {
        var box = Texts.column(2, Texts.words(names.field(model.row(), edit.spot()), "small", "slate"));
        box.getStyleClass().add("card");
        box.setPadding(new Insets(8, 12, 8, 12));
        edit.before()
                .filter(before -> !before.isBlank())
                .ifPresent(before -> box.getChildren().add(Texts.words(words.say("edit.before", before), "slate")));
        box.getChildren()
                .add(Texts.words(
                        edit.after().map(now -> words.say("edit.now", now)).orElse(words.say("edit.gone")), "semi"));
        return box;
    }

    private java.util.List<Node> history(boolean own) {
        var nodes = new ArrayList<Node>();
        var edits = model.history();
        if (model.row().shelf() == Shelf.PARTS && !model.sheet().fresh()) {
            nodes.add(new PriceHistory(model.prices(), words));
        }
        if (!edits.isEmpty()) {
            nodes.add(Texts.words(words.say("edit.history"), "semi"));
            edits.forEach(edit -> nodes.add(past(edit, own)));
        }
        return nodes;
    }

    private Node past(ShopEdit edit, boolean own) {
        var text = EditHistory.told(edit, words, names, model.row());
        HBox.setHgrow(text, Priority.ALWAYS);
        text.setMinWidth(0);
        var row = Texts.across(Texts.GAP, text);
        row.getStyleClass().add("card");
        row.setPadding(new Insets(8, 8, 8, 12));
        if (model.takenBack(edit)) {
            row.getChildren().add(Texts.line(words.say("import.undone"), "slate"));
        } else if (own) {
            var back = Texts.button(words.say("import.undo"), () -> model.takeBack(edit.number()));
            back.setId("edit-back-" + edit.number());
            back.setMinWidth(USE_PREF_SIZE);
            row.getChildren().add(back);
        }
        return row;
    }
}

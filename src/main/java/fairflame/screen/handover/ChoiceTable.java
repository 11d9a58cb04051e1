package fairflame.screen.handover;

import fairflame.quote.Choice;
import fairflame.screen.kit.Columns;
import fairflame.screen.kit.PaperTotals;
import fairflame.screen.kit.Press;
import fairflame.screen.kit.Texts;
import fairflame.screen.kit.Ties;
import fairflame.screen.look.Words;
import javafx.geometry.Insets;
import javafx.geometry.Pos;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** The choices side by side in columns of equal weight, each with what it leaves unmended; then the one taken in full. */
final class ChoiceTable extends VBox {
    private static final double LEAST = 230;

    private final HandoverModel model;
    private final Words words;
    private final VBox columns = new VBox();
    private final VBox detail = new VBox(10);

    ChoiceTable(HandoverModel model, Words words, Ties ties) {
        super(18);
        this.model = model;
        this.words = words;
        getChildren().addAll(columns, detail);
        ties.on(model.choice(), choice -> fill());
    }

    private void fill() {
        columns.getChildren()
                .setAll(new Columns(
                        LEAST,
                        16,
                        model.quote().choices().stream().map(this::column).toList()));
        detail.getChildren().clear();
        model.taken().ifPresent(this::open);
    }

    private Press column(Choice choice) {
        var taken = choice.id().equals(model.choice().get());
        var leaves = choice.leavesUnfixed().isEmpty()
                ? words.say("handover.leaves-nothing")
                : words.say("paper.leaves", choice.leavesUnfixed());
        var content = Texts.column(
                8,
                Texts.words(words.say(choice.suggested() ? "paper.suggested" : "paper.also"), "small", "slate"),
                Texts.words(choice.title(), "large", "strong"),
                Texts.words(choice.plain()),
                Texts.words(leaves, choice.leavesUnfixed().isEmpty() ? "slate" : "open"),
                Texts.spring(),
                Texts.line(HandoverView.price(words, choice), "heading", "figure"),
                Texts.words(words.say(taken ? "handover.taken" : "handover.take"), "semi", "lagoon"));
        HBox.setHgrow(content, Priority.ALWAYS);
        content.setMinWidth(0);
        var press = new Press(
                choice.title() + ", " + HandoverView.price(words, choice) + ", " + leaves,
                () -> model.choice().set(choice.id()),
                content);
        press.setId("take-" + choice.id());
        press.setAlignment(Pos.TOP_LEFT);
        press.setPadding(new Insets(16));
        return press.styled("choice", taken ? "taken" : "offered");
    }

    private void open(Choice choice) {
        choice.arithmetic().forEach(sentence -> detail.getChildren().add(Texts.words(sentence)));
        var table = new VBox(6);
        for (var line : choice.lines()) {
            var name = Texts.words(line.description());
            HBox.setHgrow(name, Priority.ALWAYS);
            name.setMaxWidth(Double.MAX_VALUE);
            name.setMinWidth(0);
            table.getChildren().add(Texts.across(16, name, Texts.line(words.amount(line.net()), "figure")));
        }
        detail.getChildren().addAll(table, PaperTotals.before(choice.totals(), words));
        var notes = PaperTotals.notes(model.quote(), choice);
        var boxed = notes.stream().filter(note -> note.boxed()).toList();
        if (!boxed.isEmpty()) {
            detail.getChildren().add(PaperTotals.box(boxed, words));
        }
        detail.getChildren().add(PaperTotals.total(choice.totals().total(), choice.deposit(), words));
        notes.stream()
                .filter(note -> !note.boxed())
                .forEach(note -> detail.getChildren().add(Texts.words(note.text(), "slate")));
    }
}

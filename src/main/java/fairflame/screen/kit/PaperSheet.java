package fairflame.screen.kit;

import fairflame.quote.Basis;
import fairflame.quote.Choice;
import fairflame.quote.Line;
import fairflame.quote.Quote;
import fairflame.screen.look.Words;
import java.util.List;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import javafx.geometry.Insets;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.joda.money.Money;

/** The quote as the sheet of paper that the customer will hold. Every figure on it can be asked why. */
public final class PaperSheet extends VBox {
    private static final double LEAST_CHOICE = 150;

    private final Words words;
    private final BiConsumer<String, List<Basis>> why;

    /**
     * The sheet with one choice opened.
     *
     * @param opened id of the choice whose lines are shown
     * @param open told the id of a choice that was pressed
     * @param why told the title and the grounds of a line that was pressed
     */
    public PaperSheet(
            Quote quote, String opened, Words words, Consumer<String> open, BiConsumer<String, List<Basis>> why) {
        super(12);
        this.words = words;
        this.why = why;
        getStyleClass().add("sheet");
        setPadding(new Insets(20));
        getChildren().addAll(letterhead(quote), Texts.rule("rule-strong"));
        getChildren().add(Texts.words(quote.finding().headline(), "large", "strong"));
        if (quote.choices().size() > 1) {
            getChildren().add(choices(quote, opened, open));
        }
        quote.choices().stream()
                .filter(choice -> choice.id().equals(opened))
                .findFirst()
                .ifPresent(choice -> getChildren().addAll(body(quote, choice)));
    }

    private VBox letterhead(Quote quote) {
        var top = Texts.across(
                8,
                Texts.words(quote.seller().name(), "strong"),
                Texts.spring(),
                Texts.line(quote.number() + " / " + quote.revision(), "small", "figure", "slate"));
        HBox.setHgrow(top.getChildren().get(0), Priority.SOMETIMES);
        return Texts.column(
                2,
                top,
                Texts.words(
                        words.say(
                                "paper.for",
                                quote.customer().name(),
                                words.day(quote.made()),
                                words.day(quote.validUntil())),
                        "small",
                        "slate"));
    }

    private Columns choices(Quote quote, String opened, Consumer<String> open) {
        var columns = quote.choices().stream()
                .map(choice -> choiceColumn(choice, choice.id().equals(opened), open))
                .toList();
        return new Columns(LEAST_CHOICE, Texts.GAP, columns);
    }

    private Press choiceColumn(Choice choice, boolean taken, Consumer<String> open) {
        var content = Texts.column(
                4,
                Texts.words(
                        choice.suggested() ? words.say("paper.suggested") : words.say("paper.also"), "small", "slate"),
                Texts.words(choice.title(), "strong"),
                Texts.spring(),
                Texts.line(words.money(choice.totals().total()), "large", "figure", "strong"));
        HBox.setHgrow(content, Priority.ALWAYS);
        var press = new Press(
                choice.title() + ", " + words.money(choice.totals().total()), () -> open.accept(choice.id()), content);
        press.setId("choice-" + choice.id());
        press.setAlignment(Pos.TOP_LEFT);
        return press.styled("choice", taken ? "taken" : "offered");
    }

    private List<Node> body(Quote quote, Choice choice) {
        var nodes = new java.util.ArrayList<Node>();
        if (!choice.plain().isEmpty()) {
            nodes.add(Texts.words(choice.plain()));
        }
        if (!choice.leavesUnfixed().isEmpty()) {
            nodes.add(Texts.words(words.say("paper.leaves", choice.leavesUnfixed()), "open"));
        }
        nodes.add(lines(choice));
        nodes.add(PaperTotals.before(choice.totals(), words));
        var notes = PaperTotals.notes(quote, choice);
        var boxed = notes.stream().filter(note -> note.boxed()).toList();
        if (!boxed.isEmpty()) {
            nodes.add(PaperTotals.box(boxed, words));
        }
        nodes.add(PaperTotals.total(choice.totals().total(), choice.deposit(), words));
        notes.stream()
                .filter(note -> !note.boxed())
                .map(note -> Texts.words(note.text(), "small", "slate"))
                .forEach(nodes::add);
        quote.assumed().stream()
                .map(sentence -> Texts.words(sentence, "small", "open"))
                .forEach(nodes::add);
        return nodes;
    }

    private VBox lines(Choice choice) {
        var box = new VBox(Texts.GAP);
        choice.lines().forEach(line -> box.getChildren().add(row(line)));
        return box;
    }

    private Press row(Line line) {
        var title = Texts.column(0, Texts.words(line.description()), quantity(line));
        HBox.setHgrow(title, Priority.ALWAYS);
        title.setMinWidth(0);
        var amount = Texts.line(plain(line.net()), "figure");
        var press = new Press(
                words.say("paper.why", line.description(), words.money(line.net())),
                () -> why.accept(line.description(), line.basis()),
                title,
                amount);
        press.setId("line-" + line.id());
        return press.styled("paper-row");
    }

    private Node quantity(Line line) {
        return Texts.words(
                words.number(line.quantity()) + " " + line.unit() + " \u00D7 " + plain(line.unitPrice()),
                "small",
                "slate",
                "figure");
    }

    private String plain(Money amount) {
        return words.amount(amount);
    }
}

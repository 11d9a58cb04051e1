package fairflame.screen.kit;

import fairflame.quote.Basis;
import fairflame.quote.Choice;
import fairflame.quote.Line;
import fairflame.quote.Note;
import fairflame.quote.Quote;
import fairflame.quote.Why;
import fairflame.screen.kit.Pieces.Piece;
import fairflame.screen.look.Words;
import java.util.ArrayList;
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
    private final Asked asked;
    private final Pieces pieces = new Pieces(getChildren());
    private Quote quote;
    private Choice choice;

    /**
     * What is done when something on the sheet is pressed.
     *
     * @param open told the id of a choice
     * @param why told the title and the grounds of a figure
     */
    public record Asked(Consumer<String> open, BiConsumer<String, List<Basis>> why) {}

    /** The sheet of a quote with one choice opened, the first when it has none of this id. */
    public PaperSheet(Quote quote, String opened, Words words, Asked asked) {
        super(Texts.GAP);
        this.words = words;
        this.asked = asked;
        this.quote = quote;
        this.choice = opened(quote, opened);
        getStyleClass().add("sheet");
        setPadding(new Insets(20));
        fill();
    }

    /** Shows another state of the quote; what did not change stays where it is. */
    public void show(Quote now, String opened) {
        quote = now;
        choice = opened(now, opened);
        fill();
    }

    private static Choice opened(Quote quote, String id) {
        return quote.choices().stream()
                .filter(choice -> choice.id().equals(id))
                .findFirst()
                .orElse(quote.choices().get(0));
    }

    private void fill() {
        var all = new ArrayList<Piece>();
        all.add(new Piece(
                List.of(
                        quote.seller().name(),
                        quote.number(),
                        quote.revision(),
                        quote.customer().name(),
                        quote.made(),
                        quote.validUntil()),
                this::letterhead));
        all.add(new Piece("rule", () -> Texts.rule("rule-strong")));
        all.add(text(quote.finding().headline(), "large", "strong"));
        if (quote.choices().size() > 1) {
            var heads = quote.choices().stream().map(this::head).toList();
            all.add(new Piece(List.of(heads, choice.id()), () -> choices(heads)));
        }
        if (!choice.plain().isEmpty()) {
            all.add(text(choice.plain()));
        }
        if (!choice.leavesUnfixed().isEmpty()) {
            all.add(text(words.say("paper.leaves", choice.leavesUnfixed()), "open"));
        }
        choice.lines().forEach(line -> all.add(new Piece(List.of(choice.id(), line), () -> row(line))));
        figures(all);
        pieces.show(all);
    }

    /** Everything below the lines: what is summed, the boxed notice above the total, the total, the small print. */
    private void figures(List<Piece> all) {
        var totals = choice.totals();
        all.add(figure("hours", words.say("paper.hours"), words.number(choice.hours()), "small"));
        all.add(figure("subtotal", words.say("paper.subtotal"), words.amount(totals.subtotal()), "small"));
        if (!totals.discount().isZero()) {
            var off = words.amount(totals.discount().negated());
            all.add(figure("discount", words.say("paper.discount"), off, "small"));
        }
        for (var tax : totals.taxes()) {
            var title = words.say("paper.tax", tax.name(), tax.rate().toString(), words.amount(tax.base()));
            all.add(figure("tax", title, words.amount(tax.amount()), "small"));
        }
        var notes = PaperTotals.notes(quote, choice);
        var boxed = notes.stream().filter(Note::boxed).toList();
        if (!boxed.isEmpty()) {
            all.add(new Piece(boxed, () -> PaperTotals.box(boxed, words)));
        }
        all.add(new Piece("rule above the total", () -> Texts.rule("rule-strong")));
        all.add(figure("total", words.say("paper.total"), words.money(totals.total()), "heading"));
        if (!choice.deposit().isZero()) {
            all.add(figure("deposit", words.say("paper.deposit"), words.amount(choice.deposit()), "small"));
        }
        if (!choice.arithmetic().isEmpty()) {
            all.add(new Piece(List.of("arithmetic", choice.arithmetic()), this::arithmetic));
        }
        notes.stream().filter(note -> !note.boxed()).forEach(note -> all.add(text(note.text(), "small", "slate")));
        quote.assumed().forEach(sentence -> all.add(text(sentence, "small", "open")));
    }

    private static Piece text(String text, String... styles) {
        return new Piece(List.of(text, List.of(styles)), () -> Texts.words(text, styles));
    }

    private VBox letterhead() {
        var top = Texts.across(
                8,
                Texts.words(quote.seller().name(), "strong"),
                Texts.spring(),
                Texts.line(words.say("paper.draft"), "small", "slate"));
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

    private record Head(String id, String title, boolean suggested, Money total) {}

    private Head head(Choice offered) {
        return new Head(
                offered.id(),
                offered.title(),
                offered.suggested(),
                offered.totals().total());
    }

    private Columns choices(List<Head> heads) {
        return new Columns(
                LEAST_CHOICE, Texts.GAP, heads.stream().map(this::choiceColumn).toList());
    }

    private Press choiceColumn(Head head) {
        var content = Texts.column(
                4,
                Texts.words(words.say(head.suggested() ? "paper.suggested" : "paper.also"), "small", "slate"),
                Texts.words(head.title(), "strong"),
                Texts.spring(),
                Texts.line(words.money(head.total()), "large", "figure", "strong"));
        HBox.setHgrow(content, Priority.ALWAYS);
        var press = new Press(
                head.title() + ", " + words.money(head.total()),
                () -> asked.open().accept(head.id()),
                content);
        press.setId("choice-" + head.id());
        press.setAlignment(Pos.TOP_LEFT);
        return press.styled("choice", head.id().equals(choice.id()) ? "taken" : "offered");
    }

    private Press row(Line line) {
        var title = Texts.column(0, Texts.words(line.description()), quantity(line));
        return pressed(
                "line-" + line.id(),
                words.say("paper.why", line.description(), words.money(line.net())),
                () -> asked.why().accept(line.description(), line.basis()),
                title,
                Texts.line(words.amount(line.net()), "figure"));
    }

    private Node quantity(Line line) {
        return Texts.words(
                words.number(line.quantity()) + " " + line.unit() + " \u00D7 " + words.amount(line.unitPrice()),
                "small",
                "slate",
                "figure");
    }

    /** A figure below the lines; pressed, it tells the chain of grounds that the core gives for it. */
    private Piece figure(String question, String title, String amount, String size) {
        return new Piece(
                List.of(question, title, amount),
                () -> pressed(
                        "paper-" + question,
                        words.say("paper.why", title, amount),
                        () -> asked.why().accept(title, chain(question)),
                        size.equals("heading") ? Texts.line(title, "large", "strong") : Texts.words(title, size),
                        Texts.line(amount, "figure", size)));
    }

    private List<Basis> chain(String question) {
        return sentences(Why.chain(quote, choice.id(), question));
    }

    private static List<Basis> sentences(List<String> told) {
        return told.stream().map(sentence -> new Basis("", sentence, "")).toList();
    }

    private Press arithmetic() {
        var title = words.say("scope.arithmetic");
        return pressed(
                "paper-arithmetic",
                title,
                () -> asked.why().accept(title, sentences(choice.arithmetic())),
                Texts.words(title, "small"),
                Texts.line(
                        words.number(
                                new java.math.BigDecimal(choice.arithmetic().size())),
                        "figure",
                        "small"));
    }

    private static Press pressed(
            String id, String spoken, Runnable action, javafx.scene.layout.Region title, Node end) {
        HBox.setHgrow(title, Priority.ALWAYS);
        title.setMaxWidth(Double.MAX_VALUE);
        title.setMinWidth(0);
        var press = new Press(spoken, action, title, end);
        press.setId(id);
        return press.styled("paper-row");
    }
}

package fairflame.screen.kit;

import fairflame.quote.Choice;
import fairflame.quote.Note;
import fairflame.quote.Quote;
import fairflame.quote.Totals;
import fairflame.screen.look.Words;
import java.util.ArrayList;
import java.util.List;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.joda.money.Money;

/** The foot of a sheet: subtotal, taxes, the boxed notice of permit and licensed work above the total, the total. */
public final class PaperTotals {
    private PaperTotals() {}

    /** Notes of the whole quote and of a choice together. */
    public static List<Note> notes(Quote quote, Choice choice) {
        var notes = new ArrayList<>(quote.notes());
        notes.addAll(choice.notes());
        return notes;
    }

    /** Everything before the total. */
    public static VBox before(Totals totals, Words words) {
        var box = Texts.column(2, pair(words.say("paper.subtotal"), words.amount(totals.subtotal()), "slate"));
        if (!totals.discount().isZero()) {
            box.getChildren()
                    .add(pair(
                            words.say("paper.discount"),
                            words.amount(totals.discount().negated()),
                            "slate"));
        }
        for (var tax : totals.taxes()) {
            box.getChildren()
                    .add(pair(
                            words.say("paper.tax", tax.name(), tax.rate().toString(), words.amount(tax.base())),
                            words.amount(tax.amount()),
                            "slate"));
        }
        return box;
    }

    /** The notice that cannot be missed. */
    public static VBox box(List<Note> notes, Words words) {
        var box = Texts.column(6, Texts.words(words.say("paper.notice"), "strong"));
        notes.forEach(note -> box.getChildren().add(Texts.words(note.text())));
        box.getStyleClass().add("notice");
        return box;
    }

    /** The total and what of it is asked at signing. */
    public static VBox total(Money total, Money deposit, Words words) {
        var box = Texts.column(4, Texts.rule("rule-strong"));
        var row = Texts.across(
                8,
                Texts.line(words.say("paper.total"), "large", "strong"),
                Texts.spring(),
                Texts.line(words.money(total), "heading", "figure"));
        row.setId("paper-total");
        box.getChildren().add(row);
        if (!deposit.isZero()) {
            box.getChildren().add(pair(words.say("paper.deposit"), words.amount(deposit), "slate"));
        }
        return box;
    }

    static HBox pair(String title, String figure, String style) {
        var name = Texts.words(title, "small", style);
        HBox.setHgrow(name, Priority.ALWAYS);
        name.setMaxWidth(Double.MAX_VALUE);
        name.setMinWidth(0);
        return Texts.across(8, name, Texts.line(figure, "figure", "small"));
    }
}

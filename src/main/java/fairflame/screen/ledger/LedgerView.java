package fairflame.screen.ledger;

import fairflame.screen.kit.Leaves;
import fairflame.screen.kit.Press;
import fairflame.screen.kit.Texts;
import fairflame.screen.kit.Ties;
import fairflame.screen.look.Look;
import fairflame.screen.look.Words;
import fairflame.visit.NextStep;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javafx.geometry.Insets;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;

/** The visits by what has to happen next, and the file of one of them. */
public final class LedgerView extends StackPane {
    private static final double LEAST_EMS = 52;

    private final LedgerModel model;
    private final Words words;
    private final Ways ways;
    private final VBox rows = new VBox(Texts.GAP);
    private final StackPane file = new StackPane();
    private final Leaves leaves;
    private final Ties ties = new Ties();

    /**
     * What leads away from the ledger.
     *
     * @param ownShop begins a shop of one's own; empty where one was begun
     * @param away opens the sheet for a customer who is away, of a quote by its number
     */
    public record Ways(
            Runnable newVisit,
            java.util.function.Consumer<String> bench,
            Optional<Runnable> ownShop,
            java.util.function.Consumer<String> away) {}

    public LedgerView(LedgerModel model, Words words, Look look, Ways ways) {
        this.model = model;
        this.words = words;
        this.ways = ways;
        setPadding(new Insets(12, 14, 12, 14));
        var scroll = Texts.scrolling(file);
        file.setPadding(new Insets(4, 10, 14, 8));
        var list = list();
        leaves = new Leaves(
                look,
                LEAST_EMS,
                List.of(
                        new Leaves.Leaf(words.say("ledger.list"), list, 0.40),
                        new Leaves.Leaf(words.say("ledger.file"), scroll, 0.60)));
        getChildren().add(leaves);
        ties.on(model.groups(), groups -> fill());
        ties.later(model.visit(), visit -> {
            fill();
            leaves.show(visit.isEmpty() ? 0 : 1);
        });
        ties.on(model.file(), open -> open());
    }

    public void close() {
        ties.cut();
    }

    private VBox list() {
        var search = new TextField();
        search.setId("ledger-search");
        search.setPromptText(words.say("ledger.search"));
        search.setAccessibleText(words.say("ledger.search"));
        search.textProperty().bindBidirectional(model.search());
        HBox.setHgrow(search, Priority.ALWAYS);
        var fresh = Texts.button(words.say("ledger.new"), ways.newVisit(), "act");
        fresh.setId("new-visit");
        fresh.setMinWidth(USE_PREF_SIZE);
        var scroll = Texts.scrolling(rows);
        rows.setPadding(new Insets(0, 10, 8, 2));
        VBox.setVgrow(scroll, Priority.ALWAYS);
        var list = new VBox(12, Texts.across(Texts.GAP, search, fresh), scroll);
        list.setMinHeight(0);
        return list;
    }

    private void fill() {
        rows.getChildren().clear();
        model.groups().get().forEach((next, entries) -> {
            var heading = Texts.across(
                    8,
                    Texts.words(words.say("next." + key(next)), "strong"),
                    Texts.line(String.valueOf(entries.size()), "figure", "slate"));
            heading.setPadding(new Insets(10, 0, 0, 2));
            rows.getChildren().add(heading);
            entries.forEach(entry -> rows.getChildren().add(row(entry)));
        });
        if (rows.getChildren().isEmpty()) {
            rows.getChildren().add(Texts.words(words.say("ledger.empty"), "slate"));
        }
    }

    static String key(NextStep next) {
        return next.name().toLowerCase(Locale.ROOT);
    }

    private Press row(LedgerWork.Entry entry) {
        var name = entry.customer().isBlank() ? words.say("visit.new") : entry.customer();
        var text = Texts.column(
                0,
                Texts.words(name, "semi"),
                Texts.words(entry.visit() + (entry.place().isBlank() ? "" : ", " + entry.place()), "small", "slate"));
        HBox.setHgrow(text, Priority.ALWAYS);
        text.setMinWidth(0);
        var press = new Press(
                name + ", " + words.say("next." + key(entry.next())),
                () -> model.visit().set(entry.visit()),
                text);
        entry.amount().ifPresent(amount -> press.getChildren().add(Texts.line(words.amount(amount), "figure")));
        press.setId("entry-" + entry.visit());
        press.styled("row");
        return entry.visit().equals(model.visit().get()) ? press.styled("chosen") : press;
    }

    /** What stands here before a visit is chosen; in the demo shop also what it is and how to leave it. */
    private VBox beginning() {
        var box = Texts.column(14);
        ways.ownShop().ifPresent(own -> {
            var begin = Texts.button(words.say("own.begin"), own);
            begin.setId("own-shop");
            box.getChildren()
                    .addAll(
                            Texts.words(words.say("own.welcome"), "heading"),
                            Texts.words(words.say("own.demo")),
                            begin);
        });
        box.getChildren().add(Texts.words(words.say("ledger.choose"), "slate"));
        box.setPadding(new Insets(24));
        return box;
    }

    private void open() {
        file.getChildren().clear();
        var open = model.file().get();
        if (open.isEmpty()) {
            file.getChildren().add(beginning());
        } else {
            file.getChildren().add(new FileSheet(model, open.get(), words, ways));
        }
    }
}

package fairflame.screen.office;

import fairflame.screen.kit.Chips;
import fairflame.screen.kit.Choosing;
import fairflame.screen.kit.Columns;
import fairflame.screen.kit.Slip;
import fairflame.screen.kit.Texts;
import fairflame.screen.kit.Ties;
import fairflame.screen.look.Words;
import java.util.List;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;

/** What leaves for the bookkeeper, and how the shop's data are kept safe. */
final class BooksPage extends VBox {
    private static final double LEAST = 430;

    private final BooksModel model;
    private final Words words;
    private final Chips numbers = new Chips();

    BooksPage(BooksModel model, Words words, Ties ties) {
        super(12);
        this.model = model;
        this.words = words;
        getChildren()
                .addAll(
                        Cards.head(words.say("office.books"), words.say("books.note")),
                        new Columns(LEAST, 12, List.of(journal(), electronic())),
                        new Columns(LEAST, 12, List.of(backup(), restore())),
                        new Columns(LEAST, 12, List.of(export(), reading())));
        ties.on(model.invoice().value(), typed -> numbers());
    }

    private Button key(String act, Runnable doing) {
        var key = Texts.button(words.say("books." + act + "-key"), doing);
        key.setId("books-" + act);
        return key;
    }

    private Label said(String act) {
        return Cards.said(
                "books-said-" + act,
                model.said()
                        .map(said -> said.act().equals(act)
                                ? words.say("books." + act + "-said", said.place(), said.count())
                                : ""));
    }

    private VBox card(String act, javafx.scene.Node... fields) {
        var card = Cards.card(words.say("books." + act), Texts.words(words.say("books." + act + "-note"), "slate"));
        card.getChildren().addAll(fields);
        return card;
    }

    private VBox journal() {
        return card(
                "journal",
                SpanSlips.of("journal", model.span(), words),
                Cards.keys(key("journal", model::writeJournal)),
                said("journal"));
    }

    private VBox electronic() {
        return card(
                "ubl",
                new Slip(
                        "ubl-number",
                        words.say("books.number"),
                        model.invoice().value(),
                        model.invoice().refusal()),
                numbers,
                Cards.keys(key("ubl", model::writeElectronic)),
                said("ubl"));
    }

    private void numbers() {
        numbers.getChildren().clear();
        var shown = model.numbers();
        shown.forEach(number -> numbers.one(
                "ubl-" + number, number, false, () -> model.invoice().value().set(number)));
        numbers.setManaged(!shown.isEmpty());
    }

    private VBox backup() {
        var target = new FileSlip("backup-file", words.say("books.target"), model.backup(), Choosing.Kind.SAVE, words);
        return card("backup", target, Cards.keys(target.key(), key("backup", model::writeBackup)), said("backup"));
    }

    private VBox restore() {
        var copy = new FileSlip("restore-file", words.say("books.copy"), model.copy(), Choosing.Kind.OPEN, words);
        var folder = new FileSlip(
                "restore-folder", words.say("books.folder"), model.copyFolder(), Choosing.Kind.FOLDER, words);
        return card(
                "restore",
                copy,
                folder,
                Cards.keys(copy.key(), folder.key(), key("restore", model::putBack)),
                said("restore"));
    }

    private VBox export() {
        var target = new FileSlip("export-file", words.say("books.target"), model.export(), Choosing.Kind.SAVE, words);
        return card("export", target, Cards.keys(target.key(), key("export", model::writeData)), said("export"));
    }

    private VBox reading() {
        var data = new FileSlip("import-file", words.say("books.data"), model.data(), Choosing.Kind.OPEN, words);
        var folder = new FileSlip(
                "import-folder", words.say("books.folder"), model.dataFolder(), Choosing.Kind.FOLDER, words);
        return card(
                "import",
                data,
                folder,
                Cards.keys(data.key(), folder.key(), key("import", model::readData)),
                said("import"));
    }
}

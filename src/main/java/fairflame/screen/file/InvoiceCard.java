package fairflame.screen.file;

import fairflame.invoice.Invoice;
import fairflame.screen.kit.Columns;
import fairflame.screen.kit.Fold;
import fairflame.screen.kit.Texts;
import fairflame.screen.look.Words;
import java.util.List;
import java.util.function.Consumer;
import javafx.scene.Node;

/** One invoice with its payments, credit notes and what can be done with it. */
final class InvoiceCard extends Card {
    private final InvoiceModel model;

    InvoiceCard(InvoiceModel model, Words words, Consumer<Invoice> paper) {
        super(
                words,
                words.say(
                        "invoice.title",
                        model.invoice().number(),
                        words.day(model.invoice().issued())));
        this.model = model;
        var invoice = model.invoice();
        add(Texts.words(words.say("file.kind." + invoice.kind().name().toLowerCase(java.util.Locale.ROOT)), "slate"));
        add(pair(words.say("paper.total"), words.money(invoice.totals().total())));
        model.credits()
                .forEach(note -> add(pair(
                        words.say("file.credited", note.number(), String.join(" ", note.notes())),
                        words.amount(note.totals().total()))));
        if (model.item().settled().isPositive()) {
            add(pair(
                    words.say("file.settled"),
                    words.amount(model.item().settled().negated())));
        }
        add(
                Texts.rule("rule"),
                pair(words.say("invoice.balance"), words.money(model.item().open()), "strong"));
        add(Texts.words(words.say("file.due", words.day(invoice.due())), "small", "slate"));
        if (model.item().open().isPositive()) {
            payment();
        } else {
            add(Texts.words(words.say("invoice.paid"), "moss", "strong"));
        }
        var number = invoice.number();
        add(keys(key("invoice-print", words.say("invoice.print"), () -> paper.accept(invoice))));
        model.credits()
                .forEach(note -> add(keys(key(
                        "print-" + note.number(), words.say("file.print", note.number()), () -> paper.accept(note)))));
        if (!model.standing().isEmpty()) {
            add(new Fold("credit-" + number, words.say("file.credit"), this::credit));
        }
        if (model.item().open().isPositive()) {
            add(new Fold("write-off-" + number, words.say("file.write-off"), this::writeOff));
        }
    }

    private void payment() {
        add(
                new Columns(
                        LEAST,
                        12,
                        List.of(
                                slip(model.payment(), "pay-amount", words.say("invoice.amount")),
                                slip(model.payment(), "pay-reference", words.say("invoice.reference")))),
                one("method", "method.", MoneyModel.METHODS, model.method()),
                whole(model.payment()),
                keys(key("pay", words.say("invoice.pay"), model::pay, "act")));
    }

    private Node credit() {
        var slips = model.standing().stream()
                .map(line -> slip(
                        model.credit(),
                        InvoiceModel.credit(line),
                        words.say(
                                "file.part-line",
                                line.description(),
                                words.number(model.left(line)),
                                words.sayOr("unit." + line.unit(), line.unit()))))
                .toList();
        return Texts.column(
                Texts.GAP,
                Texts.words(words.say("file.credit-why"), "small", "slate"),
                new Columns(LEAST * 2, 12, slips),
                slip(model.credit(), "credit-reason"),
                whole(model.credit()),
                keys(key("credit-part", model::creditPart, "act"), key("credit-all", model::creditAll)));
    }

    private Node writeOff() {
        return Texts.column(
                Texts.GAP,
                new Columns(
                        LEAST,
                        12,
                        List.of(
                                slip(model.writeOff(), "write-off-amount"),
                                slip(model.writeOff(), "write-off-reason"))),
                whole(model.writeOff()),
                keys(key("give-up", model::giveUp, "act")));
    }
}

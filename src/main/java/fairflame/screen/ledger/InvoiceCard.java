package fairflame.screen.ledger;

import fairflame.money.Amounts;
import fairflame.screen.kit.Chips;
import fairflame.screen.kit.Columns;
import fairflame.screen.kit.Slip;
import fairflame.screen.kit.Texts;
import fairflame.screen.look.Words;
import fairflame.visit.VisitPapers;
import java.util.List;
import javafx.beans.property.SimpleStringProperty;
import javafx.geometry.Insets;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;

/** One invoice with its payments and the way to take another. */
final class InvoiceCard extends VBox {
    private static final double LEAST = 150;
    private static final List<String> METHODS = List.of("cash", "card", "cheque", "transfer");

    InvoiceCard(LedgerModel model, VisitPapers.Bill bill, Words words) {
        super(10);
        var invoice = bill.invoice();
        getStyleClass().add("card");
        setPadding(new Insets(14));
        getChildren()
                .addAll(
                        Texts.words(
                                words.say("invoice.title", invoice.number(), words.day(invoice.issued())),
                                "large",
                                "strong"),
                        FileSheet.pair(
                                words.say("paper.total"),
                                words.money(invoice.totals().total())));
        bill.payments()
                .forEach(payment -> getChildren()
                        .add(FileSheet.pair(
                                words.say(
                                        "invoice.payment",
                                        words.say("method." + payment.method()),
                                        words.day(payment.on())),
                                words.amount(payment.amount()))));
        var balance = FileSheet.pair(words.say("invoice.balance"), words.money(bill.due()));
        balance.setId("balance");
        getChildren().addAll(Texts.rule("rule"), balance);
        var print = Texts.button(words.say("invoice.print"), () -> model.print(invoice));
        print.setId("invoice-print");
        var keys = new FlowPane(Texts.GAP, Texts.GAP, print);
        if (bill.due().isPositive()) {
            payment(model, bill, words, keys);
        } else {
            getChildren().add(Texts.words(words.say("invoice.paid"), "moss", "strong"));
        }
        getChildren().addAll(Refused.by(model), keys);
    }

    private void payment(LedgerModel model, VisitPapers.Bill bill, Words words, FlowPane keys) {
        var amount = new SimpleStringProperty(Amounts.plain(bill.due()));
        var reference = new SimpleStringProperty("");
        var method = new SimpleStringProperty("card");
        var methods = new Chips();
        METHODS.forEach(word -> methods.one(
                "method-" + word, words.say("method." + word), word.equals(method.get()), () -> method.set(word)));
        var none = new SimpleStringProperty("");
        getChildren()
                .addAll(
                        new Columns(
                                LEAST,
                                12,
                                List.of(
                                        new Slip("pay-amount", words.say("invoice.amount"), amount, none),
                                        new Slip("pay-reference", words.say("invoice.reference"), reference, none))),
                        methods);
        var pay = Texts.button(
                words.say("invoice.pay"),
                () -> model.pay(bill.invoice(), amount.get(), method.get(), reference.get()),
                "act");
        pay.setId("pay");
        keys.getChildren().add(0, pay);
    }
}

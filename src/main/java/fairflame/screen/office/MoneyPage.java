package fairflame.screen.office;

import fairflame.invoice.account.Ageing;
import fairflame.screen.kit.Chips;
import fairflame.screen.kit.Columns;
import fairflame.screen.kit.ShareBar;
import fairflame.screen.kit.Slip;
import fairflame.screen.kit.Texts;
import fairflame.screen.kit.Ties;
import fairflame.screen.look.Words;
import fairflame.visit.MoneyHeld;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import javafx.scene.Node;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;

/** What customers owe by how long it is overdue, their statements, and their own money that the shop holds. */
final class MoneyPage extends VBox {
    private static final double LEAST = 430;

    private final MoneyModel model;
    private final Words words;
    private final Consumer<String> file;
    private final Chips names = new Chips();

    MoneyPage(MoneyModel model, Words words, Ties ties, Consumer<String> file) {
        super(12);
        this.model = model;
        this.words = words;
        this.file = file;
        getChildren()
                .addAll(
                        Cards.head(words.say("office.money"), words.say("money.note")),
                        new Columns(LEAST, 12, List.of(ageing(), right())));
        ties.on(model.customer().value(), typed -> names());
    }

    private VBox ageing() {
        var ageing = model.ageing();
        var bars = Texts.column(6);
        for (var step : Ageing.Step.values()) {
            var key = step.name().toLowerCase(Locale.ROOT);
            bars.getChildren()
                    .addAll(
                            Cards.figure(Texts.words(words.say("money.step." + key)), words.amount(ageing.sum(step))),
                            new ShareBar(model.share(step), key));
        }
        bars.getChildren()
                .addAll(
                        Texts.rule("rule-strong"),
                        Cards.figure(
                                Texts.words(words.say("money.open"), "strong"), words.money(ageing.total()), "strong"));
        var rows = Texts.column(Texts.GAP);
        ageing.rows().forEach(row -> rows.getChildren().add(row(row)));
        return Cards.card(words.say("money.ageing"), bars, rows);
    }

    private HBox row(Ageing.Row row) {
        var invoice = row.item().invoice();
        var late = row.daysLate() == 0
                ? words.say("money.due-on", words.day(invoice.due()))
                : words.say("money.late", row.daysLate(), words.day(invoice.due()));
        return leading(
                "money-" + invoice.number(),
                invoice.customer().name(),
                invoice.number() + ", " + late,
                model.visitOf(invoice.quote()),
                words.amount(row.item().open()));
    }

    private HBox leading(String id, String first, String second, String visit, String figure) {
        return Cards.leading(
                id,
                first + ", " + second + ", " + figure,
                visit,
                file,
                Cards.twoLines(first, second),
                Texts.line(figure, "figure"));
    }

    private VBox statement() {
        var write = Texts.button(words.say("money.write"), model::statement, "act");
        write.setId("statement-write");
        return Cards.card(
                words.say("money.statement"),
                new Slip(
                        "statement-customer",
                        words.say("money.customer"),
                        model.customer().value(),
                        model.customer().refusal()),
                names,
                SpanSlips.of("statement", model.span(), words),
                Cards.keys(write),
                Cards.said(
                        "statement-said",
                        model.written().map(place -> place.isEmpty() ? "" : words.say("copied.to", place))));
    }

    private void names() {
        names.getChildren().clear();
        var shown = model.names();
        for (int i = 0; i < shown.size(); i++) {
            var name = shown.get(i);
            names.one(
                    "statement-name-" + i,
                    name,
                    false,
                    () -> model.customer().value().set(name));
        }
        names.setManaged(!shown.isEmpty());
    }

    private VBox right() {
        return Texts.column(
                12,
                statement(),
                held("money.deposits", "money.no-deposits", model.deposits()),
                held("money.back", "money.no-back", model.toPayBack()),
                list(
                        "money.given-up",
                        "money.no-given-up",
                        model.givenUp().stream().<Node>map(this::givenUp).toList()));
    }

    private VBox held(String title, String nothing, List<MoneyHeld.Held> rows) {
        return list(
                title,
                nothing,
                rows.stream()
                        .<Node>map(each -> leading(
                                "held-" + each.quote(),
                                each.customer(),
                                each.quote(),
                                each.visit(),
                                words.amount(each.amount())))
                        .toList());
    }

    private VBox list(String title, String nothing, List<Node> rows) {
        var box = Texts.column(Texts.GAP);
        box.getChildren().addAll(rows.isEmpty() ? List.of(Texts.words(words.say(nothing), "slate")) : rows);
        return Cards.card(words.say(title), box);
    }

    private HBox givenUp(MoneyHeld.GivenUp each) {
        var movement = each.movement();
        return leading(
                "given-up-" + movement.id(),
                each.customer(),
                movement.invoice().orElse(movement.quote()) + ", " + words.day(movement.on()) + ": "
                        + movement.reason(),
                each.visit(),
                words.amount(movement.amount()));
    }
}

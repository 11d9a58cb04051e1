package fairflame.screen.office;

import fairflame.invoice.order.OrderLine;
import fairflame.invoice.order.OrderSheet;
import fairflame.screen.kit.Columns;
import fairflame.screen.kit.Mark;
import fairflame.screen.kit.Press;
import fairflame.screen.kit.Texts;
import fairflame.screen.kit.Ties;
import fairflame.screen.kit.Tone;
import fairflame.screen.look.Words;
import fairflame.visit.Deliveries;
import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;

/** Parts to order by supplier, orders on their way, and what goes on the truck for which job. */
final class OrdersPage extends VBox {
    private static final double LEAST = 430;

    private final OrdersModel model;
    private final Words words;
    private final Consumer<String> file;
    private final VBox place = new VBox(14);

    OrdersPage(OrdersModel model, Words words, Ties ties, Consumer<String> file) {
        super(12);
        this.model = model;
        this.words = words;
        this.file = file;
        getChildren()
                .addAll(
                        Cards.head(words.say("office.orders"), words.say("order.note")),
                        Cards.said(
                                "order-said",
                                model.written().map(files -> files.isEmpty() ? "" : words.say("copied.to", files))),
                        place);
        ties.on(model.changes(), count -> fill());
    }

    private void fill() {
        place.getChildren().clear();
        part("order.nothing", model.sheets().stream().map(this::sheet).toList());
        if (!model.orders().isEmpty()) {
            place.getChildren().add(Cards.head(words.say("order.placed"), words.say("order.placed-note")));
            part("order.nothing", model.orders().stream().map(this::order).toList());
        }
        if (!model.truck().isEmpty()) {
            place.getChildren().add(Texts.words(words.say("order.truck"), "heading"));
            part("order.nothing", model.truck().stream().map(this::load).toList());
        }
    }

    private void part(String nothing, List<VBox> cards) {
        place.getChildren()
                .add(cards.isEmpty() ? Texts.words(words.say(nothing), "slate") : new Columns(LEAST, 12, cards));
    }

    private String quantity(BigDecimal quantity, String unit) {
        return words.number(quantity) + " " + words.sayOr("unit." + unit, unit);
    }

    private VBox sheet(OrderSheet sheet) {
        var supplier = sheet.supplier();
        var lines = Texts.column(Texts.GAP);
        sheet.lines().forEach(line -> lines.getChildren().add(line(sheet, line)));
        var place = Texts.button(words.say("order.place", model.taken(sheet).size()), () -> model.place(sheet), "act");
        place.setId("order-place-" + supplier.id());
        return Cards.card(
                supplier.name(),
                Texts.words(
                        words.say("order.supplier", supplier.phone(), supplier.email(), supplier.leadDays()),
                        "small",
                        "slate"),
                lines,
                Cards.figure(Texts.words(words.say("order.cost"), "strong"), words.money(model.cost(sheet)), "strong"),
                Cards.refused("order-refused-" + supplier.id(), model.refusal(supplier.id())),
                Cards.keys(place));
    }

    private Press line(OrderSheet sheet, OrderLine line) {
        var supplier = sheet.supplier().id();
        var number = line.part().number();
        var on = model.chosen(supplier, number);
        var uses = line.uses().stream()
                .map(use -> use.quote() + ": " + words.number(use.quantity()))
                .collect(Collectors.joining(", "));
        var text = Cards.twoLines(
                quantity(line.quantity(), line.part().unit()) + "  "
                        + line.part().description(),
                number + "  \u00B7  " + words.say("order.for", uses));
        var press = new Press(
                words.say(on ? "order.is-on" : "order.is-off", line.part().description()),
                () -> model.choose(supplier, number, !on),
                new Mark(on ? Tone.GOOD : Tone.OPEN),
                text,
                Texts.line(words.amount(line.cost()), "figure"));
        press.setId("order-line-" + number);
        return press.styled("row", on ? "chosen" : "untaken");
    }

    private VBox order(Deliveries.Standing standing) {
        var order = standing.order();
        var lines = Texts.column(Texts.GAP);
        standing.items().forEach(item -> lines.getChildren().add(item(order.number(), item)));
        var card = Cards.card(
                words.say("order.one", order.number(), standing.supplier(), words.day(order.on())),
                lines,
                Cards.refused("order-refused-" + order.number(), model.refusal(order.number())));
        if (standing.complete()) {
            card.getChildren().add(Texts.words(words.say("order.all-came"), "moss", "strong"));
        } else {
            var all = Texts.button(words.say("order.all-here"), () -> model.allHere(standing));
            all.setId("order-all-" + order.number());
            card.getChildren().add(Cards.keys(all));
        }
        return card;
    }

    private Press item(String order, Deliveries.Item item) {
        var here = item.delivery().isPresent();
        var state = item.delivery()
                .map(delivery -> words.say("order.here", words.day(delivery.on()), delivery.who()))
                .orElse(words.say("order.on-its-way"));
        var press = new Press(
                item.part().description() + ", " + state,
                () -> model.mark(order, item.part().number(), !here),
                new Mark(here ? Tone.GOOD : Tone.EDGE),
                Cards.twoLines(
                        quantity(item.quantity(), item.part().unit()) + "  "
                                + item.part().description(),
                        state));
        press.setId("order-item-" + order + "-" + item.part().number());
        return press.styled("row");
    }

    private VBox load(Deliveries.Load load) {
        var lines = Texts.column(6);
        load.pieces().forEach(piece -> lines.getChildren().add(piece(piece)));
        var open = Texts.button(words.say("order.file"), () -> file.accept(load.visit()));
        open.setId("truck-" + load.visit());
        return Cards.card(
                load.customer(),
                Texts.words(
                        load.quote() + "  \u00B7  "
                                + words.say(load.complete() ? "order.load-ready" : "order.load-waits"),
                        "small",
                        "slate"),
                lines,
                Cards.keys(open));
    }

    private HBox piece(Deliveries.Piece piece) {
        var tone = switch (piece.where()) {
            case HERE -> Tone.GOOD;
            case ORDERED -> Tone.EDGE;
            case TO_ORDER -> Tone.OUTSIDE;
        };
        return Texts.across(
                10,
                new Mark(tone),
                Cards.twoLines(
                        quantity(piece.quantity(), piece.part().unit()) + "  "
                                + piece.part().description(),
                        words.say("order.where." + piece.where().name().toLowerCase(Locale.ROOT))));
    }
}

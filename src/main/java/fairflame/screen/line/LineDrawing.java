package fairflame.screen.line;

import fairflame.gas.Segment;
import fairflame.screen.kit.Mark;
import fairflame.screen.kit.Press;
import fairflame.screen.kit.Texts;
import fairflame.screen.kit.Tone;
import fairflame.screen.look.Words;
import java.math.BigDecimal;
import java.math.RoundingMode;
import javafx.geometry.Pos;
import javafx.scene.layout.Pane;
import javafx.scene.layout.VBox;
import javafx.scene.shape.Polyline;

/** The line as a drawing: source left, appliances right, size, length, flow and pressure on every run. */
final class LineDrawing extends Pane {
    private static final double BOX_EMS = 10.5;
    private static final double SOURCE_EMS = 8.5;
    private static final double MARGIN = 24;
    private static final double TARGET = 48;

    private final LineModel model;
    private final LineModel.Drawn drawn;
    private final LinePlaces places;
    private final Words words;
    private final double em;

    LineDrawing(LineModel model, LineModel.Drawn drawn, Words words, double em) {
        this.model = model;
        this.drawn = drawn;
        this.places = LinePlaces.of(drawn.layout(), model.bench().draft());
        this.words = words;
        this.em = em;
        drawn.layout().segments().forEach(this::run);
        drawn.layout().appliances().forEach(appliance -> appliance(appliance.id(), appliance.node()));
        source();
        var furthest = places.furthest();
        setMinSize(
                MARGIN * 2 + (SOURCE_EMS + furthest.x() + LinePlaces.COLUMN + BOX_EMS) * em,
                MARGIN * 2 + furthest.y() * em);
        setPrefSize(getMinWidth(), getMinHeight());
    }

    private double x(LinePlaces.Spot spot) {
        return MARGIN + (SOURCE_EMS + spot.x()) * em;
    }

    private double y(LinePlaces.Spot spot) {
        return MARGIN + spot.y() * em;
    }

    private void run(Segment segment) {
        var size = drawn.sizing().segment(segment.id());
        var from = places.node(segment.from());
        var to = places.node(segment.to());
        var line = new Polyline(x(from), y(from), x(from), y(to), x(to), y(to));
        line.getStyleClass().add(size.enough() ? "run" : "run-short");
        if (segment.id().equals(model.chosen().get())) {
            line.getStyleClass().add("run-chosen");
        }
        line.setMouseTransparent(true);
        getChildren().add(0, line);
        var press = runWords(segment);
        var width = Math.max(TARGET, x(to) - x(from) - 36);
        press.setMinWidth(width);
        press.setPrefWidth(width);
        press.setMaxWidth(width);
        press.setMinHeight(TARGET);
        getChildren().add(press);
        press.layoutXProperty().set(x(from) + 16);
        press.layoutYProperty().bind(press.heightProperty().negate().add(y(to) - 8));
    }

    private Press runWords(Segment segment) {
        var size = drawn.sizing().segment(segment.id());
        var state = drawn.firing().segment(segment.id());
        var text = Texts.column(
                0,
                Texts.words(segment.pipe().words(), "semi"),
                Texts.words(
                        words.say(
                                "line.run",
                                plain(segment.route().length().feet(), 0),
                                segment.route().fittings().number(),
                                plain(state.flow().cubicFeetPerHour(), 0)),
                        "small"));
        if (!size.enough()) {
            text.getChildren()
                    .add(Texts.words(
                            size.required()
                                    .map(pipe -> words.say("line.short", pipe.size()))
                                    .orElse(words.say("line.short-all")),
                            "small",
                            "oxide",
                            "strong"));
        }
        var press = new Press(segment.pipe().words(), () -> model.chosen().set(segment.id()), text);
        press.setId("run-" + segment.id());
        press.setAlignment(Pos.BOTTOM_LEFT);
        Moving.of(press, segment.to(), segment.id(), model, em);
        return press;
    }

    private void appliance(String id, String node) {
        var state = drawn.firing().appliance(id);
        var tone = state.enough() ? Tone.GOOD : Tone.OUTSIDE;
        var box = new VBox(
                2,
                Texts.words(id.replace('-', ' '), "semi"),
                Texts.line(
                        state.pressure().inchesBeside(state.inlet().minimum()).toPlainString() + " in w.c.",
                        "figure",
                        "strong"),
                Texts.across(
                        6,
                        new Mark(tone),
                        Texts.words(
                                words.say(
                                        "line.needs",
                                        plain(state.inlet().minimum().inchesWater(), 1)),
                                "small")));
        var press = new Press(id, () -> model.chosen().set(id), box);
        press.setId("appliance-" + id);
        press.getStyleClass().addAll("node", "line-box");
        var spot = places.appliance(id);
        place(press, x(spot), y(spot), BOX_EMS);
        Moving.of(press, node, id, model, em);
    }

    private void source() {
        var source = drawn.layout().source();
        var box = new VBox(
                2,
                Texts.words(words.say("line.source." + source.kind().name()), "semi"),
                Texts.line(plain(source.underLoad().inchesWater(), 1) + " in w.c.", "figure", "strong"));
        var press = new Press(words.say("line.source"), () -> model.chosen().set("source"), box);
        press.setId("line-source");
        press.getStyleClass().addAll("node", "line-box");
        place(press, MARGIN, y(places.node(source.node())), SOURCE_EMS);
    }

    private void place(Press box, double x, double y, double width) {
        box.setMinWidth(width * em);
        box.setPrefWidth(width * em);
        box.setMinHeight(TARGET);
        getChildren().add(box);
        box.setLayoutX(x);
        box.layoutYProperty().bind(box.heightProperty().divide(-2).add(y));
    }

    static String plain(double value, int places) {
        return BigDecimal.valueOf(value).setScale(places, RoundingMode.HALF_UP).toPlainString();
    }
}

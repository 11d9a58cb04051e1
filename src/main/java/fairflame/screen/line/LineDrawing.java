package fairflame.screen.line;

import fairflame.gas.Segment;
import fairflame.screen.kit.Mark;
import fairflame.screen.kit.Press;
import fairflame.screen.kit.Texts;
import fairflame.screen.kit.Tone;
import fairflame.screen.look.Words;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.HashMap;
import java.util.Map;
import javafx.geometry.Pos;
import javafx.scene.layout.Pane;
import javafx.scene.layout.VBox;
import javafx.scene.shape.Polyline;

/** The line as a drawing: source left, appliances right, size, length, flow and pressure on every run. */
final class LineDrawing extends Pane {
    private static final double COLUMN_EMS = 14.5;
    private static final double ROW_EMS = 9.5;
    private static final double BOX_EMS = 10.5;
    private static final double SOURCE_EMS = 8.5;
    private static final double MARGIN = 24;

    private final LineModel model;
    private final LineModel.Drawn drawn;
    private final Words words;
    private final double em;
    private final Map<String, Double> heights = new HashMap<>();
    private double next;
    private double deepest;

    LineDrawing(LineModel model, LineModel.Drawn drawn, Words words, double em) {
        this.model = model;
        this.drawn = drawn;
        this.words = words;
        this.em = em;
        var start = drawn.layout().source().node();
        var y = branch(start, 0);
        source(y);
        setMinSize(MARGIN * 2 + (deepest + 1) * COLUMN_EMS * em + BOX_EMS * em, MARGIN * 2 + next * ROW_EMS * em);
        setPrefSize(getMinWidth(), getMinHeight());
    }

    /** Draws all that leaves a node and gives the node's height. */
    private double branch(String node, int depth) {
        deepest = Math.max(deepest, depth);
        var first = -1.0;
        for (var segment : drawn.layout().segments()) {
            if (segment.from().equals(node)) {
                var y = branch(segment.to(), depth + 1);
                first = first < 0 ? y : first;
                run(segment, depth, first, y);
            }
        }
        for (var appliance : drawn.layout().appliances()) {
            if (appliance.node().equals(node)) {
                var y = first < 0 ? row() : first + ROW_EMS * em * 0.5;
                if (first >= 0) {
                    next += 0.5;
                }
                appliance(appliance.id(), depth, y);
                first = first < 0 ? y : first;
            }
        }
        heights.put(node, first < 0 ? row() : first);
        return heights.get(node);
    }

    private double row() {
        var y = MARGIN + next * ROW_EMS * em + ROW_EMS * em / 2;
        next++;
        return y;
    }

    private double x(int depth) {
        return MARGIN + SOURCE_EMS * em + depth * COLUMN_EMS * em;
    }

    private void run(Segment segment, int depth, double from, double to) {
        var size = drawn.sizing().segment(segment.id());
        var state = drawn.firing().segment(segment.id());
        var line = new Polyline(x(depth), from, x(depth), to, x(depth + 1), to);
        line.getStyleClass().add(size.enough() ? "run" : "run-short");
        if (segment.id().equals(model.chosen().get())) {
            line.getStyleClass().add("run-chosen");
        }
        line.setMouseTransparent(true);
        getChildren().add(0, line);
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
        var press = new Press(segment.pipe().words(), () -> model.chosen().set(segment.id()), text);
        press.setId("run-" + segment.id());
        press.setAlignment(Pos.BOTTOM_LEFT);
        var width = COLUMN_EMS * em - 36;
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
        press.setMinWidth(width);
        press.setPrefWidth(width);
        press.setMaxWidth(width);
        press.setMinHeight(48);
        getChildren().add(press);
        press.layoutXProperty().set(x(depth) + 16);
        press.layoutYProperty().bind(press.heightProperty().negate().add(to - 8));
    }

    private void appliance(String id, int depth, double y) {
        var state = drawn.firing().appliance(id);
        var tone = state.enough() ? Tone.GOOD : Tone.OUTSIDE;
        var box = new VBox(
                2,
                Texts.words(id.replace('-', ' '), "semi"),
                Texts.line(plain(state.pressure().inchesWater(), 1) + " in w.c.", "figure", "strong"),
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
        place(press, x(depth), y);
    }

    private void source(double y) {
        var source = drawn.layout().source();
        var box = new VBox(
                2,
                Texts.words(words.say("line.source." + source.kind().name()), "semi"),
                Texts.line(plain(source.underLoad().inchesWater(), 1) + " in w.c.", "figure", "strong"));
        var press = new Press(words.say("line.source"), () -> model.chosen().set("source"), box);
        press.setId("line-source");
        press.getStyleClass().addAll("node", "line-box");
        place(press, MARGIN, y);
        press.setMinWidth(SOURCE_EMS * em);
        press.setPrefWidth(SOURCE_EMS * em);
    }

    private void place(Press box, double x, double y) {
        box.setMinWidth(BOX_EMS * em);
        box.setPrefWidth(BOX_EMS * em);
        box.setMinHeight(48);
        getChildren().add(box);
        box.setLayoutX(x);
        box.layoutYProperty().bind(box.heightProperty().divide(-2).add(y));
    }

    static String plain(double value, int places) {
        return BigDecimal.valueOf(value).setScale(places, RoundingMode.HALF_UP).toPlainString();
    }
}

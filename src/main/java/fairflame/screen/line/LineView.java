package fairflame.screen.line;

import fairflame.screen.kit.Chips;
import fairflame.screen.kit.Columns;
import fairflame.screen.kit.Leaves;
import fairflame.screen.kit.Press;
import fairflame.screen.kit.Texts;
import fairflame.screen.kit.Ties;
import fairflame.screen.look.Look;
import fairflame.screen.look.Words;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import javafx.geometry.Insets;
import javafx.scene.Node;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;

/** The gas line: drawn left, the chosen piece and the priced ways right. */
public final class LineView extends StackPane {
    private static final double LEAST_EMS = 58;
    private static final double LEAST_WAY = 200;

    private final LineModel model;
    private final Words words;
    private final Look look;
    private final Ties ties = new Ties();
    private final ScrollPane drawing = new ScrollPane();
    private final VBox side = new VBox(14);

    public LineView(LineModel model, Words words, Look look) {
        this.model = model;
        this.words = words;
        this.look = look;
        setPadding(new Insets(12, 14, 12, 14));
        if (!model.started()) {
            getChildren().add(beginning());
            ties.later(model.now(), now -> {
                if (now.isPresent() && !(getChildren().get(0) instanceof Leaves)) {
                    fill();
                }
            });
        } else {
            fill();
        }
    }

    public void close() {
        model.close();
        ties.cut();
    }

    private VBox beginning() {
        var start = Texts.button(words.say("line.start"), model::start, "act");
        start.setId("line-start");
        var box = Texts.column(16, Texts.words(words.say("line.none"), "large"), start);
        box.setMaxWidth(560);
        box.setMaxHeight(USE_PREF_SIZE);
        return box;
    }

    private void fill() {
        drawing.setPannable(true);
        drawing.setMinHeight(0);
        drawing.getStyleClass().add("drawing");
        var scroll = Texts.scrolling(side);
        side.setPadding(new Insets(0, 10, 8, 2));
        VBox.setVgrow(drawing, Priority.ALWAYS);
        var left = Texts.column(Texts.GAP, head(), drawing);
        left.setMinHeight(0);
        getChildren()
                .setAll(new Leaves(
                        look,
                        LEAST_EMS,
                        List.of(
                                new Leaves.Leaf(words.say("line.drawing"), left, 0.66),
                                new Leaves.Leaf(words.say("line.piece"), scroll, 0.34))));
        ties.on(model.bench().history().now(), now -> draw());
        ties.later(model.shown(), shown -> {
            draw();
            side();
        });
        ties.later(model.ways(), ways -> side());
        ties.on(model.chosen(), chosen -> {
            draw();
            side();
        });
    }

    private HBox head() {
        var said = Texts.words("", "refusal");
        said.setId("line-refusal");
        HBox.setHgrow(said, Priority.ALWAYS);
        said.setMaxWidth(Double.MAX_VALUE);
        said.setMinWidth(0);
        ties.on(model.refusal(), refusal -> {
            said.setText(refusal);
            said.setManaged(!refusal.isEmpty());
        });
        var supply = Texts.words("", "slate");
        supply.setMinWidth(0);
        HBox.setHgrow(supply, Priority.ALWAYS);
        supply.setMaxWidth(Double.MAX_VALUE);
        ties.on(
                model.now(),
                now -> supply.setText(
                        now.map(drawn -> drawn.sizing().supply().words()).orElse("")));
        var plan = Texts.button(words.say("line.plan"), model::plan, "act");
        plan.setId("line-plan");
        plan.setMinWidth(USE_PREF_SIZE);
        var tidy = Texts.button(words.say("line.tidy"), model::tidy);
        tidy.setId("line-tidy");
        tidy.setMinWidth(USE_PREF_SIZE);
        ties.on(model.bench().history().now(), draft -> {
            tidy.setVisible(LinePlaces.untidy(draft));
            tidy.setManaged(tidy.isVisible());
        });
        var texts = Texts.column(2, said, supply);
        HBox.setHgrow(texts, Priority.ALWAYS);
        texts.setMinWidth(0);
        return Texts.across(12, texts, tidy, plan);
    }

    /** Drawn anew with every change; the piece that had the keyboard keeps it. */
    private void draw() {
        var held = held();
        model.drawn().ifPresent(drawn -> {
            var fresh = new LineDrawing(model, drawn, words, look.em());
            drawing.setContent(fresh);
            fresh.getChildren().stream()
                    .filter(piece -> piece.getId() != null && held.contains(piece.getId()))
                    .forEach(Node::requestFocus);
        });
    }

    /** Id of the piece that has the keyboard; none when something else has it. */
    private Set<String> held() {
        if (drawing.getContent() instanceof LineDrawing drawn) {
            return drawn.getChildren().stream()
                    .filter(Node::isFocused)
                    .map(Node::getId)
                    .collect(Collectors.toSet());
        }
        return Set.of();
    }

    private void side() {
        side.getChildren().clear();
        if (!model.ways().get().isEmpty()) {
            side.getChildren().add(Texts.words(words.say("line.ways"), "large", "strong"));
            var chips = new Chips();
            chips.one(
                    "way-now",
                    words.say("line.now"),
                    model.shown().get().isEmpty(),
                    () -> model.shown().set(""));
            side.getChildren().add(chips);
            side.getChildren()
                    .add(new Columns(
                            LEAST_WAY,
                            Texts.GAP,
                            model.ways().get().stream().map(this::way).toList()));
        }
        var text = model.text();
        if (text.isPresent() && !model.chosen().get().isEmpty()) {
            side.getChildren()
                    .add(new PieceCard(model, words, text.get(), model.chosen().get()));
        } else {
            side.getChildren().add(Texts.words(words.say("line.choose"), "slate"));
        }
    }

    private Press way(LineWork.Way way) {
        var content = Texts.column(
                4,
                Texts.words(way.title(), "strong"),
                Texts.line(words.money(way.cost()), "large", "figure", "strong"));
        way.changes().forEach(change -> content.getChildren().add(Texts.words(change, "small")));
        HBox.setHgrow(content, Priority.ALWAYS);
        content.setMinWidth(0);
        var press = new Press(
                way.title() + ", " + words.money(way.cost()),
                () -> model.shown().set(way.title()),
                content);
        press.setId("way-" + model.ways().get().indexOf(way));
        return press.styled("choice", way.title().equals(model.shown().get()) ? "taken" : "offered");
    }
}

package fairflame.screen;

import fairflame.screen.bench.BenchModel;
import fairflame.screen.bench.Steps;
import fairflame.screen.kit.Pictures;
import fairflame.screen.kit.Texts;
import fairflame.screen.look.Look;
import fairflame.screen.look.Theme;
import fairflame.screen.look.Words;
import javafx.geometry.Insets;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.FlowPane;

/** Below, where thumbs are: the places, the tally of bypass leads, undo, light, type and language. */
final class Rail extends FlowPane {
    private static final double PICTURE = 26;

    private final ShellModel shell;
    private final Words words;
    private final Look look;
    private final Runnable pin;

    /** The rail; {@code pin} opens the sheet for the digits of the person at work. */
    Rail(ShellModel shell, Words words, Look look, Runnable pin) {
        super(Texts.GAP, Texts.GAP);
        setMinWidth(0);
        this.shell = shell;
        this.words = words;
        this.look = look;
        this.pin = pin;
        setAlignment(Pos.CENTER);
        getStyleClass().add("rail");
        setPadding(new Insets(6, 14, 6, 14));
        fill();
    }

    /** All that its look depends on. */
    private record State(
            Place place, boolean bench, boolean held, long leads, boolean undo, boolean redo, Theme theme, int text) {}

    private State state() {
        var open = shell.bench().get();
        return new State(
                shell.place().get(),
                open.isPresent(),
                open.filter(BenchModel::held).isPresent(),
                open.map(BenchModel::leadsPlaced).orElse(0L),
                open.filter(model -> model.history().undoable().get() && !stopped(model))
                        .isPresent(),
                open.filter(model -> model.history().redoable().get() && !stopped(model))
                        .isPresent(),
                look.theme().get(),
                look.textPercent().get());
    }

    /** Draws the rail anew where something on it changed. */
    void fill() {
        var state = state();
        if (state.equals(getUserData())) {
            return;
        }
        setUserData(state);
        getChildren().clear();
        var group = new ToggleGroup();
        for (var place : Place.values()) {
            getChildren().add(placeKey(place, group));
        }
        shell.bench().get().ifPresent(model -> {
            if (model.leadsPlaced() > 0) {
                var tally = tool("leads", words.say("tally", model.leadsPlaced()), "lead", () -> {
                    shell.place().set(Place.BENCH);
                    model.step().set(Steps.LEADS);
                });
                tally.getStyleClass().add("tally");
                getChildren().add(tally);
            }
            var undo = tool("undo", words.say("tool.undo"), "undo", model.history()::undo);
            // Stopped work is not undone by a key: only a licensed release opens it again.
            undo.setDisable(!state.undo());
            // The mirror of the key beside it: its words are for those who cannot see the arrow.
            var redo = tool("redo", "", "redo", model.history()::redo);
            redo.setAccessibleText(words.say("tool.redo"));
            redo.setDisable(!state.redo());
            getChildren().addAll(undo, redo);
        });
        getChildren()
                .addAll(
                        tool(
                                "theme",
                                words.say("tool.theme."
                                        + look.theme().get().other().name()),
                                "sun",
                                () -> look.theme().set(look.theme().get().other())),
                        tool("text", words.say("tool.text", look.textPercent().get()), "", look::nextTextSize),
                        tool("pin", words.say("tool.pin"), "", pin),
                        tool(
                                "language",
                                words.say("tool.language"),
                                "",
                                () -> shell.language().set(shell.otherLanguage())));
    }

    private static boolean stopped(BenchModel model) {
        return model.judged().get().filter(found -> found.danger()).isPresent();
    }

    private ToggleButton placeKey(Place place, ToggleGroup group) {
        var key = new ToggleButton(words.say("place." + place.key()), Pictures.of(place.key(), PICTURE));
        key.setId("place-" + place.key());
        key.setToggleGroup(group);
        key.setSelected(shell.place().get() == place);
        key.setWrapText(false);
        key.setMinWidth(USE_PREF_SIZE);
        var here = state();
        // Stopped work holds the screen until its sheet is printed or a licensed release recorded.
        var withoutVisit = !here.bench() && (place == Place.BENCH || place == Place.LINE);
        key.setDisable(withoutVisit || (here.held() && place != Place.BENCH));
        key.setOnAction(event -> {
            key.setSelected(true);
            shell.place().set(place);
        });
        return key;
    }

    private static Button tool(String id, String text, String picture, Runnable action) {
        var key = Texts.button(text, action);
        key.setId("tool-" + id);
        key.setWrapText(false);
        key.setMinWidth(USE_PREF_SIZE);
        if (!picture.isEmpty()) {
            key.setGraphic(Pictures.of(picture, PICTURE));
        }
        return key;
    }
}

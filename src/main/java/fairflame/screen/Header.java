package fairflame.screen;

import fairflame.screen.bench.BenchModel;
import fairflame.screen.bench.Steps;
import fairflame.screen.kit.FlowPipe;
import fairflame.screen.kit.Texts;
import fairflame.screen.look.Words;
import fairflame.screen.office.OfficePage;
import java.util.ArrayList;
import java.util.Locale;
import java.util.Optional;
import javafx.geometry.Insets;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;

/** On top: whose visit it is and the pipe that shows how far it has come. */
final class Header extends HBox {
    private static final double NAME_SHARE = 0.24;

    private final ShellModel shell;
    private final Words words;
    private final Runnable handover;
    private Optional<State> shown = Optional.empty();

    Header(ShellModel shell, Words words, Runnable handover) {
        super(16);
        this.shell = shell;
        this.words = words;
        this.handover = handover;
        getStyleClass().add("rail");
        setPadding(new Insets(6, 14, 6, 14));
        fill();
    }

    /** All that its look depends on. */
    private record State(String name, String visit, int reached, int here, boolean stopped) {}

    /** Draws the header anew where something on it changed. */
    void fill() {
        var model = shell.bench()
                .get()
                .filter(open ->
                        shell.place().get() != Place.LEDGER && shell.place().get() != Place.STOCK);
        var state = model.map(
                open -> new State(customer(open), open.draft().get("id"), shell.reached(), here(open), stopped(open)));
        if (state.isPresent() && state.equals(shown)) {
            return;
        }
        shown = state;
        getChildren().clear();
        var title = Texts.column(
                0,
                Texts.words(
                        model.map(this::customer)
                                .orElse(words.say("place." + shell.place().get().key())),
                        "strong",
                        "on-rail"),
                Texts.words(
                        model.map(open -> open.draft().get("id"))
                                .orElse(shell.work().shopName()),
                        "small",
                        "rail-quiet"));
        title.setAlignment(javafx.geometry.Pos.CENTER_LEFT);
        title.setMinWidth(0);
        title.maxWidthProperty().bind(widthProperty().multiply(NAME_SHARE));
        title.prefWidthProperty().bind(widthProperty().multiply(NAME_SHARE));
        title.minWidthProperty().bind(widthProperty().multiply(NAME_SHARE));
        getChildren().add(title);
        if (model.isPresent()) {
            var pipe = pipe(model.get());
            HBox.setHgrow(pipe, Priority.ALWAYS);
            getChildren().add(pipe);
        } else {
            title.maxWidthProperty().unbind();
            title.minWidthProperty().unbind();
            title.setMinWidth(0);
            title.setMaxWidth(Double.MAX_VALUE);
            HBox.setHgrow(title, Priority.ALWAYS);
        }
        if (shell.work().demo()) {
            var demo = Texts.line(words.say("demo.mark"), "demo");
            var box = new HBox(demo);
            box.setAlignment(javafx.geometry.Pos.CENTER);
            box.setMinWidth(USE_PREF_SIZE);
            getChildren().add(box);
        }
    }

    private String customer(BenchModel model) {
        var name = model.draft().get("customer.name");
        return name.isBlank() ? words.say("visit.new") : name;
    }

    private FlowPipe pipe(BenchModel model) {
        var stops = new ArrayList<FlowPipe.Stop>();
        var reached = shell.reached();
        for (var stop : ShellModel.Stop.values()) {
            var key = stop.name().toLowerCase(Locale.ROOT);
            stops.add(new FlowPipe.Stop(
                    key, words.say("stop." + key), !stopped(model) && open(stop, reached), () -> go(model, stop)));
        }
        return new FlowPipe(stops, reached, here(model));
    }

    private static boolean stopped(BenchModel model) {
        return model.judged().get().filter(found -> found.danger()).isPresent();
    }

    private static boolean open(ShellModel.Stop stop, int reached) {
        return switch (stop) {
            case COMPLAINT, READINGS, FINDING -> true;
            case REPAIR, PAPER, SIGNATURE -> reached >= ShellModel.Stop.PAPER.ordinal();
            case INVOICE, PAID -> reached >= ShellModel.Stop.SIGNATURE.ordinal();
        };
    }

    private int here(BenchModel model) {
        if (shell.place().get() == Place.LINE) {
            return ShellModel.Stop.FINDING.ordinal();
        }
        return switch (model.step().get()) {
            case Steps.WHO, Steps.COMPLAINT, Steps.PLATE -> ShellModel.Stop.COMPLAINT.ordinal();
            case Steps.FINDING -> ShellModel.Stop.FINDING.ordinal();
            case Steps.SCOPE -> ShellModel.Stop.REPAIR.ordinal();
            case Steps.PRICE -> ShellModel.Stop.PAPER.ordinal();
            default -> ShellModel.Stop.READINGS.ordinal();
        };
    }

    private void go(BenchModel model, ShellModel.Stop stop) {
        switch (stop) {
            case SIGNATURE -> handover.run();
            case INVOICE, PAID -> {
                shell.page().set(OfficePage.VISITS);
                shell.place().set(Place.LEDGER);
            }
            default -> {
                shell.place().set(Place.BENCH);
                model.step()
                        .set(
                                switch (stop) {
                                    case COMPLAINT -> Steps.COMPLAINT;
                                    case READINGS -> model.onward();
                                    case REPAIR -> Steps.SCOPE;
                                    case PAPER -> Steps.PRICE;
                                    default -> Steps.FINDING;
                                });
            }
        }
    }
}

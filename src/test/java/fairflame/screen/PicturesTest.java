package fairflame.screen;

import static org.assertj.core.api.Assertions.assertThat;

import fairflame.screen.bench.Steps;
import fairflame.screen.look.Look;
import fairflame.screen.look.Theme;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.control.ToggleButton;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Every screen at every size, in both themes and languages: nothing cut, covered, too small or too faint. */
@ExtendWith(ScreenMachine.class)
class PicturesTest {
    @TempDir
    Path folder;

    private final List<String> faults = new ArrayList<>();

    @ParameterizedTest
    @CsvSource(textBlock = """
            1280,  800, BRIGHT, en, 100
            1280,  800, BRIGHT, es, 100
            1280,  800, DIM,    en, 100
            1280,  800, DIM,    es, 100
            1920, 1080, BRIGHT, en, 100
            1920, 1080, BRIGHT, es, 100
            1920, 1080, DIM,    en, 100
            1920, 1080, DIM,    es, 100
            1024,  768, BRIGHT, en, 100
            1024,  768, BRIGHT, es, 100
            1024,  768, DIM,    en, 100
            1024,  768, DIM,    es, 100
            1280,  800, BRIGHT, en, 150
            1280,  800, BRIGHT, es, 200
            1920, 1080, DIM,    en, 200
            """)
    void everyScreenIsWholeAndReadable(int width, int height, Theme theme, String language, int text) {
        try (var workplace = Shop.in(folder)) {
            var work = new WorkplaceScreens(workplace, true);
            for (int visit = 1; visit <= 4; visit++) {
                work.keep(Shop.demo(visit));
            }
            work.remember("language", language);
            var name = width + "x" + height + "-" + theme.name().toLowerCase(Locale.ROOT) + "-" + language + "-" + text;
            Toolkit.run(() -> walk(work, new Frame(width, height, theme, text, name)));
            assertThat(faults).isEmpty();
        }
    }

    private record Frame(int width, int height, Theme theme, int text, String name) {}

    private void walk(WorkplaceScreens work, Frame frame) {
        var model = new ShellModel(work);
        var look = new Look();
        look.theme().set(frame.theme());
        look.textPercent(frame.text());
        var scene = new Scene(new Shell(model, look, details -> {}), frame.width(), frame.height());
        look.dress(scene);
        see(scene, frame, "ledger");
        model.start();
        see(scene, frame, "new-visit");
        model.open("V-2026-0601");
        var bench = model.bench().get().orElseThrow();
        // The customer reads what the window speaks, so that the long Spanish sentences are looked at too.
        bench.history()
                .change(draft ->
                        draft.with("customer.language", model.language().get()));
        for (var step : List.of(
                Steps.WHO,
                Steps.COMPLAINT,
                Steps.PLATE,
                Steps.GATES,
                Steps.ofCheck("gas-firing"),
                Steps.ofCheck("leak-outlet"),
                Steps.ofCheck("switch-bodies"),
                Steps.FINDING,
                Steps.SCOPE,
                Steps.PRICE,
                Steps.PHOTOS,
                Steps.TERMS,
                Steps.DECIDE,
                Steps.LEADS)) {
            bench.step().set(step);
            see(scene, frame, "bench-" + step.replace("check:", ""));
        }
        if (showPaper(scene)) {
            see(scene, frame, "bench-paper");
        }
        enter(scene.lookup("#paper-total"));
        see(scene, frame, "why-total");
        ((Button) scene.lookup("#why-close")).fire();
        bench.step().set(Steps.FINDING);
        enter(scene.lookup("#cause-0"));
        see(scene, frame, "why-cause");
        ((Button) scene.lookup("#why-close")).fire();
        showPaper(scene);
        ((Button) scene.lookup("#hand-over")).fire();
        Toolkit.awaitWorkHere();
        see(scene, frame, "handover");
        scene.getRoot().lookupAll(".choice").stream().findFirst().ifPresent(PicturesTest::enter);
        see(scene, frame, "handover-chosen");
        ((ToggleButton) scene.lookup("#handover-shown-by")).fire();
        see(scene, frame, "handover-shown");
        ((Button) scene.lookup("#handover-away")).fire();
        see(scene, frame, "handover-away");
        model.open("V-2026-0602");
        model.place().set(Place.LINE);
        see(scene, frame, "line");
        model.place().set(Place.BENCH);
        showPaper(scene);
        ((Button) scene.lookup("#hand-over")).fire();
        Toolkit.awaitWorkHere();
        see(scene, frame, "handover-line");
        work.keep(LargeLine.on(Shop.demo(2), 50).with("id", "V-2026-0650"));
        model.open("V-2026-0650");
        model.place().set(Place.LINE);
        see(scene, frame, "line-large");
        model.open("V-2026-0603");
        model.bench().get().orElseThrow().step().set(Steps.FINDING);
        see(scene, frame, "bench-not-settled");
        model.open("V-2026-0604");
        see(scene, frame, "stop-work");
        // A printed sheet may be left; before that nothing leads away from it.
        model.bench().get().orElseThrow().printed();
        model.place().set(Place.STOCK);
        see(scene, frame, "stock");
    }

    /** Turns to the paper where only one leaf is shown. */
    private static boolean showPaper(Scene scene) {
        var leaf = scene.lookup("#leaf-2");
        if (leaf instanceof ToggleButton paper) {
            paper.fire();
        }
        return leaf != null;
    }

    private static void enter(Node key) {
        key.fireEvent(new KeyEvent(KeyEvent.KEY_PRESSED, "", "", KeyCode.ENTER, false, false, false, false));
    }

    private void see(Scene scene, Frame frame, String what) {
        scene.getRoot().applyCss();
        scene.getRoot().layout();
        scene.getRoot().applyCss();
        scene.getRoot().layout();
        SceneCheck.faults(scene).forEach(fault -> faults.add(what + " " + frame.name() + ": " + fault));
        Shots.take(scene, what + "-" + frame.name());
    }
}

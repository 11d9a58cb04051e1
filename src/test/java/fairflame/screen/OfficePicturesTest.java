package fairflame.screen;

import static org.assertj.core.api.Assertions.assertThat;

import fairflame.screen.look.Look;
import fairflame.screen.look.Theme;
import fairflame.screen.office.OfficePage;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javafx.scene.Scene;
import javafx.scene.control.ScrollPane;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Every page of the office at every size, in both themes and languages: nothing cut, covered, small or faint. */
@ExtendWith(ScreenMachine.class)
class OfficePicturesTest {
    @TempDir
    private static Path truck;

    @TempDir
    private static Path folder;

    private final List<String> faults = new ArrayList<>();

    @BeforeAll
    static void anOfficeAtWork() {
        OfficeFolder.busy(folder, OfficeFolder.packet(truck));
    }

    @ParameterizedTest
    @CsvSource(textBlock = """
            1280,  800, BRIGHT, en, 100
            1280,  800, DIM,    es, 100
            1920, 1080, BRIGHT, es, 100
            1920, 1080, DIM,    en, 100
            1024,  768, BRIGHT, es, 100
            1024,  768, DIM,    en, 100
            1280,  800, BRIGHT, en, 150
            1280,  800, BRIGHT, es, 200
            1920, 1080, DIM,    en, 200
            """)
    void everyPageIsWholeAndReadable(int width, int height, Theme theme, String language, int text) {
        try (var workplace = OfficeFolder.at(folder, "2026-06-20")) {
            var work = new WorkplaceScreens(workplace, false);
            work.remember("language", language);
            var name = width + "x" + height + "-" + theme.name().toLowerCase(Locale.ROOT) + "-" + language + "-" + text;
            var model = new ShellModel(work);
            var scene = Toolkit.on(() -> {
                var look = new Look();
                look.theme().set(theme);
                look.textPercent(text);
                var fresh = new Scene(new Shell(model, look, details -> {}), width, height);
                look.dress(fresh);
                return fresh;
            });
            for (var page : OfficePage.values()) {
                Toolkit.run(() -> model.page().set(page));
                // Figures are counted beside the window; they come with one of the next turns.
                Toolkit.awaitWork();
                Toolkit.run(() -> see(scene, page.key() + "-" + name));
            }
            assertThat(faults).isEmpty();
        }
    }

    private void see(Scene scene, String name) {
        look(scene, name, 0);
        scene.getRoot().lookupAll(".scroll-pane").stream()
                .filter(ScrollPane.class::isInstance)
                .map(ScrollPane.class::cast)
                .filter(scroll -> scroll.getVmax() > 0)
                .forEach(scroll -> scroll.setVvalue(1));
        look(scene, name, 1);
    }

    private void look(Scene scene, String name, int end) {
        for (int i = 0; i < 2; i++) {
            scene.getRoot().applyCss();
            scene.getRoot().layout();
        }
        SceneCheck.faults(scene).forEach(fault -> faults.add(name + ": " + fault));
        Shots.take(scene, "office-" + name + (end == 0 ? "" : "-end"));
    }
}

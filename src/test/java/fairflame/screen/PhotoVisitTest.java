package fairflame.screen;

import static org.assertj.core.api.Assertions.assertThat;

import fairflame.document.photo.PhotoFiles;
import fairflame.screen.bench.Steps;
import fairflame.screen.look.Theme;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** Photographs on the bench, with nothing but the window. */
@ExtendWith(ScreenMachine.class)
class PhotoVisitTest {
    private static final String VISIT = "V-2026-0601";

    @TempDir
    Path folder;

    @Test
    void aPictureIsTakenInToldAboutAndShown() throws Exception {
        try (var workplace = Shop.in(folder)) {
            var work = new WorkplaceScreens(workplace, true);
            work.keep(Shop.demo(1));
            try (var hand = new Hand(work, 1280, 800, Theme.BRIGHT, "en")) {
                Toolkit.run(() -> hand.model().open(VISIT));
                Toolkit.run(
                        () -> hand.model().bench().get().orElseThrow().step().set(Steps.PHOTOS));
                var letter = Files.write(folder.resolve("a.jpg"), "a letter".getBytes(StandardCharsets.US_ASCII));
                hand.type("photo-file", letter.toString()).press("photo-add");
                waitFor(() -> shown(hand).contains("not a picture"));
                var picture = Files.write(folder.resolve("switch.png"), PhotoFiles.png(600, 400));
                hand.type("photo-file", picture.toString()).press("photo-add");
                waitFor(() -> work.photos().of(VISIT).size() == 1);
                waitFor(() -> hand.has("photo-remove-switch.jpg"));
                hand.look("photo-taken");
                hand.type("photo-caption-switch.jpg", "Water in the switch").key(KeyCode.ENTER);
                hand.press("photo-show-switch.jpg")
                        .press("photo-about-switch.jpg")
                        .look("photo-about");
                hand.press("photo-about-switch.jpg-leak-outlet");
                hand.look("photo-told");
                var photo = work.photos().of(VISIT).get(0);
                assertThat(photo.caption()).isEqualTo("Water in the switch");
                assertThat(photo.about()).isEqualTo("leak-outlet");
                assertThat(photo.shown()).isTrue();
                hand.press("photo-remove-switch.jpg");
                assertThat(work.photos().of(VISIT)).isEmpty();
            }
        }
    }

    private static String shown(Hand hand) {
        var field = hand.find("photo-file");
        return String.valueOf(Toolkit.on(field::getAccessibleHelp));
    }

    private interface Question {
        boolean holds();
    }

    private static void waitFor(Question question) {
        for (int i = 0; i < 2000 && !question.holds(); i++) {
            Toolkit.settle();
        }
        assertThat(question.holds()).isTrue();
    }
}

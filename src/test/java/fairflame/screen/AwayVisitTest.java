package fairflame.screen;

import static org.assertj.core.api.Assertions.assertThat;

import fairflame.screen.look.Theme;
import fairflame.visit.PaperHand;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** A customer who is away, with nothing but the window: the paper is written, comes back and is sealed. */
@ExtendWith(ScreenMachine.class)
class AwayVisitTest {
    @TempDir
    Path folder;

    @Test
    void aPaperGoesOutFromTheCustomersPageAndComesBackInTheLedger() throws Exception {
        try (var workplace = Shop.in(folder)) {
            var work = new WorkplaceScreens(workplace, true);
            work.keep(Shop.demo(1));
            try (var hand = new Hand(work, 1280, 800, Theme.BRIGHT, "en")) {
                Toolkit.run(() -> hand.model().open("V-2026-0601"));
                hand.press("hand-over").press("handover-away").look("away-page");
                hand.press("away-write");
                await(hand, "away-sent");
                var paper = folder.resolve("Q-2026-0001-r1-away-1.pdf");
                assertThat(hand.words("away-sent")).contains(paper.toString()).contains(".eml");
                hand.look("away-written").press("away-close");
                hand.press("handover-back").type("pin", "2468").press("pin-open");
                hand.press("place-ledger").press("entry-V-2026-0601").press("away");
                hand.press("away-read").look("away-nothing");
                var answers = new LinkedHashMap<>(PaperHand.taking("both", "one"));
                answers.put("date", "2026-06-03");
                var bytes = Files.readAllBytes(paper);
                var altered = PaperHand.whole(bytes, PaperHand.fill(answers), document -> document.removePage(0));
                hand.type(
                        "away-file",
                        Files.write(folder.resolve("altered.pdf"), altered).toString());
                hand.press("away-read");
                waitFor(() -> shown(hand).contains("number of pages"));
                hand.look("away-altered");
                var returned = PaperHand.whole(bytes, PaperHand.fill(answers));
                hand.type(
                        "away-file",
                        Files.write(folder.resolve("back.pdf"), returned).toString());
                hand.press("away-read");
                await(hand, "away-answer");
                assertThat(hand.words("away-answer")).contains("Marguerite Oduya", "Sealed");
                hand.look("away-sealed").press("away-close");
                assertThat(work.file("V-2026-0601").signed()).isPresent();
                hand.look("away-ledger").press("verify");
                assertThat(hand.words("ledger-said")).contains("seal holds");
                assertThat(hand.has("away"))
                        .as("a signed quote goes out no more")
                        .isFalse();
            }
        }
    }

    /** What stands below the field. */
    private static String shown(Hand hand) {
        var field = hand.find("away-file");
        return Toolkit.on(field::getAccessibleHelp);
    }

    private static void await(Hand hand, String id) {
        waitFor(() -> !hand.words(id).isEmpty());
    }

    private interface Question {
        boolean holds();
    }

    /** Work runs beside the window: drawn again and again until it is done. */
    private static void waitFor(Question question) {
        for (int i = 0; i < 2000 && !question.holds(); i++) {
            Toolkit.settle();
        }
        assertThat(question.holds()).isTrue();
    }
}

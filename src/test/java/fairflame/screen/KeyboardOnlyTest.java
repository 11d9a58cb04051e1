package fairflame.screen;

import static org.assertj.core.api.Assertions.assertThat;

import fairflame.screen.look.Theme;
import java.nio.file.Path;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Demo visit 1 from the ledger to the signature without mouse, pen or finger. */
class KeyboardOnlyTest {
    private static final String VISIT = Shop.demo(1).get("id");

    @TempDir
    Path folder;

    @Test
    void aVisitIsOpenedReadHandedOverAndSigned() {
        try (var workplace = Shop.in(folder)) {
            var work = new WorkplaceScreens(workplace, true);
            work.keep(Shop.demo(1));
            try (var hand = new Hand(work, 1280, 800, Theme.BRIGHT, "en")) {
                hand.key(KeyCode.F1).tab("entry-" + VISIT).key(KeyCode.ENTER);
                hand.tab("open-bench").key(KeyCode.ENTER);
                hand.tab("step-check-valve-low").key(KeyCode.SPACE);
                hand.tab("hand-over").key(KeyCode.ENTER);
                hand.tab("take-both").key(KeyCode.SPACE);
                for (var promise : new VisitByHand(hand, Shop.demo(1)).ids("promise-")) {
                    hand.tab(promise).key(KeyCode.SPACE);
                }
                hand.tab("signer").write("Marguerite Oduya");
                hand.tab("sign-by-name").key(KeyCode.SPACE).look("signed-by-keyboard");
                hand.tab("sign").key(KeyCode.ENTER);
                var signed = work.file(VISIT).signed().orElseThrow();
                assertThat(signed.signature().name()).isEqualTo("Marguerite Oduya");
                assertThat(signed.signature().strokes()).isEmpty();
            }
        }
    }
}

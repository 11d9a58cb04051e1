package fairflame.screen;

import static org.assertj.core.api.Assertions.assertThat;

import fairflame.screen.look.Theme;
import fairflame.visit.Workplace;
import java.nio.file.Path;
import java.time.Duration;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** Papers that take their time: the window stays alive, shows how it goes after a second, and the work can be ended. */
@ExtendWith(ScreenMachine.class)
class SlowPaperTest {
    private static final String VISIT = "V-2026-0601";
    private static final Duration PATIENCE = Duration.ofSeconds(30);

    @TempDir
    Path folder;

    private static ScreenWork shop(Workplace workplace) {
        var work = new WorkplaceScreens(workplace, true);
        work.keep(Shop.demo(1));
        return work;
    }

    private static void onBench(Hand hand) {
        Toolkit.run(() -> hand.model().open(VISIT));
        Toolkit.settle();
    }

    /** How long it took until something was there to be pressed. */
    private static Duration until(Hand hand, String id) {
        var begun = System.nanoTime();
        while (!hand.has(id)) {
            assertThat(System.nanoTime() - begun).as(id + " never came").isLessThan(PATIENCE.toNanos());
            Toolkit.drawn();
        }
        return Duration.ofNanos(System.nanoTime() - begun);
    }

    @Test
    void aSlowQuoteShowsItsProgressLeavesTheWindowAliveAndCanBeEnded() {
        try (var workplace = Shop.in(folder)) {
            var slow = new SlowWork(shop(workplace), "offer", false);
            try (var hand = new Hand(slow.shop(), 1280, 800, Theme.BRIGHT, "en")) {
                onBench(hand);
                var pressed = System.nanoTime();
                hand.begin("hand-over");
                assertThat(hand.has("busy-cancel")).as("not at once").isFalse();
                hand.begin("hand-over");
                until(hand, "busy-cancel");
                assertThat(Duration.ofNanos(System.nanoTime() - pressed)).isGreaterThan(Duration.ofMillis(950));
                hand.glance("busy-quote");
                answers();
                hand.strike(KeyCode.F1).strike(KeyCode.ESCAPE);
                assertThat(hand.has("busy-cancel")).as("no key leads away").isTrue();
                assertThat(slow.asked()).as("a second press is not heeded").isEqualTo(1);
                hand.press("busy-cancel");
                assertThat(hand.has("busy-cancel")).isFalse();
                assertThat(hand.words("say-text")).isEqualTo("Ended. Nothing of it was kept.");
                assertThat(hand.model().work().file(VISIT).quote()).isEmpty();
                assertThat(folder).isDirectoryNotContaining("glob:**Q-2026*");
                slow.letGo();
                hand.press("say-close").press("hand-over");
                assertThat(hand.has("handover-back")).isTrue();
                assertThat(folder).isDirectoryContaining("glob:**Q-2026-0001.pdf");
            }
        }
    }

    /** The window's thread draws and answers, many times a second. */
    private static void answers() {
        var begun = System.nanoTime();
        for (int i = 0; i < 20; i++) {
            Toolkit.drawn();
        }
        assertThat(Duration.ofNanos(System.nanoTime() - begun))
                .as("sixty frames beside the work")
                .isLessThan(Duration.ofSeconds(10));
    }

    @Test
    void aSignatureThatIsSealedAlreadyIsNotSaidToBeEnded() {
        try (var workplace = Shop.in(folder)) {
            var slow = new SlowWork(shop(workplace), "sign", true);
            try (var hand = new Hand(slow.shop(), 1280, 800, Theme.DIM, "es")) {
                onBench(hand);
                hand.press("hand-over").press("take-both");
                new VisitByHand(hand, Shop.demo(1)).ids("promise-").forEach(hand::press);
                hand.type("signer", "Marguerite Oduya").draw("signature-pad").begin("sign");
                slow.awaitThere();
                until(hand, "busy-cancel");
                hand.begin("busy-cancel").glance("busy-too-late");
                assertThat(hand.has("busy-cancel")).as("it is waited for").isTrue();
                slow.letGo();
                Toolkit.settle();
                assertThat(hand.has("copy-folder"))
                        .as("the page tells that it is signed")
                        .isTrue();
                assertThat(hand.model().work().file(VISIT).signed()).isPresent();
            }
        }
    }
}

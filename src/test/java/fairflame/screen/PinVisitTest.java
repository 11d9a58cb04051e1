package fairflame.screen;

import static org.assertj.core.api.Assertions.assertThat;

import fairflame.screen.look.Theme;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** The digits of the person at work, with nothing but the window. */
@ExtendWith(ScreenMachine.class)
class PinVisitTest {
    @TempDir
    Path folder;

    @Test
    void digitsAreChangedInTheRailAndLeadBackFromTheCustomersPage() {
        try (var workplace = Shop.in(folder)) {
            var work = new WorkplaceScreens(workplace, true);
            work.keep(Shop.demo(1));
            try (var hand = new Hand(work, 1024, 768, Theme.DIM, "es")) {
                Toolkit.run(() -> hand.model().open("V-2026-0601"));
                hand.press("tool-pin").look("pin-change");
                hand.type("pin-old", "1111").type("pin-fresh", "9753").type("pin-again", "9753");
                hand.press("pin-set").look("pin-wrong");
                assertThat(hand.words("pin-refusal")).contains("old digits");
                hand.type("pin-old", "2468").type("pin-again", "9754").press("pin-set");
                assertThat(hand.words("pin-refusal")).contains("not the same twice");
                hand.type("pin-old", "2468").type("pin-again", "9753").press("pin-set");
                assertThat(hand.has("pin-set")).as("the sheet is gone").isFalse();
                hand.press("hand-over").press("handover-back");
                hand.type("pin", "2468").press("pin-open");
                assertThat(hand.has("pin-open"))
                        .as("the demo's digits open no more")
                        .isTrue();
                hand.look("pin-asked").type("pin", "9753").press("pin-open");
                assertThat(hand.has("hand-over")).isTrue();
            }
        }
    }

    @Test
    void inAShopOfOnesOwnNobodyGivesTheScreenAwayWithoutDigits() {
        try (var workplace = Shop.in(folder)) {
            var work = new WorkplaceScreens(workplace, false);
            work.keep(Shop.demo(1));
            try (var hand = new Hand(work, 1280, 800, Theme.BRIGHT, "en")) {
                Toolkit.run(() -> hand.model().open("V-2026-0601"));
                hand.press("hand-over");
                assertThat(hand.has("handover-back")).isFalse();
                assertThat(hand.has("pin-old")).isFalse();
                hand.look("pin-first").type("pin-fresh", "9753").type("pin-again", "9753");
                hand.press("pin-set");
                assertThat(hand.has("handover-back")).isTrue();
            }
        }
    }
}

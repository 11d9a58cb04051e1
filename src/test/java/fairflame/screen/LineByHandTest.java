package fairflame.screen;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fairflame.screen.line.LinePlaces;
import fairflame.screen.look.Theme;
import fairflame.visit.Workplace;
import java.nio.file.Path;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** The drawing of the gas line under a hand: pieces dragged with the mouse, moved and taken away by keyboard. */
@ExtendWith(ScreenMachine.class)
class LineByHandTest {
    @TempDir
    Path folder;

    private Workplace workplace;
    private Hand hand;

    @BeforeEach
    void open() {
        workplace = Shop.in(folder);
        var work = new WorkplaceScreens(workplace, true);
        work.keep(Shop.demo(2));
        hand = new Hand(work, 1280, 800, Theme.BRIGHT, "en");
        Toolkit.run(() -> hand.model().open("V-2026-0602"));
        Toolkit.settle();
        hand.key(KeyCode.F3);
    }

    @AfterEach
    void close() {
        hand.close();
        workplace.close();
    }

    private LinePlaces.Spot at(String node) {
        var bench = hand.model().bench().get().orElseThrow();
        var layout = new fairflame.gas.LayoutReader(hand.model().work().line().tables())
                .read(bench.draft().get("layout"));
        return LinePlaces.of(layout, bench.draft()).node(node);
    }

    private double em() {
        return Toolkit.on(() ->
                ((javafx.scene.layout.Region) hand.scene().lookup("#appliance-pool-heater")).getPrefWidth() / 10.5);
    }

    @Test
    void anApplianceFollowsTheMouseAndStaysWhereItIsLetGo() {
        var before = at("pad");
        var drawn =
                Toolkit.on(() -> hand.scene().lookup("#appliance-pool-heater").getLayoutX());
        hand.drag("appliance-pool-heater", 64, 48);
        assertThat(at("pad").x() - before.x()).isCloseTo(64 / em(), within(0.11));
        assertThat(at("pad").y() - before.y()).isCloseTo(48 / em(), within(0.11));
        var now = Toolkit.on(() -> hand.scene().lookup("#appliance-pool-heater").getLayoutX());
        assertThat(now - drawn).as("drawn where it was let go").isCloseTo(64, within(1.5));
        assertThat(hand.has("line-tidy")).isTrue();
        hand.look("line-dragged");
        hand.keys(KeyCode.CONTROL, KeyCode.Z);
        assertThat(at("pad")).as("one step is taken back as a whole").isEqualTo(before);
        assertThat(hand.has("line-tidy")).isFalse();
    }

    @Test
    void aPipeIsDraggedWithAllThatHangsOnIt() {
        var tee = at("tee");
        var pad = at("pad");
        hand.drag("run-trunk", 48, 32);
        assertThat(at("tee").x() - tee.x()).isCloseTo(48 / em(), within(0.11));
        assertThat(at("pad").x() - pad.x()).isEqualTo(at("tee").x() - tee.x());
        assertThat(at("pad").y() - pad.y()).isEqualTo(at("tee").y() - tee.y());
        hand.press("line-tidy");
        assertThat(at("pad")).isEqualTo(pad);
    }

    @Test
    void aHandThatTremblesPressesAndMovesNothing() {
        var before = at("pad");
        hand.drag("run-pad-line", 3, 2);
        assertThat(at("pad")).isEqualTo(before);
        hand.press("run-pad-line");
        assertThat(hand.has("piece-length")).as("the piece is chosen").isTrue();
    }

    @Test
    void theSameGoesByKeyboardStepByStep() {
        var before = at("pad");
        hand.tab("appliance-pool-heater")
                .keys(KeyCode.CONTROL, KeyCode.RIGHT)
                .keys(KeyCode.CONTROL, KeyCode.RIGHT)
                .keys(KeyCode.CONTROL, KeyCode.DOWN);
        assertThat(at("pad").x() - before.x())
                .as("the piece keeps the keyboard from step to step")
                .isEqualTo(2);
        assertThat(at("pad").y() - before.y()).isEqualTo(1);
        hand.keys(KeyCode.CONTROL, KeyCode.LEFT).keys(KeyCode.CONTROL, KeyCode.UP);
        assertThat(at("pad").x() - before.x()).isEqualTo(1);
        assertThat(at("pad").y()).isEqualTo(before.y());
        hand.key(KeyCode.ENTER);
        assertThat(hand.has("piece-input")).as("Enter chooses the piece").isTrue();
        hand.tab("run-house-line").key(KeyCode.DELETE);
        assertThat(hand.has("run-house-line")).isFalse();
        assertThat(hand.has("appliance-water-heater"))
                .as("what hung on it is gone too")
                .isFalse();
        hand.keys(KeyCode.CONTROL, KeyCode.Z);
        assertThat(hand.has("appliance-water-heater")).isTrue();
    }
}

package fairflame.screen.kit;

import static org.assertj.core.api.Assertions.assertThat;

import fairflame.screen.Samples;
import fairflame.screen.SceneCheck;
import fairflame.screen.ScreenMachine;
import fairflame.screen.Shots;
import fairflame.screen.Toolkit;
import fairflame.screen.look.Look;
import fairflame.screen.look.Theme;
import fairflame.screen.look.Words;
import java.util.List;
import javafx.beans.property.SimpleStringProperty;
import javafx.geometry.Insets;
import javafx.scene.Scene;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@ExtendWith(ScreenMachine.class)
class KitPicturesTest {
    @ParameterizedTest
    @CsvSource({"BRIGHT, 100", "DIM, 100", "BRIGHT, 200"})
    void everyControlIsWholeAndReadable(Theme theme, int percent) {
        var faults = Toolkit.on(() -> {
            var look = new Look();
            look.theme().set(theme);
            look.textPercent(percent);
            var scene = new Scene(board(Words.in("en"), percent / 100.0), 1280 * percent / 100.0, 900);
            look.dress(scene);
            var found = SceneCheck.faults(scene);
            Shots.take(scene, "kit-" + theme.name().toLowerCase(java.util.Locale.ROOT) + "-" + percent);
            return found;
        });
        assertThat(faults).isEmpty();
    }

    private static HBox board(Words words, double scale) {
        var pad = new NumberPad(
                new SimpleStringProperty("8.9"),
                new SimpleStringProperty("inwc"),
                List.of("inwc", "kpa", "mbar"),
                List.of("in w.c.", "kPa", "mbar"),
                words);
        var gauges = new VBox(16, new GaugeCard(Samples.gas(), words), new GaugeCard(Samples.volts(), words));
        var left = new VBox(16, gauges, pad);
        left.setPrefWidth(380 * scale);
        var reasons = new ReasonLines(List.of(
                new ReasonLines.Cause(
                        "Both water-side switches leak to ground",
                        "settled",
                        "settled",
                        List.of(
                                new ReasonLines.Reason(
                                        "Valve voltage fell to 15.7 V before the flame went out",
                                        ReasonLines.Bearing.SUPPORTS),
                                new ReasonLines.Reason(
                                        "High limit to body 22 kilohm, leads lifted", ReasonLines.Bearing.SUPPORTS)),
                        () -> {}),
                new ReasonLines.Cause(
                        "Gas volume too small",
                        "ruled out",
                        "ruled-out",
                        List.of(new ReasonLines.Reason(
                                "Pressure fell only 1.2 in w.c. while firing", ReasonLines.Bearing.AGAINST)),
                        () -> {}),
                new ReasonLines.Cause(
                        "Weak transformer",
                        "open",
                        "open",
                        List.of(new ReasonLines.Reason("Loaded voltage not read", ReasonLines.Bearing.UNTESTED)),
                        () -> {})));
        var slip = new Slip(
                "phone",
                "Phone",
                new SimpleStringProperty("55-01"),
                new SimpleStringProperty("seven digits, such as 555-0142"));
        var middle =
                new VBox(16, Texts.words("What the readings say", "heading"), reasons, slip, new SignaturePad("Sign"));
        middle.setPrefWidth(430 * scale);
        var paper =
                new PaperSheet(Samples.quote(), "both", words, new PaperSheet.Asked(id -> {}, (title, grounds) -> {}));
        paper.setPrefWidth(430 * scale);
        var board = new HBox(16, Texts.scrolling(left), Texts.scrolling(middle), Texts.scrolling(paper));
        board.setPadding(new Insets(16));
        board.getStyleClass().add("desk");
        return board;
    }
}

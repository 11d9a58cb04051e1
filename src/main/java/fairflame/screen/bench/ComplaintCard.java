package fairflame.screen.bench;

import fairflame.screen.kit.Columns;
import fairflame.screen.kit.Pictures;
import fairflame.screen.kit.Press;
import fairflame.screen.kit.Texts;
import fairflame.screen.kit.Ties;
import fairflame.screen.look.Words;
import javafx.geometry.Insets;
import javafx.geometry.Pos;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** What the customer says, by picture and by words. */
final class ComplaintCard extends VBox {
    private static final double LEAST = 160;
    private static final double PICTURE = 44;

    ComplaintCard(BenchModel model, Words words, Ties ties) {
        super(12);
        getChildren().add(Texts.words(words.say("complaint.ask"), "large", "strong"));
        var place = new VBox();
        getChildren().add(place);
        ties.on(model.history().now(), draft -> place.getChildren().setAll(tiles(model, words)));
    }

    private static Columns tiles(BenchModel model, Words words) {
        var tiles = model.work().knowledge().complaints().stream()
                .map(complaint -> {
                    var plain = words.sayOr("complaint." + complaint.id(), complaint.plain());
                    var text = Texts.words(plain, "semi");
                    text.setMaxWidth(Double.MAX_VALUE);
                    HBox.setHgrow(text, Priority.ALWAYS);
                    text.setMinWidth(0);
                    var press = new Press(
                            plain,
                            () -> model.history().change(draft -> draft.with("complaint", complaint.id())),
                            Pictures.of(complaint.id(), PICTURE),
                            text);
                    press.setId("complaint-" + complaint.id());
                    press.setPadding(new Insets(8));
                    press.setAlignment(Pos.CENTER_LEFT);
                    press.styled("row");
                    if (complaint.id().equals(model.draft().get("complaint"))) {
                        press.styled("chosen");
                    }
                    return press;
                })
                .toList();
        return new Columns(LEAST, Texts.GAP, tiles);
    }
}

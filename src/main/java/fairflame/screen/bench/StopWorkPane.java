package fairflame.screen.bench;

import fairflame.diagnosis.Finding;
import fairflame.screen.kit.Slip;
import fairflame.screen.kit.Texts;
import fairflame.screen.look.Words;
import java.util.ArrayList;
import java.util.List;
import javafx.beans.property.SimpleStringProperty;
import javafx.geometry.Insets;
import javafx.geometry.Pos;
import javafx.scene.layout.Priority;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;

/** Danger fills the bench: what was found, what to do now; the only ways on are to print it or to record a release. */
final class StopWorkPane extends StackPane {
    private static final double SHEET = 880;
    private static final List<String> RELEASE = List.of("name", "licence", "cause");

    private final BenchModel model;
    private final Words words;

    StopWorkPane(BenchModel model, Words words, Finding.StopWork found, Runnable print) {
        this.model = model;
        this.words = words;
        getStyleClass().add("stop");
        setPadding(new Insets(20));
        var sheet = new VBox(14);
        sheet.getStyleClass().add("stop-sheet");
        sheet.setPadding(new Insets(24));
        sheet.getChildren().addAll(head(), Texts.words(words.say("stop.intro"), "large"));
        found.dangers().forEach(danger -> sheet.getChildren().add(danger(danger)));
        sheet.getChildren().add(Texts.words(words.say("stop.no-price"), "strong"));
        sheet.getChildren().add(Texts.words(words.say("stop.held"), "slate"));
        var printed = Texts.button(words.say("stop.print"), print, "danger");
        printed.setId("stop-print");
        var release = releaseForm(found);
        var open = Texts.button(words.say("stop.release"), () -> {
            if (!sheet.getChildren().contains(release)) {
                sheet.getChildren().add(release);
            }
        });
        open.setId("stop-release");
        var keys = new javafx.scene.layout.FlowPane(Texts.GAP, Texts.GAP, printed, open);
        sheet.getChildren().add(keys);
        var scroll = Texts.scrolling(sheet);
        scroll.setMaxWidth(SHEET);
        sheet.minHeightProperty().bind(heightProperty().subtract(44));
        getChildren().add(scroll);
    }

    private javafx.scene.layout.HBox head() {
        var box = Texts.across(16, Texts.words(words.say("stop.title"), "huge", "oxide"));
        box.setAlignment(Pos.CENTER_LEFT);
        return box;
    }

    private VBox danger(Finding.Danger danger) {
        var box = Texts.column(
                6,
                Texts.words(words.sayOr("danger." + danger.gate(), danger.title()), "large", "strong"),
                Texts.words(danger.found()));
        var number = 1;
        for (var advice : danger.advice()) {
            var line = Texts.words(
                    number + ".  " + words.sayOr("advice." + danger.gate() + "." + number, advice), "large");
            box.getChildren().add(line);
            number++;
        }
        return box;
    }

    private VBox releaseForm(Finding.StopWork found) {
        var box = new VBox(Texts.GAP);
        box.getChildren().add(Texts.words(words.say("stop.release-note")));
        for (var danger : found.dangers()) {
            var values = new ArrayList<SimpleStringProperty>();
            box.getChildren().add(Texts.words(words.sayOr("danger." + danger.gate(), danger.title()), "semi"));
            for (var name : RELEASE) {
                var value = new SimpleStringProperty("");
                values.add(value);
                box.getChildren()
                        .add(new Slip(
                                "release-" + danger.gate() + "-" + name,
                                words.say("release." + name),
                                value,
                                new SimpleStringProperty("")));
            }
            var record = Texts.button(words.say("stop.record"), () -> record(danger.gate(), values), "act");
            record.setId("release-record-" + danger.gate());
            record.disableProperty()
                    .bind(values.get(0)
                            .isEmpty()
                            .or(values.get(1).isEmpty())
                            .or(values.get(2).isEmpty()));
            box.getChildren().add(record);
        }
        VBox.setVgrow(box, Priority.NEVER);
        return box;
    }

    private void record(String gate, List<SimpleStringProperty> values) {
        model.history().change(draft -> {
            var entry = "release." + draft.nextNumber("release") + ".";
            var next = draft.with(entry + "gate", gate);
            for (int i = 0; i < RELEASE.size(); i++) {
                next = next.with(entry + RELEASE.get(i), values.get(i).get().strip());
            }
            return next;
        });
    }
}

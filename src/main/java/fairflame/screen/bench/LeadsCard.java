package fairflame.screen.bench;

import fairflame.screen.kit.Chips;
import fairflame.screen.kit.Texts;
import fairflame.screen.kit.Ties;
import fairflame.screen.look.Words;
import java.util.List;
import javafx.geometry.Insets;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** The tally of bypass leads: each one signed out is signed in again before the visit can close. */
final class LeadsCard extends VBox {
    private final BenchModel model;
    private final Words words;
    private final VBox rows = new VBox(Texts.GAP);

    LeadsCard(BenchModel model, Words words, Ties ties) {
        super(12);
        this.model = model;
        this.words = words;
        var devices = new Chips();
        for (var device : devices(model)) {
            var key = Texts.button(words.sayOr("device." + device, device.replace('-', ' ')), () -> place(device));
            key.setId("lead-on-" + device);
            key.setMinHeight(USE_PREF_SIZE);
            devices.getChildren().add(key);
        }
        getChildren()
                .addAll(
                        Texts.words(words.say("step.leads"), "large", "strong"),
                        Texts.words(words.say("leads.caution")),
                        rows,
                        Texts.words(words.say("leads.place"), "small", "slate"),
                        devices);
        ties.on(model.history().now(), draft -> fill());
    }

    /** Devices that some cause names: those that the knowledge can speak of. */
    private static List<String> devices(BenchModel model) {
        return model.work().knowledge().causes().stream()
                .flatMap(cause -> cause.devices().stream())
                .filter(device -> device.endsWith("switch"))
                .distinct()
                .toList();
    }

    private void place(String device) {
        model.history().change(draft -> {
            var lead = "lead." + draft.nextNumber("lead");
            return draft.with(lead + ".device", device).with(lead + ".placedBy", draft.get("technician"));
        });
    }

    private void fill() {
        var draft = model.draft();
        rows.getChildren()
                .setAll(draft.numbers("lead").stream()
                        .map(number -> row(draft, number))
                        .toList());
    }

    private HBox row(Draft draft, int number) {
        var lead = "lead." + number;
        var device = draft.get(lead + ".device");
        var text = Texts.column(
                0,
                Texts.words(words.sayOr("device." + device, device.replace('-', ' ')), "semi"),
                Texts.words(words.say("leads.by", draft.get(lead + ".placedBy")), "small", "slate"));
        text.setMinWidth(0);
        HBox.setHgrow(text, Priority.ALWAYS);
        var row = Texts.across(Texts.GAP, text);
        row.setPadding(new Insets(8, 12, 8, 12));
        if (draft.get(lead + ".removed").equals("yes")) {
            row.getStyleClass().add("card");
            row.getChildren().add(Texts.line(words.say("leads.removed"), "moss", "strong"));
        } else {
            row.getStyleClass().add("band-outside");
            var remove = Texts.button(
                    words.say("leads.remove"),
                    () -> model.history().change(before -> before.with(lead + ".removed", "yes")),
                    "danger");
            remove.setId("lead-off-" + number);
            remove.setMinWidth(USE_PREF_SIZE);
            row.getChildren().add(remove);
        }
        return row;
    }
}

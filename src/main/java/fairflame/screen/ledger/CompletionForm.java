package fairflame.screen.ledger;

import fairflame.catalog.PermitNeed;
import fairflame.screen.kit.Columns;
import fairflame.screen.kit.Slip;
import fairflame.screen.kit.Texts;
import fairflame.screen.look.Words;
import java.util.ArrayList;
import java.util.List;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.geometry.Insets;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** What has to be on record before the work is billed as complete. */
final class CompletionForm extends VBox {
    private static final double LEAST = 150;
    private static final List<String> PRESSURE = List.of("psi", "minutes", "gauge", "medium", "witness");

    private final CompletionModel record;
    private final Words words;

    CompletionForm(LedgerModel model, CompletionModel record, Words words) {
        super(10);
        this.record = record;
        this.words = words;
        getStyleClass().add("card");
        setPadding(new Insets(14));
        getChildren().add(Texts.words(words.say("complete.title"), "large", "strong"));
        duties();
        record.choice().tests().forEach(test -> getChildren().add(test(test)));
        var make = Texts.button(words.say("complete.invoice"), () -> model.invoice(record), "act");
        make.setId("make-invoice");
        make.setMaxWidth(Double.MAX_VALUE);
        getChildren().addAll(Refused.by(model), make);
    }

    private void duties() {
        var slips = new ArrayList<Slip>();
        if (record.choice().duties().permit() != PermitNeed.NO) {
            slips.add(slip("permit"));
        }
        if (record.gas()) {
            slips.add(slip("fitter"));
            slips.add(slip("licence"));
        }
        if (record.pressureTest()) {
            PRESSURE.forEach(field -> slips.add(slip(field)));
        }
        if (!slips.isEmpty()) {
            getChildren().add(new Columns(LEAST, 12, slips));
        }
        if (record.pressureTest()) {
            getChildren().add(toggle("complete-held", words.say("complete.held"), record.held()));
        }
    }

    private Slip slip(String field) {
        return new Slip(
                "complete-" + field, words.say("complete." + field), record.typed(field), new SimpleStringProperty(""));
    }

    private HBox test(String test) {
        var slip = new Slip(
                "test-" + test,
                words.sayOr("test." + test, words.say("complete.test", test)),
                record.result(test),
                new SimpleStringProperty(""));
        HBox.setHgrow(slip, Priority.ALWAYS);
        slip.setMinWidth(0);
        var passed = toggle("passed-" + test, words.say("complete.passed"), record.passed(test));
        passed.setMinWidth(USE_PREF_SIZE);
        var row = Texts.across(Texts.GAP, slip, passed);
        row.setAlignment(javafx.geometry.Pos.BOTTOM_LEFT);
        return row;
    }

    private static ToggleButton toggle(String id, String text, BooleanProperty on) {
        var key = new ToggleButton(text);
        key.setId(id);
        key.getStyleClass().add("no");
        key.selectedProperty().bindBidirectional(on);
        return key;
    }
}

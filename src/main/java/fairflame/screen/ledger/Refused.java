package fairflame.screen.ledger;

import fairflame.screen.kit.Texts;
import javafx.scene.control.Label;

/** Why the last act was refused, shown right above the key that was pressed. */
final class Refused {
    private Refused() {}

    static Label by(LedgerModel model) {
        var label = Texts.words("", "refusal");
        label.textProperty().bind(model.refusal());
        label.managedProperty().bind(model.refusal().isNotEmpty());
        return label;
    }
}

package fairflame.screen.office;

import fairflame.screen.kit.Choosing;
import fairflame.screen.kit.Dropped;
import fairflame.screen.kit.Slip;
import fairflame.screen.kit.Texts;
import fairflame.screen.look.Words;
import javafx.scene.control.Button;
import javafx.scene.layout.VBox;

/** A field for the place of a file or folder: typed, dropped on it, or chosen. */
final class FileSlip extends VBox {
    private final Typed typed;
    private final String title;
    private final Choosing.Kind kind;
    private final Button choose;

    FileSlip(String id, String title, Typed typed, Choosing.Kind kind, Words words) {
        this.title = title;
        this.typed = typed;
        this.kind = kind;
        choose = Texts.button(
                words.say(kind == Choosing.Kind.FOLDER ? "office.choose-folder" : "office.choose"), this::choose);
        choose.setId(id + "-choose");
        getChildren().add(new Slip(id, title, typed.value(), typed.refusal()));
        Dropped.on(this, file -> typed.value().set(file.getPath()));
    }

    /** The key that opens the system's own list of files; it stands with the other keys of the card. */
    Button key() {
        return choose;
    }

    private void choose() {
        Choosing.at(this, Choosing.Wanted.any(kind, title, typed.text()))
                .ifPresent(file -> typed.value().set(file.getPath()));
    }
}

package fairflame.screen.office;

import fairflame.screen.kit.Dropped;
import fairflame.screen.kit.Slip;
import fairflame.screen.kit.Texts;
import fairflame.screen.look.Words;
import java.io.File;
import java.util.Optional;
import javafx.scene.control.Button;
import javafx.scene.layout.VBox;
import javafx.stage.DirectoryChooser;
import javafx.stage.FileChooser;
import javafx.stage.Window;

/** A field for the place of a file or folder: typed, dropped on it, or chosen. */
final class FileSlip extends VBox {
    private final Typed typed;
    private final Kind kind;
    private final Button choose;

    /** What is chosen. */
    enum Kind {
        /** A file that is there. */
        OPEN,
        /** A file that is to be made. */
        SAVE,
        FOLDER
    }

    FileSlip(String id, String title, Typed typed, Kind kind, Words words) {
        this.typed = typed;
        this.kind = kind;
        choose = Texts.button(words.say(kind == Kind.FOLDER ? "office.choose-folder" : "office.choose"), this::choose);
        choose.setId(id + "-choose");
        getChildren().add(new Slip(id, title, typed.value(), typed.refusal()));
        Dropped.on(this, file -> typed.value().set(file.getPath()));
    }

    /** The key that opens the system's own list of files; it stands with the other keys of the card. */
    Button key() {
        return choose;
    }

    private void choose() {
        chosen(getScene().getWindow()).ifPresent(file -> typed.value().set(file.getPath()));
    }

    private Optional<File> chosen(Window window) {
        return Optional.ofNullable(
                switch (kind) {
                    case OPEN -> new FileChooser().showOpenDialog(window);
                    case SAVE -> saving().showSaveDialog(window);
                    case FOLDER -> new DirectoryChooser().showDialog(window);
                });
    }

    private FileChooser saving() {
        var chooser = new FileChooser();
        chooser.setInitialFileName(new File(typed.text()).getName());
        return chooser;
    }
}

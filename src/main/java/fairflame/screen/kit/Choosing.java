package fairflame.screen.kit;

import java.io.File;
import java.util.List;
import java.util.Optional;
import javafx.scene.Node;
import javafx.stage.DirectoryChooser;
import javafx.stage.FileChooser;
import javafx.stage.Window;

/** How a person points at a file: in the system's own list, unless a window brings another way along. */
@FunctionalInterface
public interface Choosing {
    /** The system's own list of files. */
    Choosing SYSTEM = Choosing::ofSystem;

    /** What is chosen; empty when the person changed their mind. */
    Optional<File> choose(Wanted wanted, Window window);

    /** What can be chosen. */
    enum Kind {
        /** A file that is there. */
        OPEN,
        /** A file that is to be made. */
        SAVE,
        FOLDER
    }

    /**
     * What is to be chosen.
     *
     * @param title of the list
     * @param start folder to begin in, or name of the file to be made; empty for none
     * @param kinds name of the files that are shown, empty for all
     * @param endings patterns of their names, such as {@code *.pdf}
     */
    record Wanted(Kind kind, String title, String start, String kinds, List<String> endings) {
        public Wanted {
            endings = List.copyOf(endings);
        }

        /** A file or folder of any kind. */
        public static Wanted any(Kind kind, String title, String start) {
            return new Wanted(kind, title, start, "", List.of());
        }

        /** A file that is there, of some kinds. */
        public static Wanted file(String title, String kinds, String... endings) {
            return new Wanted(Kind.OPEN, title, "", kinds, List.of(endings));
        }
    }

    /** Lets the person at the window of a node choose. */
    static Optional<File> at(Node node, Wanted wanted) {
        var window = node.getScene().getWindow();
        var own = window.getProperties().get(Choosing.class);
        return (own instanceof Choosing brought ? brought : SYSTEM).choose(wanted, window);
    }

    private static Optional<File> ofSystem(Wanted wanted, Window window) {
        return Optional.ofNullable(
                switch (wanted.kind()) {
                    case OPEN -> files(wanted).showOpenDialog(window);
                    case SAVE -> files(wanted).showSaveDialog(window);
                    case FOLDER -> folders(wanted).showDialog(window);
                });
    }

    private static FileChooser files(Wanted wanted) {
        var chooser = new FileChooser();
        chooser.setTitle(wanted.title());
        if (wanted.kind() == Kind.SAVE) {
            chooser.setInitialFileName(new File(wanted.start()).getName());
        }
        if (!wanted.endings().isEmpty()) {
            chooser.getExtensionFilters().add(new FileChooser.ExtensionFilter(wanted.kinds(), wanted.endings()));
        }
        return chooser;
    }

    private static DirectoryChooser folders(Wanted wanted) {
        var chooser = new DirectoryChooser();
        chooser.setTitle(wanted.title());
        var here = new File(wanted.start());
        if (here.isDirectory()) {
            chooser.setInitialDirectory(here);
        }
        return chooser;
    }
}

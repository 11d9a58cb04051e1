package fairflame.screen.kit;

import java.io.File;
import java.util.function.Consumer;
import javafx.scene.Node;
import javafx.scene.input.TransferMode;

/** Files that are dropped on a part of the window. */
public final class Dropped {
    private Dropped() {}

    /** From now on the first of the files dropped on a node is handed over. */
    public static void on(Node node, Consumer<File> taken) {
        node.setOnDragOver(event -> {
            if (event.getDragboard().hasFiles()) {
                event.acceptTransferModes(TransferMode.COPY);
            }
            event.consume();
        });
        node.setOnDragDropped(event -> {
            event.getDragboard().getFiles().stream().findFirst().ifPresent(taken);
            event.setDropCompleted(true);
            event.consume();
        });
    }
}

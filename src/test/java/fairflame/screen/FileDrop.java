package fairflame.screen;

import com.sun.javafx.tk.TKClipboard;
import java.io.File;
import java.lang.reflect.Proxy;
import java.util.List;
import java.util.Set;
import javafx.event.Event;
import javafx.event.EventType;
import javafx.scene.Node;
import javafx.scene.input.DataFormat;
import javafx.scene.input.DragEvent;
import javafx.scene.input.Dragboard;
import javafx.scene.input.PickResult;
import javafx.scene.input.TransferMode;

/** Files that are dragged over a node and let go, as the toolkit tells of it; a screen without a display has no drag. */
final class FileDrop {
    private final Node node;
    private final Dragboard board;

    FileDrop(Node node, List<File> files) {
        this.node = node;
        this.board = board(files);
    }

    /** Lets the files go, if the node takes them; whether it did. */
    boolean drop() {
        var over = event(DragEvent.DRAG_OVER);
        Event.fireEvent(node, over);
        if (over.getAcceptedTransferMode() == null) {
            return false;
        }
        var dropped = event(DragEvent.DRAG_DROPPED);
        Event.fireEvent(node, dropped);
        return dropped.isDropCompleted();
    }

    private DragEvent event(EventType<DragEvent> type) {
        return new DragEvent(
                null, node, type, board, 5, 5, 5, 5, TransferMode.COPY, null, node, new PickResult(node, 5, 5));
    }

    /** The toolkit makes its boards itself; this one holds files only. */
    private static Dragboard board(List<File> files) {
        var held = files.isEmpty() ? Set.of() : Set.of(DataFormat.FILES);
        var clipboard = Proxy.newProxyInstance(
                FileDrop.class.getClassLoader(),
                new Class<?>[] {TKClipboard.class},
                (proxy, method, arguments) -> switch (method.getName()) {
                    case "getContentTypes" -> held;
                    case "hasContent" -> held.contains(arguments[0]);
                    case "getContent" -> held.contains(arguments[0]) ? files : null;
                    case "getTransferModes" -> Set.of(TransferMode.COPY);
                    case "setSecurityContext" -> null;
                    default -> throw new UnsupportedOperationException(method.getName());
                });
        try {
            var made = Dragboard.class.getDeclaredConstructor(TKClipboard.class);
            made.setAccessible(true);
            return made.newInstance(clipboard);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(e);
        }
    }
}

package fairflame.screen.bench;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;

/** The draft as it is now, and the way back. Every change is handed to the keeper before anything else happens. */
public final class DraftHistory {
    private static final int LONGEST = 500;

    private final ReadOnlyObjectWrapper<Draft> now;
    private final ReadOnlyBooleanWrapper undoable = new ReadOnlyBooleanWrapper(false);
    private final ReadOnlyBooleanWrapper redoable = new ReadOnlyBooleanWrapper(false);
    private final Deque<Draft> before = new ArrayDeque<>();
    private final Deque<Draft> after = new ArrayDeque<>();
    private final Consumer<Draft> keeper;
    private String lastField = "";

    /**
     * A history that starts at a draft.
     *
     * @param keeper saves a draft; called for every keystroke
     */
    public DraftHistory(Draft start, Consumer<Draft> keeper) {
        this.now = new ReadOnlyObjectWrapper<>(start);
        this.keeper = keeper;
    }

    public ReadOnlyObjectProperty<Draft> now() {
        return now.getReadOnlyProperty();
    }

    public Draft get() {
        return now.get();
    }

    public ReadOnlyBooleanProperty undoable() {
        return undoable.getReadOnlyProperty();
    }

    public ReadOnlyBooleanProperty redoable() {
        return redoable.getReadOnlyProperty();
    }

    /** Types into a field. Keystrokes in one field after another are undone together. */
    public void type(String field, String value) {
        type(field, field, value);
    }

    /** Types into a part of a field, such as one length of the gas line; each part is undone by itself. */
    public void type(String part, String field, String value) {
        if (get().get(field).equals(value)) {
            return;
        }
        if (!part.equals(lastField)) {
            remember();
        }
        lastField = part;
        forget();
        move(get().with(field, value));
    }

    /** What was undone before another change is gone. */
    private void forget() {
        after.clear();
        redoable.set(false);
    }

    /** Any other change, undone as one step. */
    public void change(UnaryOperator<Draft> change) {
        var next = change.apply(get());
        if (!next.equals(get())) {
            remember();
            lastField = "";
            forget();
            move(next);
        }
    }

    /** The next keystroke starts a new step. */
    public void pause() {
        lastField = "";
    }

    /** One step back; nothing happens at the start. */
    public void undo() {
        if (!before.isEmpty()) {
            lastField = "";
            after.push(get());
            var back = before.pop();
            undoable.set(!before.isEmpty());
            redoable.set(true);
            move(back);
        }
    }

    /** Takes the last step back again; nothing happens when nothing was undone. */
    public void redo() {
        if (!after.isEmpty()) {
            lastField = "";
            before.push(get());
            var forth = after.pop();
            redoable.set(!after.isEmpty());
            undoable.set(true);
            move(forth);
        }
    }

    private void remember() {
        before.push(get());
        if (before.size() > LONGEST) {
            before.removeLast();
        }
        undoable.set(true);
    }

    private void move(Draft next) {
        keeper.accept(next);
        now.set(next);
    }
}

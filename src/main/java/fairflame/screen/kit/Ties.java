package fairflame.screen.kit;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import javafx.beans.value.ChangeListener;
import javafx.beans.value.ObservableValue;

/** Listeners of a view that goes away again: cut all at once, so that a swapped view is not kept alive. */
public final class Ties {
    private final List<Runnable> cuts = new ArrayList<>();

    /** Tells the value now and whenever it changes. */
    public <T> void on(ObservableValue<T> value, Consumer<? super T> told) {
        told.accept(value.getValue());
        later(value, told);
    }

    /** Tells the value whenever it changes from now on. */
    public <T> void later(ObservableValue<T> value, Consumer<? super T> told) {
        ChangeListener<T> listener = (property, before, now) -> told.accept(now);
        value.addListener(listener);
        cuts.add(() -> value.removeListener(listener));
    }

    public void cut() {
        cuts.forEach(Runnable::run);
        cuts.clear();
    }
}

package fairflame.screen.pin;

import fairflame.Refusal;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;

/** Setting and changing one's digits, without a window. */
public final class PinModel {
    private final PinWork work;
    private final StringProperty old = new SimpleStringProperty("");
    private final StringProperty fresh = new SimpleStringProperty("");
    private final StringProperty again = new SimpleStringProperty("");
    private final StringProperty refusal = new SimpleStringProperty("");
    private final ReadOnlyBooleanWrapper done = new ReadOnlyBooleanWrapper(false);

    public PinModel(PinWork work) {
        this.work = work;
    }

    public PinWork work() {
        return work;
    }

    public StringProperty old() {
        return old;
    }

    public StringProperty fresh() {
        return fresh;
    }

    /** The new digits once more, against a slip of the finger. */
    public StringProperty again() {
        return again;
    }

    /** Why the last act was refused; empty when it was not. */
    public StringProperty refusal() {
        return refusal;
    }

    /** True once the digits are set. */
    public ReadOnlyBooleanProperty done() {
        return done.getReadOnlyProperty();
    }

    /** Whether the old digits have to be told first. */
    public boolean asksOld() {
        return work.state() != PinWork.State.NONE;
    }

    public void set() {
        try {
            if (!fresh.get().equals(again.get())) {
                throw Refusal.notAllowed("new digits", "not the same twice", "the same digits in both fields");
            }
            work.change(old.get(), fresh.get());
            refusal.set("");
            done.set(true);
        } catch (Refusal refused) {
            refusal.set(refused.getMessage());
        }
        old.set("");
    }
}

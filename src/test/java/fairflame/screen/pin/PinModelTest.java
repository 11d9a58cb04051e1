package fairflame.screen.pin;

import static org.assertj.core.api.Assertions.assertThat;

import fairflame.Refusal;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class PinModelTest {
    private final List<String> changes = new ArrayList<>();
    private PinWork.State state = PinWork.State.OWN;
    private final PinModel model = new PinModel(new Work());

    private final class Work implements PinWork {
        @Override
        public String person() {
            return "Ines Calloway";
        }

        @Override
        public State state() {
            return state;
        }

        @Override
        public Answer opens(String digits) {
            return new Answer(digits.equals("9753"), 0);
        }

        @Override
        public void change(String old, String fresh) {
            if (!old.equals("9753")) {
                throw Refusal.notAllowed("old digits", "wrong", "the right ones");
            }
            changes.add(fresh);
        }
    }

    @Test
    void theOldDigitsAreAskedForUnlessThereAreNone() {
        assertThat(model.asksOld()).isTrue();
        state = PinWork.State.DEMO;
        assertThat(model.asksOld()).isTrue();
        state = PinWork.State.NONE;
        assertThat(model.asksOld()).isFalse();
    }

    @Test
    void newDigitsHaveToBeTheSameTwice() {
        model.old().set("9753");
        model.fresh().set("1357");
        model.again().set("1358");
        model.set();
        assertThat(model.refusal().get()).contains("not the same twice");
        assertThat(changes).isEmpty();
        assertThat(model.done().get()).isFalse();
    }

    @Test
    void aRefusedChangeForgetsTheOldDigitsAndARightOneIsDone() {
        model.old().set("1111");
        model.fresh().set("1357");
        model.again().set("1357");
        model.set();
        assertThat(model.refusal().get()).contains("old digits");
        assertThat(model.old().get()).isEmpty();
        model.old().set("9753");
        model.set();
        assertThat(changes).containsExactly("1357");
        assertThat(model.done().get()).isTrue();
        assertThat(model.refusal().get()).isEmpty();
    }
}

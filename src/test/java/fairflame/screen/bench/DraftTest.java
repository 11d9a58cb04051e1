package fairflame.screen.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Random;
import org.junit.jupiter.api.Test;

class DraftTest {
    @Test
    void comesBackFromItsTextAsItWas() {
        var draft =
                Draft.empty().with("customer.name", "Ñ \"quoted\"\n2nd line").with("reading.3.value", "10.");
        assertThat(Draft.parse(draft.text())).isEqualTo(draft);
    }

    @Test
    void numbersEntriesWithoutReusingOnesInUse() {
        var draft = Draft.empty().with("reading.1.check", "a").with("reading.7.check", "b");
        assertThat(draft.numbers("reading")).containsExactly(1, 7);
        assertThat(draft.nextNumber("reading")).isEqualTo(8);
        assertThat(draft.without("reading.7").numbers("reading")).containsExactly(1);
    }

    @Test
    void keepsEveryKeystrokeBeforeAnythingElseHappens() {
        var kept = new ArrayList<String>();
        var history = new DraftHistory(Draft.empty(), draft -> kept.add(draft.get("customer.name")));
        history.now()
                .addListener((property, before, now) -> assertThat(kept).last().isEqualTo(now.get("customer.name")));
        for (int i = 1; i <= 6; i++) {
            history.type("customer.name", "Odalys".substring(0, i));
        }
        assertThat(kept).containsExactly("O", "Od", "Oda", "Odal", "Odaly", "Odalys");
    }

    @Test
    void undoesAFieldAtOnceAndOtherChangesOneByOne() {
        var history = new DraftHistory(Draft.empty(), draft -> {});
        history.type("customer.name", "O");
        history.type("customer.name", "Od");
        history.change(draft -> draft.with("gate.G1", "no"));
        history.change(draft -> draft.with("gate.G2", "no"));
        history.undo();
        assertThat(history.get().fields()).containsOnlyKeys("customer.name", "gate.G1");
        history.undo();
        history.undo();
        assertThat(history.get().fields()).isEmpty();
        assertThat(history.undoable().get()).isFalse();
    }

    @Test
    void undoingEverythingLeadsBackToTheStart() {
        var seed = 20260603L;
        var random = new Random(seed);
        for (int run = 0; run < 200; run++) {
            var history = new DraftHistory(Draft.empty(), draft -> {});
            for (int i = 0; i < random.nextInt(40); i++) {
                var field = "f" + random.nextInt(4);
                var value = String.valueOf(random.nextInt(3));
                if (random.nextBoolean()) {
                    history.type(field, value);
                } else {
                    history.change(draft -> draft.with(field, value));
                }
            }
            while (history.undoable().get()) {
                history.undo();
            }
            assertThat(history.get()).as("seed %s, run %s", seed, run).isEqualTo(Draft.empty());
        }
    }

    @Test
    void whatWasUndoneIsRedoneStepByStepUntilSomethingElseIsTyped() {
        var seed = 20260604L;
        var random = new Random(seed);
        for (int run = 0; run < 200; run++) {
            var history = new DraftHistory(Draft.empty(), draft -> {});
            for (int i = 0; i < 1 + random.nextInt(40); i++) {
                var field = "f" + random.nextInt(4);
                var value = String.valueOf(random.nextInt(3));
                history.type(field, value);
            }
            var end = history.get();
            var back = 1 + random.nextInt(10);
            for (int i = 0; i < back; i++) {
                history.undo();
            }
            while (history.redoable().get()) {
                history.redo();
            }
            assertThat(history.get()).as("seed %s, run %s", seed, run).isEqualTo(end);
            history.undo();
            history.type("f9", "new");
            assertThat(history.redoable().get())
                    .as("seed %s, run %s", seed, run)
                    .isFalse();
            while (history.undoable().get()) {
                history.undo();
            }
            assertThat(history.get()).as("seed %s, run %s", seed, run).isEqualTo(Draft.empty());
        }
    }
}

package fairflame.screen.away;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fairflame.Refusal;
import fairflame.agreement.SignedRevision;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class AwayModelTest {
    private final List<String> asked = new ArrayList<>();
    private final List<SignedRevision> told = new ArrayList<>();

    private final AwayModel model = new AwayModel(new Work(), "Q-2026-0001", "es", told::add);

    private final class Work implements AwayWork {
        @Override
        public Sent write(String quote, String language) {
            asked.add(quote + " " + language);
            return new Sent(Path.of("a.pdf"), Path.of("a.eml"));
        }

        @Override
        public Answer read(String quote, Path file) {
            asked.add(quote + " " + file);
            return new Answer(Optional.empty(), "Odalys Brennecke");
        }
    }

    @Test
    void writesInTheLanguageOfTheScreen() {
        model.wrote(model.write());
        assertThat(asked).containsExactly("Q-2026-0001 es");
        assertThat(model.sent().get()).isPresent();
    }

    @Test
    void readsTheTypedFileAndTellsNobodyWhenNothingWasSealed() {
        model.file().set("  back.pdf ");
        model.wasRead(model.read());
        assertThat(asked).containsExactly("Q-2026-0001 back.pdf");
        assertThat(model.answer().get()).isPresent();
        assertThat(told).isEmpty();
    }

    @Test
    void anEmptyFieldIsRefusedAndTheRefusalGoesWhenSomethingIsTyped() {
        assertThatThrownBy(model::read).isInstanceOf(Refusal.class);
        model.failed(Refusal.missing("returned paper", "a file"));
        assertThat(model.refusal().get()).contains("returned paper");
        model.file().set("b");
        assertThat(model.refusal().get()).isEmpty();
    }

    @Test
    void aFaultOfTheProgramIsNotTakenForARefusal() {
        var fault = new IllegalStateException("a bug");
        assertThatThrownBy(() -> model.failed(fault)).hasCause(fault);
    }
}

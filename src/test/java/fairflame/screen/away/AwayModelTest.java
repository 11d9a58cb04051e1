package fairflame.screen.away;

import static org.assertj.core.api.Assertions.assertThat;

import fairflame.agreement.SignedRevision;
import fairflame.screen.kit.AtOnce;
import fairflame.screen.kit.Later;
import fairflame.visit.Progress;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class AwayModelTest {
    private final List<String> asked = new ArrayList<>();
    private final List<SignedRevision> told = new ArrayList<>();

    private final AwayModel model = new AwayModel(new Work(), "Q-2026-0001", "es", new AtOnce(), told::add);

    private final class Work implements AwayWork {
        @Override
        public Sent write(String quote, String language, Progress progress) {
            progress.look();
            asked.add(quote + " " + language);
            return new Sent(Path.of("a.pdf"), Path.of("a.eml"));
        }

        @Override
        public Answer read(String quote, Path file, Progress progress) {
            asked.add(quote + " " + file);
            return new Answer(Optional.empty(), "Odalys Brennecke");
        }
    }

    @Test
    void writesInTheLanguageOfTheScreen() {
        model.write();
        assertThat(asked).containsExactly("Q-2026-0001 es");
        assertThat(model.sent().get()).isPresent();
    }

    @Test
    void readsTheTypedFileAndTellsNobodyWhenNothingWasSealed() {
        model.file().set("  back.pdf ");
        model.read();
        assertThat(asked).containsExactly("Q-2026-0001 back.pdf");
        assertThat(model.answer().get()).isPresent();
        assertThat(told).isEmpty();
    }

    @Test
    void anEmptyFieldIsRefusedAndTheRefusalGoesWhenSomethingIsTyped() {
        model.read();
        assertThat(model.refusal().get()).contains("returned paper");
        model.file().set("b");
        assertThat(model.refusal().get()).isEmpty();
    }

    @Test
    void aPaperThatIsBeingWrittenIsNotWrittenTwice() {
        var later = new Later();
        var slow = new AwayModel(new Work(), "Q-2026-0001", "es", later, told::add);
        slow.write();
        slow.write();
        later.go();
        assertThat(asked).hasSize(1);
    }

    @Test
    void aPersonWhoEndsTheWorkIsToldSo() {
        var ended = new AwayModel(new Work(), "Q-2026-0001", "es", AtOnce.endedAt(0), told::add);
        ended.write();
        assertThat(asked).isEmpty();
        assertThat(ended.sent().get()).isEmpty();
        assertThat(ended.refusal().get()).isEqualTo("ended by hand");
    }
}

package fairflame.screen.handover;

import static org.assertj.core.api.Assertions.assertThat;

import fairflame.Refusal;
import fairflame.agreement.Seal;
import fairflame.agreement.Signature;
import fairflame.agreement.SignedRevision;
import fairflame.screen.Samples;
import fairflame.screen.kit.AtOnce;
import fairflame.screen.kit.Later;
import fairflame.screen.look.Words;
import fairflame.visit.Progress;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class CopyModelTest {
    private static final Words WORDS = Words.in("en");

    private final List<String> asked = new ArrayList<>();
    private boolean stick = true;
    private final CopyModel model = new CopyModel(new Work(), signed(), new AtOnce(), WORDS);

    private static SignedRevision signed() {
        var at = OffsetDateTime.parse("2026-06-03T10:15:00-07:00");
        return new SignedRevision(
                Samples.quote(),
                "both",
                List.of(),
                new Signature("Odalys Brennecke", "owner", at, "yes", List.of(), ""),
                new Seal("", "", "", Map.of()));
    }

    private final class Work implements CopyWork {
        @Override
        public Path folder() {
            return Path.of("papers");
        }

        @Override
        public Path paper(SignedRevision signed, Path folder, Progress progress) {
            if (!stick) {
                throw Refusal.unusable("output folder", folder, "a folder that can be made");
            }
            asked.add(folder.toString());
            return folder.resolve("copy.pdf");
        }

        @Override
        public Path mail(SignedRevision signed, Progress progress) {
            return Path.of("copy.eml");
        }

        @Override
        public String print(SignedRevision signed, Progress progress) {
            throw Refusal.unusable("printer", "none", "a printer that is set up on this computer");
        }
    }

    @Test
    void thePaperGoesToTheFolderChosen() {
        assertThat(model.folder().get()).isEqualTo("papers");
        model.folder().set("stick");
        model.paper();
        assertThat(asked).containsExactly("stick");
        assertThat(model.said().get()).contains("copy.pdf");
    }

    @Test
    void aFolderThatIsGoneIsToldAndTheNextActTakesTheRefusalAway() {
        stick = false;
        model.paper();
        assertThat(model.refusal().get()).contains("output folder");
        assertThat(model.said().get()).isEmpty();
        model.mail();
        assertThat(model.refusal().get()).isEmpty();
        assertThat(model.said().get()).contains("copy.eml");
    }

    @Test
    void whileACopyIsWrittenNoOtherKeyIsHeeded() {
        var later = new Later();
        var slow = new CopyModel(new Work(), signed(), later, WORDS);
        slow.paper();
        slow.paper();
        slow.mail();
        assertThat(later.waiting()).isEqualTo(1);
        later.go();
        assertThat(asked).hasSize(1);
    }

    @Test
    void withoutAPrinterThePageSaysWhatToDo() {
        model.print();
        assertThat(model.refusal().get()).contains("printer", "set up on this computer");
    }
}

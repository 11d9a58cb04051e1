package fairflame.visit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fairflame.Refusal;
import fairflame.store.Records;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Map;
import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Something stored with its papers, beside another program on the same folder. */
class FilingTest {
    private static final Library LIBRARY = Library.load(Sources.samples());

    @TempDir
    Path folder;

    private Workplace here;
    private Workplace other;

    @BeforeEach
    void open() {
        here = Workplace.open(folder, LIBRARY, Clock.systemUTC(), "Ines Calloway");
        other = Workplace.open(folder, LIBRARY, Clock.systemUTC(), "Tove Marchetti");
    }

    @AfterEach
    void close() {
        other.close();
        here.close();
    }

    /** The next number, as it would be given to a paper. */
    private static Integer next(Records records) {
        var number = number(records) + 1;
        records.settings().put("number", String.valueOf(number));
        return number;
    }

    private static int number(Records records) {
        return Integer.parseInt(records.settings().find("number").orElse("0"));
    }

    private int kept() {
        return here.store().reading(FilingTest::number);
    }

    private static Map<String, byte[]> paper(int number) {
        return Map.of("paper-" + number + ".txt", "paper".getBytes(StandardCharsets.UTF_8));
    }

    @Test
    void thePaperTellsWhatIsStoredAlsoWhenAnotherProgramComesInBetween() {
        var looks = new AtomicInteger();
        var filed = new Filing(here, Progress.UNWATCHED).keep(FilingTest::next, number -> {
            if (looks.getAndIncrement() == 0) {
                other.store().change(other.by(), FilingTest::next);
            }
            return paper(number);
        });
        assertThat(filed.content()).isEqualTo(2);
        assertThat(filed.files()).containsExactly("paper-2.txt");
        assertThat(kept()).isEqualTo(2);
        assertThat(folder.resolve("paper-1.txt")).doesNotExist();
        assertThat(folder.resolve("paper-2.txt")).exists();
    }

    @Test
    void aFolderInWhichSomethingIsStoredAllTheTimeIsRefused() {
        assertThatThrownBy(() -> new Filing(here, Progress.UNWATCHED).keep(FilingTest::next, number -> {
                    other.store().change(other.by(), FilingTest::next);
                    return paper(number);
                }))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("no other program stores");
    }

    @Test
    void aPaperThatCannotBeMadeAndAPersonWhoEndsTheWorkLeaveNothingStored() {
        assertThatThrownBy(() -> new Filing(here, Progress.UNWATCHED).keep(FilingTest::next, number -> {
                    throw Refusal.missing("letter", "a letter that can be printed");
                }))
                .isInstanceOf(Refusal.class);
        Progress ended = (done, all) -> {
            throw new CancellationException();
        };
        assertThatThrownBy(() -> new Filing(here, ended).keep(FilingTest::next, FilingTest::paper))
                .isInstanceOf(CancellationException.class);
        assertThat(kept()).isZero();
        assertThat(folder.resolve("paper-1.txt")).doesNotExist();
    }
}

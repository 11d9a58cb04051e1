package fairflame.screen;

import static org.assertj.core.api.Assertions.assertThat;

import fairflame.screen.bench.Draft;
import fairflame.visit.Workplace;
import java.nio.file.Path;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.util.HashMap;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A process that is killed in the middle of a word: every keystroke that was taken is there when it is opened again. */
class KilledWhileTypingTest {
    private static final int ROUNDS = 10;
    private static final int MOST_KEYSTROKES = 90;
    private static final long SEED = 20260603L;

    @TempDir
    Path folder;

    @Test
    void everyKeystrokeThatWasTakenIsThereAgainAndTheDatabaseIsSound() throws Exception {
        var random = new Random(SEED);
        var former = new HashMap<String, Draft>();
        for (int round = 1; round <= ROUNDS; round++) {
            var keystrokes = 1 + random.nextInt(MOST_KEYSTROKES);
            var seed = random.nextLong();
            var typing = TypingProgram.start(folder, seed);
            typing.await(keystrokes);
            var taken = typing.kill();
            var begun = typing.begun();
            var kept = kept(begun.get("id")).orElse(begun);
            var drafts = TypingProgram.drafts(begun, seed, taken + 1);
            assertThat(kept)
                    .as("seed %s, round %s, killed after keystroke %s", SEED, round, taken)
                    .isIn(drafts.get(taken), drafts.get(taken + 1));
            sound();
            former.forEach((visit, draft) -> assertThat(kept(visit)).contains(draft));
            kept(begun.get("id")).ifPresent(draft -> former.put(begun.get("id"), draft));
        }
        assertThat(former).as("visits that were begun").hasSizeGreaterThan(ROUNDS / 2);
    }

    /** The draft as another process finds it. */
    private Optional<Draft> kept(String visit) {
        try (var workplace = Shop.in(folder)) {
            return new WorkplaceScreens(workplace, true).draft(visit);
        }
    }

    private void sound() throws SQLException {
        try (var connection = DriverManager.getConnection("jdbc:sqlite:" + folder.resolve(Workplace.DATABASE));
                var statement = connection.createStatement();
                var check = statement.executeQuery("pragma integrity_check")) {
            assertThat(check.next()).isTrue();
            assertThat(check.getString(1)).isEqualTo("ok");
        }
    }
}

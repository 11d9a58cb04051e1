package fairflame.visit;

import fairflame.Refusal;
import fairflame.store.Records;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/**
 * Keeps something together with its papers. What would be stored is worked out and taken back again, its papers are made
 * from that while the database is free, and only then is it stored and the papers laid in the folder: a paper that cannot
 * be made or laid there and a person who ends the work leave no trace. The papers lie there a moment before the database
 * holds what they say; a process killed in that moment leaves papers that nothing stands behind, and asking again writes
 * them anew.
 */
final class Filing {
    /** How often another program may come in between before this one gives up. */
    private static final int MOST_TRIES = 8;

    private final Workplace workplace;
    private final Progress progress;

    Filing(Workplace workplace, Progress progress) {
        this.workplace = workplace;
        this.progress = progress;
    }

    /** What was stored, and the names of its papers. */
    record Filed<T>(T content, List<String> files) {}

    /**
     * Stores something and writes its papers.
     *
     * @param store run twice or more; gives the same for the same state of the database
     * @param papers content by file name
     */
    <T> Filed<T> keep(Function<Records, T> store, Function<T, Map<String, byte[]>> papers) {
        for (int i = 0; i < MOST_TRIES; i++) {
            var meant = rehearsed(store);
            var files = papers.apply(meant);
            if (isStored(store, meant, files)) {
                return new Filed<>(meant, List.copyOf(files.keySet()));
            }
        }
        throw Refusal.unusable(
                "database", workplace.store().file(), "a moment in which no other program stores something");
    }

    private <T> T rehearsed(Function<Records, T> store) {
        var meant = new ArrayList<T>(1);
        try {
            workplace.store().change(workplace.by(), records -> {
                meant.add(store.apply(records));
                throw new TakenBack();
            });
        } catch (TakenBack rehearsal) {
            return meant.get(0);
        }
        throw new IllegalStateException("a rehearsal was stored");
    }

    /** False, and nothing is stored, when it came out otherwise than its papers say. */
    private <T> boolean isStored(Function<Records, T> store, T meant, Map<String, byte[]> files) {
        try {
            workplace.store().change(workplace.by(), records -> {
                if (!store.apply(records).equals(meant)) {
                    throw new TakenBack();
                }
                progress.look();
                workplace.folder().write(files);
            });
            return true;
        } catch (TakenBack otherwise) {
            return false;
        }
    }

    /** Undoes what a transaction stored. */
    private static final class TakenBack extends RuntimeException {
        private static final long serialVersionUID = 1;

        TakenBack() {
            super("taken back", null, false, false);
        }
    }
}

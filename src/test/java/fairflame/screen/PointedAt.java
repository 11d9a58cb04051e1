package fairflame.screen;

import fairflame.screen.kit.Choosing;
import java.io.File;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.stage.Window;

/** A person in the list of files: points at what they were told, or at nothing. */
final class PointedAt implements Choosing {
    private final List<Wanted> asked = new ArrayList<>();
    private Optional<File> file = Optional.empty();

    /** From now on this is chosen. */
    void at(File chosen) {
        file = Optional.of(chosen);
    }

    /** From now on the list is closed without a choice. */
    void atNothing() {
        file = Optional.empty();
    }

    /** What was asked for last. */
    Wanted asked() {
        return asked.get(asked.size() - 1);
    }

    @Override
    public Optional<File> choose(Wanted wanted, Window window) {
        asked.add(wanted);
        return file;
    }
}

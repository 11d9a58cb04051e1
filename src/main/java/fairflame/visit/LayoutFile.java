package fairflame.visit;

import fairflame.Refusal;
import fairflame.gas.GasTables;
import fairflame.gas.Layout;
import fairflame.gas.LayoutReader;
import fairflame.store.TextFile;
import java.nio.file.Path;

/** Reads a gas line's layout from a file. */
public final class LayoutFile {
    private LayoutFile() {}

    /** The layout in a file; a refusal names the file. */
    public static Layout read(Path file, GasTables tables) {
        var text = TextFile.read(file);
        try {
            return new LayoutReader(tables).read(text);
        } catch (Refusal refusal) {
            throw refusal.at(file.toString());
        }
    }
}

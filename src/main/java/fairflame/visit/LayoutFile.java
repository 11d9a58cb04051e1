package fairflame.visit;

import fairflame.Refusal;
import fairflame.gas.Drawing;
import fairflame.gas.GasTables;
import fairflame.gas.Layout;
import fairflame.gas.LayoutReader;
import fairflame.gas.SvgDrawing;
import fairflame.store.OutputFolder;
import fairflame.store.TextFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;

/** Reads a gas line's layout from a file, and writes its drawing. */
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

    /** Writes a drawing of a gas line as a scalable picture; refuses a path that is a folder or cannot be written. */
    public static void writeDrawing(Path file, Drawing drawing) {
        var name = file.getFileName();
        if (name == null || Files.isDirectory(file)) {
            throw Refusal.unusable("drawing", file, "a file to write, such as line.svg");
        }
        var parent = file.toAbsolutePath().getParent();
        OutputFolder.at(parent == null ? file.toAbsolutePath() : parent)
                .write(Map.of(name.toString(), SvgDrawing.of(drawing).getBytes(StandardCharsets.UTF_8)));
    }
}

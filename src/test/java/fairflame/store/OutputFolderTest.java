package fairflame.store;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fairflame.Refusal;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIf;
import org.junit.jupiter.api.io.TempDir;

class OutputFolderTest {
    @TempDir
    Path folder;

    @Test
    void makesTheFolderAndWritesAllFiles() {
        var out = OutputFolder.at(folder.resolve("a/b"));
        out.write(files("quote.pdf", "one", "quote.json", "two"));

        assertThat(out.path()).isEqualTo(folder.resolve("a/b"));
        assertThat(content(out.path())).containsOnly(Map.entry("quote.pdf", "one"), Map.entry("quote.json", "two"));
    }

    @Test
    void writesOverFilesOfTheSameNameAndLeavesOthers() {
        var out = OutputFolder.at(folder);
        out.write(files("quote.pdf", "old", "kept.txt", "kept"));
        out.write(files("quote.pdf", "new", "quote.json", "two"));

        assertThat(content(folder))
                .containsOnly(
                        Map.entry("quote.pdf", "new"), Map.entry("quote.json", "two"), Map.entry("kept.txt", "kept"));
    }

    @Test
    void refusesAPathThatIsAFile() throws IOException {
        var file = Files.writeString(folder.resolve("taken"), "x");
        for (var path : new Path[] {file, file.resolve("below")}) {
            assertThatThrownBy(() -> OutputFolder.at(path))
                    .isInstanceOf(Refusal.Unusable.class)
                    .hasMessageContaining("taken");
        }
        assertThat(file).hasContent("x");
    }

    /** A kernel folder in which nobody may make files, not even root, whom permission bits do not bind. */
    @Test
    @EnabledIf("hasKernelFolder")
    void refusesAPlaceWhereNothingMayBeMade() {
        assertThatThrownBy(() -> OutputFolder.at(Path.of("/proc/quotes")))
                .isInstanceOf(Refusal.Unusable.class)
                .hasMessageContaining("/proc/quotes");
    }

    static boolean hasKernelFolder() {
        return Files.isDirectory(Path.of("/proc/self"));
    }

    @Test
    void refusesNamesThatLeadOutOfTheFolder() {
        var out = OutputFolder.at(folder);
        for (var name : new String[] {"../x", "a/b", "", ".hidden", "a\\b", "x\u0000", "/etc/x", "C:x"}) {
            assertThatThrownBy(() -> out.write(files("good.txt", "x", name, "x")))
                    .isInstanceOf(Refusal.Malformed.class)
                    .hasMessageContaining("file name");
            assertThat(content(folder)).isEmpty();
        }
    }

    @Test
    void refusesAFolderInTheWayAndWritesNothing() throws IOException {
        Files.createDirectory(folder.resolve("z.pdf"));
        var out = OutputFolder.at(folder);
        assertThatThrownBy(() -> out.write(files("a.txt", "x", "z.pdf", "x")))
                .isInstanceOf(Refusal.Unusable.class)
                .hasMessageContaining("z.pdf");
        assertThat(folder.resolve("a.txt")).doesNotExist();
        assertThat(folder).isDirectoryNotContaining(path -> path.toString().endsWith(".part"));
    }

    @Test
    void aFullDiskAtAnyFileLeavesTheOldFilesAsTheyWere() {
        OutputFolder.at(folder).write(files("a.txt", "old a", "b.txt", "old b"));
        var before = content(folder);
        for (int n = 0; n < 3; n++) {
            var room = new AtomicInteger(n);
            var out = OutputFolder.at(folder, (file, bytes) -> {
                if (room.getAndDecrement() == 0) {
                    Files.write(file, new byte[] {bytes[0]});
                    throw new IOException("No space left on device");
                }
                Files.write(file, bytes);
            });
            assertThatThrownBy(() -> out.write(files("a.txt", "new a", "b.txt", "new b", "c.txt", "new c")))
                    .isInstanceOf(Refusal.Unusable.class)
                    .hasMessageContaining("No space left on device");
            assertThat(content(folder)).as("full at file %d", n).isEqualTo(before);
        }
    }

    @Test
    void aMoveThatFailsUndoesTheMovesBeforeIt() {
        OutputFolder.at(folder).write(files("a.txt", "old a"));
        // The folder that gets in the way appears after the check, while the last file is being written.
        var out = OutputFolder.at(folder, (file, bytes) -> {
            Files.write(file, bytes);
            if (file.getFileName().toString().contains("c.txt")) {
                Files.createDirectory(folder.resolve("c.txt"));
                Files.createDirectory(folder.resolve("c.txt/full"));
            }
        });
        assertThatThrownBy(() -> out.write(files("a.txt", "new a", "b.txt", "new b", "c.txt", "new c")))
                .isInstanceOf(Refusal.Unusable.class);
        assertThat(folder.resolve("a.txt")).hasContent("old a");
        assertThat(folder.resolve("b.txt")).doesNotExist();
        assertThat(folder)
                .isDirectoryNotContaining(path -> path.getFileName().toString().startsWith("."));
    }

    private static Map<String, byte[]> files(String... namesAndTexts) {
        var files = new LinkedHashMap<String, byte[]>();
        for (int i = 0; i < namesAndTexts.length; i += 2) {
            files.put(namesAndTexts[i], namesAndTexts[i + 1].getBytes(UTF_8));
        }
        return files;
    }

    private static Map<String, String> content(Path folder) {
        try (var files = Files.list(folder)) {
            var content = new TreeMap<String, String>();
            for (var file : files.toList()) {
                content.put(file.getFileName().toString(), Files.readString(file));
            }
            return content;
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }
}

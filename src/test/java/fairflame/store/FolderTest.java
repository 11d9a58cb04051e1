package fairflame.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fairflame.Refusal;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FolderTest {
    @TempDir
    Path folder;

    @Test
    void readsTextsByRelativeNameInOrder() throws IOException {
        put("parts.csv", "id,name\nS1,wet switch\n");
        put("places/north.yaml", "tax: 7.25 %, ½ µA\n");
        put("places/deep/er.yaml", "x");

        assertThat(Folder.read(folder))
                .containsExactly(
                        Map.entry("parts.csv", "id,name\nS1,wet switch\n"),
                        Map.entry("places/deep/er.yaml", "x"),
                        Map.entry("places/north.yaml", "tax: 7.25 %, ½ µA\n"));
    }

    @Test
    void passesOverHiddenFilesAndFolders() throws IOException {
        put("parts.csv", "a");
        put(".hidden", "b");
        put(".git/config", "c");

        assertThat(Folder.read(folder)).containsOnlyKeys("parts.csv");
    }

    @Test
    void leavesTheSpreadsheetsOfATemplatesFolderToTheirOwnReader() throws IOException {
        put("company.yaml", "a");
        put("~$quote.xlsx", "left by an office program that has the file open");
        Files.write(folder.resolve("quote.xlsx"), new byte[] {'P', 'K', 3, (byte) 0xff});

        assertThat(Folder.read(folder)).containsOnlyKeys("company.yaml");
        assertThat(Folder.spreadsheets(Optional.of(folder)))
                .containsEntry("quote.xlsx", new byte[] {'P', 'K', 3, (byte) 0xff})
                .containsEntry("invoice.xlsx", Files.readAllBytes(Path.of("templates/invoice.xlsx")));
        assertThat(Folder.spreadsheets(Optional.empty()).get("quote.xlsx"))
                .isEqualTo(Files.readAllBytes(Path.of("templates/quote.xlsx")));
    }

    @Test
    void aSpreadsheetThatIsNoFileOrFarTooLargeIsRefused() throws IOException {
        Files.createDirectory(folder.resolve("quote.xlsx"));
        assertThatThrownBy(() -> Folder.spreadsheets(Optional.of(folder)))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("quote.xlsx");
        Files.delete(folder.resolve("quote.xlsx"));
        Files.write(folder.resolve("quote.xlsx"), new byte[4 * 1024 * 1024 + 1]);
        assertThatThrownBy(() -> Folder.spreadsheets(Optional.of(folder))).hasMessageContaining("at most 4 MiB");
    }

    @Test
    void aHiddenFolderThatWasAskedForIsRead() throws IOException {
        put(".shop/parts.csv", "a");

        assertThat(Folder.read(folder.resolve(".shop"))).containsOnlyKeys("parts.csv");
    }

    @Test
    void anEmptyFolderHoldsNothing() {
        assertThat(Folder.read(folder)).isEmpty();
    }

    @Test
    void refusesAMissingFolder() {
        refused(folder.resolve("nowhere"), "nowhere", "an existing folder");
    }

    @Test
    void refusesAFileInTheFoldersPlace() throws IOException {
        put("parts.csv", "a");
        refused(folder.resolve("parts.csv"), "parts.csv", "a folder, not a file");
    }

    @Test
    void refusesBytesThatAreNotUtf8AndSaysWhere() throws IOException {
        Files.write(folder.resolve("parts.csv"), "caf\u00e9".getBytes(StandardCharsets.ISO_8859_1));
        refused(folder, "parts.csv", "byte 0xE9 at offset 3", "save the file as UTF-8");
    }

    @Test
    void refusesALoneSurrogateWrittenAsBytes() throws IOException {
        Files.write(folder.resolve("parts.csv"), new byte[] {'a', 'b', (byte) 0xED, (byte) 0xA0, (byte) 0x80});
        refused(folder, "parts.csv", "byte 0xED at offset 2");
    }

    @Test
    void refusesACharacterCutOffAtTheEnd() throws IOException {
        Files.write(folder.resolve("parts.csv"), new byte[] {'a', (byte) 0xC3});
        refused(folder, "parts.csv", "byte 0xC3 at offset 1");
    }

    @Test
    void refusesUtf16BecauseOfItsZeroBytes() throws IOException {
        Files.write(folder.resolve("parts.csv"), "ab".getBytes(StandardCharsets.UTF_16LE));
        refused(folder, "parts.csv", "byte 0x00 at offset 1");
    }

    @Test
    void dropsAByteOrderMarkAtTheStartOnly() throws IOException {
        put("parts.csv", "\uFEFFid\uFEFF");
        assertThat(Folder.read(folder)).containsEntry("parts.csv", "id\uFEFF");
    }

    @Test
    void readsAFileOfTheGreatestSizeAndRefusesOneByteMore() throws IOException {
        put("long.csv", "x".repeat(TextFile.MOST_BYTES));
        assertThat(Folder.read(folder).get("long.csv")).hasSize(TextFile.MOST_BYTES);

        put("long.csv", "x".repeat(TextFile.MOST_BYTES + 1));
        refused(folder, "long.csv", "at most 2 MiB");
    }

    @Test
    void refusesTooManyFiles() throws IOException {
        for (int i = 0; i < Folder.MOST_FILES; i++) {
            put(i + ".csv", "x");
        }
        assertThat(Folder.read(folder)).hasSize(Folder.MOST_FILES);

        put("one-more.csv", "x");
        refused(folder, "number of files", "at most 1000");
    }

    @Test
    void refusesTooMuchTextInAll() throws IOException {
        for (int i = 0; i < 17; i++) {
            put(i + ".csv", "x".repeat(TextFile.MOST_BYTES));
        }
        refused(folder, "size of folder", "at most 32 MiB");
    }

    @Test
    void refusesALinkedFolderThatMightLeadInACircle() throws IOException {
        put("a/parts.csv", "x");
        Files.createSymbolicLink(folder.resolve("a/loop"), folder);
        refused(folder, "a/loop", "a plain file");
    }

    @Test
    void readsALinkedFile() throws IOException {
        put("a/parts.csv", "x");
        Files.createSymbolicLink(folder.resolve("a/same.csv"), folder.resolve("a/parts.csv"));
        assertThat(Folder.read(folder)).containsEntry("a/same.csv", "x");
    }

    @Test
    void readsAFolderInsideAJarThatListsOnlyItsFiles() throws IOException {
        var jar = folder.resolve("with blank.jar");
        try (var out = new ZipOutputStream(Files.newOutputStream(jar))) {
            out.putNextEntry(new ZipEntry("sample/places/north.yaml"));
            out.write("tax: 7 %".getBytes(StandardCharsets.UTF_8));
            out.putNextEntry(new ZipEntry("sample/parts.csv"));
            out.write("½".getBytes(StandardCharsets.UTF_8));
            out.putNextEntry(new ZipEntry("other/parts.csv"));
        }
        assertThat(Folder.within(jar, "sample"))
                .containsExactly(Map.entry("parts.csv", "½"), Map.entry("places/north.yaml", "tax: 7 %"));
        assertThatThrownBy(() -> Folder.within(jar, "nowhere"))
                .isInstanceOf(Refusal.Unusable.class)
                .hasMessageContaining("nowhere");
    }

    @Test
    void aJarThatIsNoneIsABugOfTheProgram() throws IOException {
        put("no.jar", "text");
        assertThatThrownBy(() -> Folder.within(folder.resolve("no.jar"), "sample"))
                .isInstanceOf(StoreException.class);
    }

    @Test
    void readsAFolderThatTravelsWithTheProgram() {
        assertThatThrownBy(() -> Folder.shipped("fonts")).hasMessageContaining("_400Regular.ttf: text 'byte 0x");
    }

    @Test
    void oneFileIsReadWhole() throws IOException {
        put("visit.json", "{}\r\n");
        assertThat(TextFile.read(folder.resolve("visit.json"))).isEqualTo("{}\r\n");
    }

    @Test
    void oneFileThatIsAFolderOrMissingOrNotTextIsRefused() throws IOException {
        assertThatThrownBy(() -> TextFile.read(folder)).hasMessageContaining("a text file, not a folder");
        assertThatThrownBy(() -> TextFile.read(folder.resolve("gone.json")))
                .isInstanceOf(Refusal.Unusable.class)
                .hasMessageContaining("gone.json' is refused; allowed: an existing text file");
        assertThatThrownBy(() -> TextFile.read(folder.resolve("gone.json").resolve("deeper")))
                .isInstanceOf(Refusal.Unusable.class);
        Files.write(folder.resolve("visit.json"), new byte[] {(byte) 0xFF});
        assertThatThrownBy(() -> TextFile.read(folder.resolve("visit.json")))
                .isInstanceOf(Refusal.Malformed.class)
                .hasMessageContaining("visit.json: text 'byte 0xFF at offset 0'");
        put("plain.txt", "x");
        assertThatThrownBy(() -> TextFile.read(folder.resolve("plain.txt/inside")))
                .isInstanceOf(Refusal.Unusable.class);
    }

    private void put(String name, String text) throws IOException {
        var file = folder.resolve(name);
        Files.createDirectories(file.getParent());
        Files.writeString(file, text);
    }

    private static void refused(Path folder, String... parts) {
        assertThatThrownBy(() -> Folder.read(folder))
                .isInstanceOf(Refusal.class)
                .hasMessageContainingAll(parts)
                .hasMessageNotContainingAny("\n");
    }
}

package fairflame.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A shop's own layout of the spreadsheets, given by {@code --templates}. */
class OwnLayoutTest {
    @TempDir
    private Path folder;

    private Path templates;

    @BeforeEach
    void copy() throws IOException {
        templates = folder.resolve("templates");
        try (var files = Files.walk(Path.of("templates"))) {
            for (var file : files.toList()) {
                Files.copy(file, templates.resolve(Path.of("templates").relativize(file)));
            }
        }
    }

    private void change(String cell, String words) throws IOException {
        var file = templates.resolve("quote.xlsx");
        try (var in = Files.newInputStream(file);
                var book = new XSSFWorkbook(in)) {
            var at = new org.apache.poi.ss.util.CellAddress(cell);
            book.getSheet("Choice").getRow(at.getRow()).getCell(at.getColumn()).setCellValue(words);
            try (var out = Files.newOutputStream(file)) {
                book.write(out);
            }
        }
    }

    private Shell.Said quote(Shell shell) {
        return shell.june("quote", shell.visit(1).toString(), "--templates", templates.toString());
    }

    @Test
    void isWhatTheQuoteIsWrittenIn() throws IOException {
        change("A2", "Heaters since long ago. {foot}");
        var shell = new Shell(folder);
        quote(shell).done();
        try (var in = Files.newInputStream(shell.out().resolve("Q-2026-0001.xlsx"));
                var book = new XSSFWorkbook(in)) {
            assertThat(book.getSheet("Choice A").getRow(1).getCell(0).getStringCellValue())
                    .isEqualTo("Heaters since long ago. Quote Q-2026-0001, revision 1, not signed");
        }
    }

    @Test
    void isRefusedWithFileSheetAndCellBeforeAnythingIsWritten() throws IOException {
        change("A2", "{colour}");
        var shell = new Shell(folder);
        quote(shell).refused("templates", "quote.xlsx, sheet Choice, cell A2", "'colour'");
        assertThat(shell.left()).isEmpty();
    }

    @Test
    void thatIsNoSpreadsheetIsRefused() throws IOException {
        Files.writeString(templates.resolve("invoice.xlsx"), "not a spreadsheet");
        quote(new Shell(folder)).refused("invoice.xlsx", "not readable");
    }

    @Test
    void maySimplyNotBeThere() throws IOException {
        Files.delete(templates.resolve("quote.xlsx"));
        quote(new Shell(folder)).done();
    }
}

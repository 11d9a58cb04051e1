package fairflame.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fairflame.Refusal;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PriceSheetFileTest {
    @TempDir
    private Path folder;

    private Path file(String name, String text) throws IOException {
        return Files.writeString(folder.resolve(name), text);
    }

    @ParameterizedTest
    @ValueSource(strings = {",", ";", "\t"})
    void readsCommaSemicolonAndTab(String mark) throws IOException {
        var text = "Item,Price\r\n\r\nHS-1,32.00\r\n\"HS-2\",\"33.00\"\r\n".replace(",", mark);
        var sheet = PriceSheetFile.read(file("list.csv", "\uFEFF" + text));
        assertThat(sheet.header()).containsExactly("Item", "Price");
        assertThat(sheet.rows())
                .extracting(row -> row.cells())
                .containsExactly(List.of("HS-1", "32.00"), List.of("HS-2", "33.00"));
    }

    @Test
    void readsTheFirstSheetOfAWorkbookThatAnotherLibraryWrote() throws IOException {
        var path = folder.resolve("list.xlsx");
        try (var book = new XSSFWorkbook();
                var out = Files.newOutputStream(path)) {
            var sheet = book.createSheet("prices");
            var head = sheet.createRow(2);
            head.createCell(0).setCellValue("Item");
            head.createCell(1).setCellValue("Price");
            var row = sheet.createRow(4);
            row.createCell(0).setCellValue("HS-1");
            row.createCell(1).setCellValue(48.35);
            var computed = sheet.createRow(5);
            computed.createCell(0).setCellValue(1042);
            computed.createCell(1).setCellFormula("B5*2");
            book.getCreationHelper().createFormulaEvaluator().evaluateAll();
            book.createSheet("other").createRow(0).createCell(0).setCellValue("not read");
            book.write(out);
        }
        var sheet = PriceSheetFile.read(path);
        assertThat(sheet.header()).containsExactly("Item", "Price");
        assertThat(sheet.rows()).extracting(row -> row.number()).containsExactly(5, 6);
        assertThat(sheet.rows().get(0).cells()).containsExactly("HS-1", "48.35");
        assertThat(sheet.rows().get(1).cells()).containsExactly("1042.0", "96.7");
    }

    @Test
    void refusesWhatIsNoPriceListAndNamesTheFile() throws IOException {
        var damaged = file("broken.xlsx", "this is no workbook");
        assertThatThrownBy(() -> PriceSheetFile.read(damaged))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("broken.xlsx");
        var latin = Files.write(folder.resolve("latin.csv"), new byte[] {'I', 't', (byte) 0xE9, 'm'});
        assertThatThrownBy(() -> PriceSheetFile.read(latin))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("0xE9");
        var empty = file("empty.csv", "\n\n");
        assertThatThrownBy(() -> PriceSheetFile.read(empty))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("headings");
        assertThatThrownBy(() -> PriceSheetFile.read(folder)).isInstanceOf(Refusal.class);
    }

    @Test
    void refusesAWorkbookWithoutSheets() throws IOException {
        var path = folder.resolve("hollow.xlsx");
        try (var zip = new java.util.zip.ZipOutputStream(Files.newOutputStream(path))) {
            zip.putNextEntry(new java.util.zip.ZipEntry("readme.txt"));
            zip.write(1);
        }
        assertThatThrownBy(() -> PriceSheetFile.read(path))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("hollow.xlsx");
    }
}

package fairflame.document;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.Date;
import java.util.Optional;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** Writes a spreadsheet: properties set, the same bytes for the same input. */
final class XlsxFile {
    // The first day that a ZIP entry can carry.
    private static final LocalDateTime NO_TIME = LocalDateTime.of(1980, 1, 1, 0, 0);

    private XlsxFile() {}

    static byte[] write(XSSFWorkbook book, String title, String author, LocalDate made) {
        var properties = book.getProperties().getCoreProperties();
        var date = Optional.of(Date.from(made.atStartOfDay().toInstant(ZoneOffset.UTC)));
        properties.setTitle(title);
        properties.setCreator(author);
        properties.setCreated(date);
        properties.setModified(date);
        var bytes = new ByteArrayOutputStream();
        try {
            book.write(bytes);
            return timeless(bytes.toByteArray());
        } catch (IOException e) {
            throw new UncheckedIOException("spreadsheet could not be written", e);
        }
    }

    /** The same archive without the times at which its entries were written. */
    private static byte[] timeless(byte[] archive) throws IOException {
        var bytes = new ByteArrayOutputStream();
        try (var in = new ZipInputStream(new ByteArrayInputStream(archive));
                var out = new ZipOutputStream(bytes)) {
            for (var entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
                var plain = new ZipEntry(entry.getName());
                plain.setTimeLocal(NO_TIME);
                out.putNextEntry(plain);
                in.transferTo(out);
                out.closeEntry();
            }
        }
        return bytes.toByteArray();
    }
}

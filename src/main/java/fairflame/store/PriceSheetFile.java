package fairflame.store;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.MappingIterator;
import com.fasterxml.jackson.dataformat.csv.CsvMapper;
import com.fasterxml.jackson.dataformat.csv.CsvParser;
import com.fasterxml.jackson.dataformat.csv.CsvSchema;
import fairflame.Refusal;
import fairflame.catalog.upkeep.PriceSheet;
import fairflame.catalog.upkeep.PriceSheet.SheetRow;
import fairflame.catalog.upkeep.Watch;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.zip.ZipException;
import java.util.zip.ZipFile;
import org.dhatim.fastexcel.reader.Cell;
import org.dhatim.fastexcel.reader.CellType;
import org.dhatim.fastexcel.reader.ExcelReaderException;
import org.dhatim.fastexcel.reader.ReadableWorkbook;
import org.dhatim.fastexcel.reader.Row;

/**
 * A supplier's price list in a file: CSV in UTF-8 (comma, semicolon or tab) or the first sheet of an XLSX workbook. The
 * first row that is not empty holds the headings.
 */
public final class PriceSheetFile {
    static final int MOST_ROWS = 200_000;
    static final int MOST_CELLS = 200;
    static final long MOST_BYTES = 64L * 1024 * 1024;
    /** What a workbook may unpack to; a small file that says more is made to exhaust the reader. */
    static final long MOST_UNPACKED = 1024L * 1024 * 1024;

    private final String name;
    private List<String> header = List.of();
    private final List<SheetRow> rows = new ArrayList<>();

    private final Watch watch;

    private PriceSheetFile(String name, Watch watch) {
        this.name = name;
        this.watch = watch;
    }

    /** Reads the whole list; every refusal names the file. */
    public static PriceSheet read(Path file) {
        return read(file, Watch.NONE);
    }

    /** As {@link #read(Path)}, watched. */
    public static PriceSheet read(Path file, Watch watch) {
        if (!Files.isRegularFile(file)) {
            throw Refusal.unusable("price list", file, "an existing CSV or XLSX file");
        }
        var sheet = new PriceSheetFile(String.valueOf(file.getFileName()), watch);
        try {
            if (Files.size(file) > MOST_BYTES) {
                throw Refusal.outOfRange("size of file", Files.size(file) + " bytes", "at most 64 MiB");
            }
            if (sheet.name.toLowerCase(Locale.ROOT).endsWith(".xlsx")) {
                sheet.readWorkbook(file);
            } else {
                sheet.readText(TextFile.decode(Files.readAllBytes(file)));
            }
        } catch (IOException e) {
            throw Refusal.unusable("price list", file, "a file that can be read (" + e.getMessage() + ")");
        } catch (Refusal refusal) {
            throw refusal.at(file.toString());
        }
        if (sheet.header.isEmpty()) {
            throw Refusal.missing("row of headings", "a first row with the headings")
                    .at(file.toString());
        }
        return new PriceSheet(sheet.name, sheet.header, sheet.rows);
    }

    private void readText(String text) throws IOException {
        var first = text.lines().filter(line -> !line.isBlank()).findFirst().orElse("");
        var schema = CsvSchema.emptySchema().withColumnSeparator(separator(first));
        try (MappingIterator<String[]> lines = new CsvMapper()
                .readerFor(String[].class)
                .with(CsvParser.Feature.WRAP_AS_ARRAY)
                .with(schema)
                .readValues(text)) {
            for (int number = 1; lines.hasNextValue(); number++) {
                add(number, Arrays.asList(lines.nextValue()));
            }
        } catch (JsonProcessingException e) {
            throw Refusal.malformed("table", e.getOriginalMessage(), "comma-separated values (RFC 4180)")
                    .at("line " + e.getLocation().getLineNr());
        }
    }

    private static char separator(String header) {
        return header.indexOf('\t') >= 0 ? '\t' : header.indexOf(';') >= 0 ? ';' : ',';
    }

    private void readWorkbook(Path file) throws IOException {
        try (var zip = new ZipFile(file.toFile())) {
            var unpacked = zip.stream()
                    .mapToLong(entry -> Math.max(0, entry.getSize()))
                    .sum();
            if (unpacked > MOST_UNPACKED) {
                throw Refusal.outOfRange("unpacked size of workbook", unpacked + " bytes", "at most 1 GiB");
            }
        } catch (ZipException e) {
            throw notAWorkbook(e);
        }
        try (var workbook = new ReadableWorkbook(file.toFile());
                var read = workbook.getFirstSheet().openStream()) {
            read.forEach(row -> add(row.getRowNum(), cells(row)));
        } catch (ExcelReaderException | IllegalStateException | IndexOutOfBoundsException e) {
            throw notAWorkbook(e);
        }
    }

    private static Refusal notAWorkbook(Exception e) {
        return Refusal.malformed("workbook", String.valueOf(e.getMessage()), "an undamaged XLSX file");
    }

    private static List<String> cells(Row row) {
        var cells = new ArrayList<String>();
        for (int i = 0; i < Math.min(row.getCellCount(), MOST_CELLS + 1); i++) {
            cells.add(row.getOptionalCell(i).map(PriceSheetFile::text).orElse(""));
        }
        return cells;
    }

    /** The raw value: how a cell shows a number is no part of it. */
    private static String text(Cell cell) {
        var text = cell.getType() == CellType.STRING ? cell.getText() : cell.getRawValue();
        return text == null ? "" : text;
    }

    private void add(int number, List<String> cells) {
        if (cells.stream().allMatch(String::isBlank)) {
            return;
        }
        if (cells.size() > MOST_CELLS) {
            throw Refusal.outOfRange("cells in row " + number, cells.size(), "at most " + MOST_CELLS);
        }
        if (header.isEmpty()) {
            header = cells.stream().map(String::strip).toList();
            return;
        }
        if (rows.size() == MOST_ROWS) {
            throw Refusal.outOfRange("rows", "more than " + MOST_ROWS, "at most " + MOST_ROWS);
        }
        watch.passing(Watch.Stage.READING, rows.size());
        rows.add(new SheetRow(number, cells));
    }
}

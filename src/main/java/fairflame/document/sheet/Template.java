package fairflame.document.sheet;

import fairflame.Refusal;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import org.apache.poi.ooxml.POIXMLException;
import org.apache.poi.openxml4j.exceptions.OpenXML4JRuntimeException;
import org.apache.poi.ss.util.WorkbookUtil;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.apache.xmlbeans.XmlObject;

/**
 * A spreadsheet that a shop has laid out, read and checked as a whole. Sheets whose names it knows are filled, one of
 * them perhaps several times; a sheet called Help stays behind; any other is carried along.
 */
public final class Template {
    /** Largest file that is read, in bytes. */
    public static final int MOST_BYTES = 4 * 1024 * 1024;

    private static final String HELP = "help";

    private final String file;
    private final byte[] bytes;
    private final Map<String, Vocabulary> known;
    private final Vocabulary others;

    private Template(String file, byte[] bytes, Map<String, Vocabulary> known, Vocabulary others) {
        this.file = file;
        this.bytes = bytes.clone();
        this.known = Map.copyOf(known);
        this.others = others;
    }

    /**
     * One sheet to be written.
     *
     * @param sheet of the template
     * @param name of the sheet in the file; made unlike others
     */
    public record Page(String sheet, String name, Facts facts) {}

    /**
     * Reads a template.
     *
     * @param file its name, for refusals
     * @param known what each sheet may use, by its name
     * @param optional sheets that may be missing
     * @param others what any further sheet may use
     * @throws Refusal naming file, sheet and cell
     */
    public static Template parse(
            String file, byte[] bytes, Map<String, Vocabulary> known, Set<String> optional, Vocabulary others) {
        var template = new Template(file, bytes, known, others);
        try (var book = template.open()) {
            for (var name : known.keySet().stream().sorted().toList()) {
                if (book.getSheet(name) == null && !optional.contains(name)) {
                    throw Refusal.missing("sheet " + name, "a sheet of that name");
                }
            }
            template.sheets(book);
            return template;
        } catch (Refusal refusal) {
            throw refusal.at(file);
        } catch (IOException e) {
            throw template.unreadable();
        }
    }

    private Refusal unreadable() {
        return Refusal.malformed("file", file, "a spreadsheet of the kind .xlsx, not damaged or encrypted")
                .at(file);
    }

    private XSSFWorkbook open() throws IOException {
        if (bytes.length > MOST_BYTES) {
            throw Refusal.outOfRange("size", bytes.length + " bytes", "at most " + MOST_BYTES);
        }
        XSSFWorkbook book;
        try {
            book = new XSSFWorkbook(new ByteArrayInputStream(bytes));
        } catch (POIXMLException | OpenXML4JRuntimeException | IllegalArgumentException e) {
            throw Refusal.malformed(
                    "content", "not readable", "a spreadsheet of the kind .xlsx, whole and not encrypted");
        }
        if (book.isMacroEnabled() || book.getCTWorkbook().isSetExternalReferences()) {
            book.close();
            throw Refusal.notAllowed("content", "macros or links to other files", "a spreadsheet without them");
        }
        return book;
    }

    private Map<String, TemplateSheet> sheets(XSSFWorkbook book) {
        var read = new LinkedHashMap<String, TemplateSheet>();
        for (int i = 0; i < book.getNumberOfSheets(); i++) {
            var sheet = book.getSheetAt(i);
            if (!sheet.getSheetName().toLowerCase(Locale.ROOT).startsWith(HELP)) {
                read.put(
                        sheet.getSheetName(),
                        TemplateSheet.read(sheet, known.getOrDefault(sheet.getSheetName(), others)));
            }
        }
        return read;
    }

    /**
     * The filled spreadsheet, every formula worked out and held against what is stored; to be closed by who asked.
     *
     * @param pages in the order of the file; several of one sheet are members of the group of its name in small letters
     * @param facts for further sheets
     * @param sign of the currency
     * @param foot fills placeholders of page header and footer
     * @throws Refusal naming file, sheet and cell
     */
    public XSSFWorkbook filled(List<Page> pages, Facts facts, String sign, UnaryOperator<String> foot) {
        try {
            var book = open();
            try {
                fill(book, pages, facts, sign, foot);
                return book;
            } catch (Refusal refusal) {
                book.close();
                throw refusal.at(file);
            }
        } catch (IOException e) {
            throw unreadable();
        }
    }

    private record Written(TemplateSheet template, XSSFSheet sheet, Facts facts, FormulaMove.Grid grid) {}

    private void fill(XSSFWorkbook book, List<Page> pages, Facts facts, String sign, UnaryOperator<String> foot) {
        var read = sheets(book);
        for (int i = book.getNumberOfSheets() - 1; i >= 0; i--) {
            var sheet = book.getSheetAt(i);
            var own = sheet.getSheetName();
            boolean empty = known.containsKey(own)
                    && pages.stream().noneMatch(page -> page.sheet().equals(own));
            if (!read.containsKey(own) || empty) {
                book.removeSheetAt(i);
            } else {
                book.removePrintArea(i);
                sheet.setRepeatingRows(null);
                Surroundings.clear(sheet);
            }
        }
        var written = written(book, read, pages, facts);
        var grids = new HashMap<String, List<FormulaMove.Grid>>();
        written.forEach(page -> grids.computeIfAbsent(page.template().name(), name -> new ArrayList<>())
                .add(page.grid()));
        Function<String, List<FormulaMove.Grid>> sheets = name -> grids.getOrDefault(name, List.of());
        var looks = new Looks(book, sign);
        var promises = new ArrayList<SheetFill.Promise>();
        for (var page : written) {
            new SheetFill(page.template(), page.facts(), page.grid(), page.sheet(), looks, sheets, promises::add)
                    .write();
            new Surroundings(page.template(), page.grid(), page.sheet()).place(foot);
        }
        Recalculation.check(book, promises);
        // Every formula carries its value already.
        book.setForceFormulaRecalculation(false);
    }

    /** Each sheet of the template as often as there are pages of it, under its own name. */
    private List<Written> written(XSSFWorkbook book, Map<String, TemplateSheet> read, List<Page> pages, Facts facts) {
        var sheets = new ArrayList<XSSFSheet>();
        var order = new ArrayList<Page>();
        for (var own : read.keySet()) {
            var sheet = book.getSheet(own);
            if (sheet == null) {
                continue;
            }
            var mine = known.containsKey(own)
                    ? pages.stream().filter(page -> page.sheet().equals(own)).toList()
                    : List.of(new Page(own, own, facts));
            int at = book.getSheetIndex(sheet);
            for (int i = 1; i < mine.size(); i++) {
                var copy = copied(book, sheet);
                book.setSheetOrder(copy.getSheetName(), at + i);
            }
            for (int i = 0; i < mine.size(); i++) {
                sheets.add(book.getSheetAt(at + i));
                order.add(mine.get(i));
            }
        }
        for (int i = 0; i < sheets.size(); i++) {
            book.setSheetName(book.getSheetIndex(sheets.get(i)), "to be named " + i);
        }
        var written = new ArrayList<Written>();
        for (int i = 0; i < sheets.size(); i++) {
            var page = order.get(i);
            var template = java.util.Objects.requireNonNull(read.get(page.sheet()));
            var name = unused(book, page.name());
            book.setSheetName(book.getSheetIndex(sheets.get(i)), name);
            var grid = new FormulaMove.Grid(
                    name,
                    page.sheet().toLowerCase(Locale.ROOT),
                    new Axis(template.rows(), page.facts(), 1_048_575),
                    new Axis(template.columns(), page.facts(), 16_383));
            written.add(new Written(template, sheets.get(i), page.facts(), grid));
        }
        return written;
    }

    /** A copy with the sheet's paper size and direction, which the library leaves out and warns of. */
    private static XSSFSheet copied(XSSFWorkbook book, XSSFSheet sheet) {
        var own = sheet.getCTWorksheet();
        var setup = own.isSetPageSetup() ? Optional.of(own.getPageSetup().copy()) : Optional.<XmlObject>empty();
        setup.ifPresent(kept -> own.unsetPageSetup());
        var copy = book.cloneSheet(book.getSheetIndex(sheet));
        setup.ifPresent(kept -> {
            own.addNewPageSetup().set(kept);
            copy.getCTWorksheet().addNewPageSetup().set(kept);
        });
        return copy;
    }

    /** Names of sheets are short, of few characters, and unique whatever their case. */
    public static String unused(XSSFWorkbook book, String name) {
        var safe = WorkbookUtil.createSafeSheetName(name);
        var free = safe;
        for (int i = 2; book.getSheet(free) != null; i++) {
            var tail = " " + i;
            free = safe.substring(0, Math.min(safe.length(), 31 - tail.length())) + tail;
        }
        return free;
    }
}

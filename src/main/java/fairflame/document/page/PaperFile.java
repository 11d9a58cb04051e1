package fairflame.document.page;

import com.lowagie.text.Document;
import com.lowagie.text.pdf.PdfBoolean;
import com.lowagie.text.pdf.PdfDate;
import com.lowagie.text.pdf.PdfDictionary;
import com.lowagie.text.pdf.PdfName;
import com.lowagie.text.pdf.PdfString;
import com.lowagie.text.pdf.PdfStructureElement;
import com.lowagie.text.pdf.PdfWriter;
import fairflame.Refusal;
import java.io.ByteArrayOutputStream;
import java.util.ArrayList;
import java.util.GregorianCalendar;
import java.util.List;
import java.util.TimeZone;

/** Sets blocks on pages and writes them as a PDF: tagged, fonts embedded, the same bytes for the same input. */
public final class PaperFile {
    private final PaperInfo info;
    private final PageFormat format;
    private final Running running;

    public PaperFile(PaperInfo info, PageFormat format, Running running) {
        this.info = info;
        this.format = format;
        this.running = running;
    }

    /** The whole file. */
    public byte[] write(Block body) {
        var pages = pages(body);
        var bytes = new ByteArrayOutputStream();
        var document = new Document(format.rectangle(), 0, 0, 0, 0);
        var writer = PdfWriter.getInstance(document, bytes);
        writer.setPdfVersion(PdfWriter.PDF_VERSION_1_7);
        writer.setTagged();
        writer.setViewerPreferences(PdfWriter.DisplayDocTitle);
        document.addTitle(info.title());
        document.addAuthor(info.author());
        document.addCreator("Fairflame");
        document.open();
        describe(writer);
        var root = new PdfStructureElement(writer.getStructureTreeRoot(), new PdfName("Document"));
        var entries = new PdfEntries(writer);
        for (int i = 0; i < pages.size(); i++) {
            if (i > 0) {
                document.newPage();
            }
            writer.setPageEmpty(false);
            var pen = new PdfPen(writer.getDirectContent(), format.height(), root, entries);
            draw(pen, pages.get(i), i + 1, pages.size());
            entries.endPage();
        }
        document.close();
        return FixedBytes.of(bytes.toByteArray());
    }

    private void describe(PdfWriter writer) {
        var made = new GregorianCalendar(TimeZone.getTimeZone("UTC"));
        made.setTimeInMillis(info.made().toEpochDay() * 86_400_000L);
        var date = new PdfDate(made);
        writer.getInfo().put(PdfName.CREATIONDATE, date);
        writer.getInfo().put(PdfName.MODDATE, date);
        writer.getExtraCatalog().put(PdfName.LANG, new PdfString(info.language()));
        var marks = new PdfDictionary();
        marks.put(PdfName.MARKED, PdfBoolean.PDFTRUE);
        writer.getExtraCatalog().put(PdfName.MARKINFO, marks);
    }

    private void draw(PdfPen pen, Block page, int number, int pages) {
        var head = running.head(number, pages);
        var foot = running.foot(number, pages);
        double width = format.textWidth();
        var top = new Place(PageFormat.SIDE, PageFormat.TOP, width);
        pen.decor(() -> head.draw(pen, top));
        page.draw(pen, top.down(head.height(width)));
        double footTop = format.height() - PageFormat.BOTTOM - foot.height(width);
        pen.decor(() -> foot.draw(pen, new Place(PageFormat.SIDE, footTop, width)));
    }

    private List<Block> pages(Block body) {
        var pages = new ArrayList<Block>();
        var rest = body;
        while (true) {
            var split = rest.split(format.textWidth(), new Room(room(pages.size() + 1), true));
            if (split.head().isEmpty()) {
                throw Refusal.notAllowed("paper", "a block taller than the page", "shorter words in the layout file");
            }
            pages.add(split.head().get());
            if (split.rest().isEmpty()) {
                return pages;
            }
            rest = split.rest().get();
        }
    }

    private double room(int page) {
        double width = format.textWidth();
        double free = format.height() - PageFormat.TOP - PageFormat.BOTTOM;
        return free
                - running.head(page, page).height(width)
                - running.foot(page, page).height(width);
    }
}

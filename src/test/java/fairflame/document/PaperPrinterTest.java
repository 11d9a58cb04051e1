package fairflame.document;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import fairflame.Refusal;
import fairflame.document.page.PageFormat;
import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import javax.print.DocFlavor;
import javax.print.PrintServiceLookup;
import javax.print.StreamPrintServiceFactory;
import org.apache.pdfbox.Loader;
import org.junit.jupiter.api.Test;

class PaperPrinterTest {
    private static final DocFlavor PAGES = DocFlavor.SERVICE_FORMATTED.PAGEABLE;

    @Test
    void withoutAPrinterItSaysWhatToDo() {
        assumeTrue(PrintServiceLookup.lookupPrintServices(PAGES, null).length == 0, "this computer has a printer");
        assertThatThrownBy(PaperPrinter::ofThisComputer)
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("printer")
                .hasMessageContaining("set up on this computer")
                .hasMessageContaining("folder");
    }

    /** The platform's own PostScript printer stands for one of metal: it counts the pages it was given. */
    @Test
    void everyPageReachesThePrinter() throws Exception {
        var paper = QuotePdf.write(WetSwitches.quote(), Optional.empty(), Papers.text(), PageFormat.LETTER);
        var out = new ByteArrayOutputStream();
        var factories = StreamPrintServiceFactory.lookupStreamPrintServiceFactories(PAGES, "application/postscript");
        assertThat(factories).isNotEmpty();
        var service = factories[0].getPrintService(out);
        var printer = new PaperPrinter(service);
        printer.print("Q-2026-0001-copy", paper);
        var postscript = out.toString(StandardCharsets.ISO_8859_1);
        try (var document = Loader.loadPDF(paper)) {
            assertThat(postscript.split("%%Page: ", -1)).hasSize(document.getNumberOfPages() + 1);
        }
        assertThat(postscript).startsWith("%!PS-Adobe");
        assertThat(printer.name()).isNotBlank();
    }
}

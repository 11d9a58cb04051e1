package fairflame.document;

import fairflame.Refusal;
import java.io.IOException;
import java.util.Arrays;
import java.util.Optional;
import javax.print.DocFlavor;
import javax.print.PrintException;
import javax.print.PrintService;
import javax.print.PrintServiceLookup;
import javax.print.SimpleDoc;
import javax.print.attribute.HashPrintRequestAttributeSet;
import javax.print.attribute.standard.JobName;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.printing.PDFPageable;

/** Sends papers to a printer of this computer, its pages drawn here. */
public final class PaperPrinter {
    private static final DocFlavor PAGES = DocFlavor.SERVICE_FORMATTED.PAGEABLE;

    private final PrintService service;

    /** A printer that takes pages. */
    public PaperPrinter(PrintService service) {
        this.service = service;
    }

    /** The computer's own choice of printer, else the first there is; refused, saying what to do, when there is none. */
    public static PaperPrinter ofThisComputer() {
        var chosen = Optional.ofNullable(PrintServiceLookup.lookupDefaultPrintService())
                .filter(service -> service.isDocFlavorSupported(PAGES));
        return chosen.or(() -> Arrays.stream(PrintServiceLookup.lookupPrintServices(PAGES, null))
                        .findFirst())
                .map(PaperPrinter::new)
                .orElseThrow(() -> Refusal.unusable(
                        "printer",
                        "none",
                        "a printer that is set up on this computer; until then take the paper to a folder or as an"
                                + " e-mail draft and print it elsewhere"));
    }

    /** The printer's name as this computer knows it. */
    public String name() {
        return service.getName();
    }

    /**
     * Prints a paper; returns when the printer has taken it. Takes seconds.
     *
     * @param name of the job
     */
    public void print(String name, byte[] pdf) {
        try (var document = Loader.loadPDF(pdf)) {
            var wishes = new HashPrintRequestAttributeSet(new JobName(name, null));
            service.createPrintJob().print(new SimpleDoc(new PDFPageable(document), PAGES, null), wishes);
        } catch (IOException e) {
            throw new IllegalStateException("a paper of our own cannot be read", e);
        } catch (PrintException e) {
            throw Refusal.unusable(
                    "printer", name(), "a printer that is switched on and has paper (" + e.getMessage() + ")");
        }
    }
}

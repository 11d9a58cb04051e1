package fairflame.visit;

import fairflame.agreement.CanonicalForm;
import fairflame.agreement.SignedRevision;
import fairflame.document.InvoicePdf;
import fairflame.document.QuotePdf;
import fairflame.document.StopWorkPdf;
import fairflame.document.page.PageFormat;
import fairflame.invoice.Invoice;
import fairflame.quote.Quote;
import fairflame.quote.StopWorkSheet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The files that a use case leaves in the folder: for people, for the office and for programs. */
final class Papers {
    private final Workplace workplace;
    private final PageFormat format;
    private final String language;

    Papers(Workplace workplace) {
        this(workplace, PageFormat.LETTER, Library.ENGLISH);
    }

    Papers(Workplace workplace, PageFormat format, String language) {
        this.workplace = workplace;
        this.format = format;
        this.language = language;
    }

    /** PDF, spreadsheet and data of a quote; names of the files written. */
    List<String> quote(Quote quote) {
        return write(quote.number(), quote(quote, Optional.empty()), quote);
    }

    /** The signed paper of a revision. */
    List<String> signed(SignedRevision signed) {
        var quote = signed.quote();
        return write(quote.number() + "-signed", quote(quote, Optional.of(signed)), signed);
    }

    List<String> invoice(Invoice invoice) {
        var text = workplace.library().paper(language);
        return write(invoice.number(), InvoicePdf.write(invoice, text, format), invoice);
    }

    /** A sheet has no spreadsheet: nothing on it can be counted. */
    List<String> stopWork(StopWorkSheet sheet) {
        var name = sheet.visit() + "-stop-work";
        var files = new LinkedHashMap<String, byte[]>();
        files.put(name + ".pdf", StopWorkPdf.write(sheet, workplace.library().paper(language), format));
        files.put(name + ".json", CanonicalForm.write(sheet));
        workplace.folder().write(files);
        return List.copyOf(files.keySet());
    }

    private byte[] quote(Quote quote, Optional<SignedRevision> signed) {
        return QuotePdf.write(quote, signed, workplace.library().paper(language), format);
    }

    private List<String> write(String name, byte[] pdf, Record data) {
        Map<String, byte[]> files = new LinkedHashMap<>();
        files.put(name + ".pdf", pdf);
        files.put(name + ".json", CanonicalForm.write(data));
        workplace.folder().write(files);
        return List.copyOf(files.keySet());
    }
}

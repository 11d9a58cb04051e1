package fairflame.visit;

import fairflame.agreement.CanonicalForm;
import fairflame.agreement.SignedRevision;
import fairflame.document.AnswerSheet;
import fairflame.document.CompletionCertificatePdf;
import fairflame.document.InvoicePdf;
import fairflame.document.InvoiceXlsx;
import fairflame.document.JsonData;
import fairflame.document.MoneyIn;
import fairflame.document.PaperText;
import fairflame.document.QuotePdf;
import fairflame.document.QuoteXlsx;
import fairflame.document.ReceiptPdf;
import fairflame.document.StopWorkPdf;
import fairflame.document.page.PageFormat;
import fairflame.invoice.Invoice;
import fairflame.quote.Quote;
import fairflame.quote.StopWorkSheet;
import fairflame.store.StoredVisit;
import fairflame.wording.Language;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The files that a use case leaves in the folder: for people, for the office and for programs. */
final class Papers {
    private final Workplace workplace;
    private final PageFormat format;

    Papers(Workplace workplace) {
        this(workplace, PageFormat.LETTER);
    }

    Papers(Workplace workplace, PageFormat format) {
        this.workplace = workplace;
        this.format = format;
    }

    /** PDF, spreadsheet and data of a quote; names of the files written. */
    List<String> quote(Quote quote) {
        return quote(quote.number(), quote, Optional.empty(), quote);
    }

    /** The paper for a customer who is away. */
    byte[] away(Quote quote, AnswerSheet sheet, String language) {
        return QuotePdf.away(quote, sheet, text(language), format, pictures(quote));
    }

    /** The signed paper of a revision. */
    List<String> signed(SignedRevision signed) {
        return quote(signed.quote().number() + "-signed", signed.quote(), Optional.of(signed), signed);
    }

    /** PDF, spreadsheet and data of an invoice, and the record of completion where the work is complete. */
    List<String> invoice(Invoice invoice) {
        var text = text(language(invoice));
        var files = files(
                invoice.number(),
                InvoicePdf.write(invoice, text, format),
                InvoiceXlsx.write(
                        invoice,
                        text,
                        format,
                        workplace.library().spreadsheets().invoice()),
                invoice);
        // A credit note carries the record of what it takes back; it proves no work of its own.
        boolean work = invoice.kind() != Invoice.Kind.CREDIT;
        if (work && invoice.complete() && !invoice.completion().tests().isEmpty()) {
            files.put(invoice.number() + "-completion.pdf", CompletionCertificatePdf.write(invoice, text, format));
        }
        return written(files);
    }

    /** The receipt for a payment, named after it. */
    List<String> receipt(MoneyIn money, String payment) {
        var text = text(money.signed().quote().language());
        return written(Map.of(payment + ".pdf", ReceiptPdf.write(money, payment, text, format)));
    }

    /** Whatever follows from a quote speaks the language of the quote. */
    private String language(Invoice invoice) {
        return workplace
                .store()
                .reading(records -> records.quotes().find(invoice.quote(), invoice.revision()))
                .map(Quote::language)
                .orElse(Language.ENGLISH.code());
    }

    /** A sheet has no spreadsheet: nothing on it can be counted. */
    List<String> stopWork(StopWorkSheet sheet, Language language) {
        var name = sheet.visit() + "-stop-work";
        var files = new LinkedHashMap<String, byte[]>();
        files.put(name + ".pdf", StopWorkPdf.write(sheet, text(language.code()), format));
        files.put(name + ".json", JsonData.readable(CanonicalForm.write(sheet)));
        return written(files);
    }

    private List<String> quote(String name, Quote quote, Optional<SignedRevision> signed, Record data) {
        return written(files(
                name,
                QuotePdf.write(quote, signed, text(quote.language()), format, pictures(quote)),
                QuoteXlsx.write(
                        quote,
                        signed,
                        text(quote.language()),
                        format,
                        workplace.library().spreadsheets().quote()),
                data));
    }

    /** The signed paper alone. */
    byte[] signedPdf(SignedRevision signed) {
        return QuotePdf.write(
                signed.quote(), Optional.of(signed), text(signed.quote().language()), format, pictures(signed.quote()));
    }

    private QuotePdf.Pictures pictures(Quote quote) {
        return workplace.store().reading(records -> {
            var visit = records.visits().find(quote.visit()).map(StoredVisit::text);
            return new QuotePdf.Pictures(
                    new QuoteDrawing(workplace.library()).of(quote, visit),
                    Photos.files(records, quote.visit(), quote.photos()));
        });
    }

    private PaperText text(String language) {
        return workplace.library().paper(language);
    }

    private static Map<String, byte[]> files(String name, byte[] pdf, byte[] sheet, Record data) {
        var files = new LinkedHashMap<String, byte[]>();
        files.put(name + ".pdf", pdf);
        files.put(name + ".xlsx", sheet);
        files.put(name + ".json", JsonData.readable(CanonicalForm.write(data)));
        return files;
    }

    private List<String> written(Map<String, byte[]> files) {
        workplace.folder().write(files);
        return List.copyOf(files.keySet());
    }
}

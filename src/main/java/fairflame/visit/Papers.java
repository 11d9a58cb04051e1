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
import fairflame.store.Records;
import fairflame.store.StoredVisit;
import fairflame.wording.Language;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;

/** The files that a use case leaves in the folder, by name: for people, for the office and for programs. */
final class Papers {
    private final Workplace workplace;
    private final Progress progress;
    private final PageFormat format = PageFormat.LETTER;

    /** Papers of a shop; who looks on is asked between two of them. */
    Papers(Workplace workplace, Progress progress) {
        this.workplace = workplace;
        this.progress = progress;
    }

    /**
     * PDF, spreadsheet and data of a quote.
     *
     * @param visit text of the visit as it is stored beside the quote
     */
    Map<String, byte[]> quote(Quote quote, Optional<String> visit) {
        return quote(quote.number(), quote, Optional.empty(), pictures(quote, records -> visit), quote);
    }

    /** The paper for a customer who is away. */
    byte[] away(Quote quote, AnswerSheet sheet, String language) {
        return QuotePdf.away(quote, sheet, text(language), format, pictures(quote));
    }

    /** PDF, spreadsheet and data of a signed revision. */
    Map<String, byte[]> signed(SignedRevision signed) {
        var quote = signed.quote();
        return quote(quote.number() + "-signed", quote, Optional.of(signed), pictures(quote), signed);
    }

    /** PDF, spreadsheet and data of an invoice, and the record of completion where the work is complete. */
    Map<String, byte[]> invoice(Invoice invoice) {
        var text = text(language(invoice));
        var sheet = workplace.library().spreadsheets().invoice();
        var papers = papers(
                invoice.number(),
                () -> InvoicePdf.write(invoice, text, format),
                () -> InvoiceXlsx.write(invoice, text, format, sheet),
                invoice);
        // A credit note carries the record of what it takes back; it proves no work of its own.
        boolean work = invoice.kind() != Invoice.Kind.CREDIT;
        if (work && invoice.complete() && !invoice.completion().tests().isEmpty()) {
            papers.put(
                    invoice.number() + "-completion.pdf", () -> CompletionCertificatePdf.write(invoice, text, format));
        }
        return made(papers);
    }

    /** The receipt for a payment, named after it. */
    Map<String, byte[]> receipt(MoneyIn money, String payment) {
        var text = text(money.signed().quote().language());
        return made(Map.of(payment + ".pdf", () -> ReceiptPdf.write(money, payment, text, format)));
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
    Map<String, byte[]> stopWork(StopWorkSheet sheet, Language language) {
        var name = sheet.visit() + "-stop-work";
        var papers = new LinkedHashMap<String, Supplier<byte[]>>();
        papers.put(name + ".pdf", () -> StopWorkPdf.write(sheet, text(language.code()), format));
        papers.put(name + ".json", () -> data(sheet));
        return made(papers);
    }

    private Map<String, byte[]> quote(
            String name, Quote quote, Optional<SignedRevision> signed, QuotePdf.Pictures pictures, Record data) {
        var text = text(quote.language());
        var sheet = workplace.library().spreadsheets().quote();
        return made(papers(
                name,
                () -> QuotePdf.write(quote, signed, text, format, pictures),
                () -> QuoteXlsx.write(quote, signed, text, format, sheet),
                data));
    }

    /** The signed paper alone. */
    byte[] signedPdf(SignedRevision signed) {
        return QuotePdf.write(
                signed.quote(), Optional.of(signed), text(signed.quote().language()), format, pictures(signed.quote()));
    }

    private QuotePdf.Pictures pictures(Quote quote) {
        return pictures(quote, records -> records.visits().find(quote.visit()).map(StoredVisit::text));
    }

    private QuotePdf.Pictures pictures(Quote quote, Function<Records, Optional<String>> visit) {
        return workplace
                .store()
                .reading(records -> new QuotePdf.Pictures(
                        new QuoteDrawing(workplace.library()).of(quote, visit.apply(records)),
                        Photos.files(records, quote.visit(), quote.photos())));
    }

    private PaperText text(String language) {
        return workplace.library().paper(language);
    }

    private static Map<String, Supplier<byte[]>> papers(
            String name, Supplier<byte[]> pdf, Supplier<byte[]> sheet, Record data) {
        var papers = new LinkedHashMap<String, Supplier<byte[]>>();
        papers.put(name + ".pdf", pdf);
        papers.put(name + ".xlsx", sheet);
        papers.put(name + ".json", () -> data(data));
        return papers;
    }

    private static byte[] data(Record data) {
        return JsonData.readable(CanonicalForm.write(data));
    }

    /** One paper after the other; between two of them the work can be ended. */
    private Map<String, byte[]> made(Map<String, Supplier<byte[]>> papers) {
        var files = new LinkedHashMap<String, byte[]>();
        papers.forEach((name, paper) -> {
            progress.at(files.size(), papers.size());
            files.put(name, paper.get());
        });
        progress.at(papers.size(), papers.size());
        return files;
    }
}

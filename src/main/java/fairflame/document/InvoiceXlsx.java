package fairflame.document;

import fairflame.document.page.PageFormat;
import fairflame.document.sheet.Facts;
import fairflame.document.sheet.Template;
import fairflame.document.sheet.Value;
import fairflame.invoice.Invoice;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** An invoice, part invoice or credit note as a spreadsheet of live formulas. */
public final class InvoiceXlsx {
    private final Invoice invoice;
    private final PaperText text;

    private InvoiceXlsx(Invoice invoice, PaperText text) {
        this.invoice = invoice;
        this.text = text;
    }

    /**
     * The file's bytes: the same for the same invoice, words and template. Formulas carry their values.
     *
     * @throws fairflame.Refusal naming file, sheet and cell, when a formula of the template does not come to the cents
     *     of the invoice
     */
    public static byte[] write(Invoice invoice, PaperText text, PageFormat format, Template template) {
        var paper = new InvoiceXlsx(invoice, text);
        var sign = text.figures().sign(invoice.currency());
        var foot = SheetFacts.running(InvoicePaper.number(invoice, text));
        try (var book = template.filled(paper.pages(), paper.facts(Map.of(), Set.of()), sign, foot)) {
            SheetFacts.paper(book, format);
            var title = text.say(InvoicePdf.title(invoice.kind())) + " " + invoice.number();
            return XlsxFile.write(book, title, invoice.seller().name(), invoice.issued());
        } catch (IOException e) {
            throw new UncheckedIOException("spreadsheet could not be closed", e);
        }
    }

    private List<Template.Page> pages() {
        var payments = invoice.payments().stream()
                .map(payment -> Map.of(
                        "payment.words", Value.words(InvoicePdf.paid(payment, text)),
                        "payment.amount",
                                Value.number(
                                        payment.amount().getAmount(),
                                        text.figures().money(payment.amount()))))
                .toList();
        var items = new ItemFacts(new Items(invoice.lines(), invoice.totals(), invoice.taxRule()), text);
        var once = new HashMap<>(once());
        once.put("sum.balance", items.money(invoice.balance()));
        once.put("sum.favour", items.money(invoice.balance().negated()));
        var holds = Set.of(invoice.balance().isNegative() ? "in-favour" : "owed");
        var name = text.say(InvoicePdf.title(invoice.kind()));
        return List.of(
                new Template.Page(SheetNames.INVOICE, name, items.with(once, Map.of("payment", payments), holds)),
                new Template.Page(
                        SheetNames.REASONS,
                        text.say(Label.SHEET_REASONS),
                        facts(Map.of("reason", ItemFacts.reasons("", invoice.lines(), text)), holds)));
    }

    private Facts facts(Map<String, List<Map<String, Value>>> each, Set<String> holds) {
        return new Facts(once(), each, Map.of(), holds);
    }

    private Map<String, Value> once() {
        var figures = text.figures();
        var subtitle = invoice.kind() == Invoice.Kind.CREDIT
                ? text.say(Label.CREDIT_SUBTITLE, invoice.corrects())
                : text.say(Label.INVOICE_SUBTITLE, invoice.quote(), Integer.toString(invoice.revision()));
        return new SheetFacts(text)
                .seller(invoice.seller(), invoice.sellerLicence())
                .customer(invoice.customer(), invoice.site())
                .with("title", text.say(InvoicePdf.title(invoice.kind())))
                .with("foot", InvoicePaper.number(invoice, text))
                .with("invoice.number", invoice.number())
                .with("invoice.for", subtitle)
                .with("invoice.work", invoice.title())
                .with("invoice.issued", figures.date(invoice.issued()))
                .with("invoice.supplied", figures.date(invoice.supplied()))
                .with("invoice.due", figures.date(invoice.due()))
                .with("quote.number", invoice.quote())
                .with("quote.revision", Integer.toString(invoice.revision()))
                .values();
    }
}

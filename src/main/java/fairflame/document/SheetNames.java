package fairflame.document;

import fairflame.document.sheet.Vocabulary;
import java.util.Arrays;

/** The names that the cells of each sheet may use. Described in docs/formats/spreadsheet.md. */
final class SheetNames {
    static final String OVERVIEW = "Overview";
    static final String CHOICE = "Choice";
    static final String REASONS = "Reasons";
    static final String INVOICE = "Invoice";

    private SheetNames() {}

    private static Vocabulary words() {
        var labels = Arrays.stream(Label.values())
                .filter(label -> label.names().isEmpty())
                .map(label -> "words." + label.key())
                .toArray(String[]::new);
        return Vocabulary.of(labels)
                .with("", "title", "foot", "seller.name", "seller.address", "seller.phone", "seller.email")
                .with("", "seller.licence", "customer.name", "customer.address", "customer", "site");
    }

    /** What stands once on any sheet of a quote. */
    static Vocabulary ofQuote() {
        return words().with("", "quote.number", "quote.revision", "quote.made", "quote.valid-until", "heater", "found")
                .depending("signed", "unsigned", "noticed");
    }

    static Vocabulary overview() {
        return ofQuote()
                .with("notice", "notice.words")
                .with("choice", "choice.name", "choice.title", "choice.plain", "choice.leaves")
                .with("choice", "choice.deposit", "choice.total")
                .requiring("title", "seller.name", "quote.number", "quote.valid-until", "customer", "found")
                .requiring("notice.words", "choice.name", "choice.title", "choice.deposit", "choice.total");
    }

    static Vocabulary choice() {
        return ofQuote()
                .with("", "choice.name", "choice.title", "choice.plain", "choice.leaves", "choice.deposit")
                .and(items())
                .requiring("choice.name", "foot")
                .requiring(items().required().toArray(String[]::new));
    }

    /** What stands once on any sheet of an invoice. */
    static Vocabulary ofInvoice() {
        return words().with("", "invoice.number", "invoice.for", "invoice.issued", "invoice.supplied", "invoice.due")
                .with("", "invoice.work", "quote.number", "quote.revision")
                .depending("owed", "in-favour");
    }

    static Vocabulary invoice() {
        return ofInvoice()
                .with("payment", "payment.words", "payment.amount")
                .with("", "sum.balance", "sum.favour")
                .and(items())
                .requiring("title", "seller.name", "invoice.number", "invoice.issued", "invoice.due", "customer.name")
                .requiring("payment.words", "payment.amount", "sum.balance", "sum.favour")
                .requiring(items().required().toArray(String[]::new));
    }

    private static Vocabulary items() {
        return Vocabulary.of("sum.subtotal", "sum.discount", "sum.tax", "sum.total")
                .with("line", "line.id", "line.kind", "line.item", "line.description", "line.quantity", "line.unit")
                .with("line", "line.price", "line.net", "line.taxed", "line.discount")
                .with("tax", "tax.name", "tax.rate", "tax.base", "tax.amount", "tax.of-line")
                .with("line, tax", "line.tax")
                .with("rounding", "rounding.words")
                .depending("discounted", "taxed", "tax-by-line", "tax-on-document", "rounded-nearest", "rounded-down")
                .requiring("line.description", "line.quantity", "line.price", "line.net", "line.discount")
                .requiring("tax.name", "tax.rate", "tax.amount", "sum.subtotal", "sum.discount", "sum.total");
    }

    static Vocabulary reasons(Vocabulary once) {
        return once.with("reason", "reason.choice", "reason.line", "reason.ground", "reason.words", "reason.source")
                .requiring("reason.line", "reason.words", "reason.source");
    }
}

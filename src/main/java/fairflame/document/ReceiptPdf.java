package fairflame.document;

import fairflame.Refusal;
import fairflame.document.page.Block;
import fairflame.document.page.PageFormat;
import fairflame.document.page.Paragraph;
import fairflame.document.page.Space;
import fairflame.document.page.Stack;
import fairflame.invoice.Invoice;
import fairflame.invoice.Payment;
import java.util.List;
import org.joda.money.Money;

/** A receipt for one payment on an invoice. */
public final class ReceiptPdf {
    private ReceiptPdf() {}

    /**
     * The file's bytes: the same for the same invoice, payment, words and format.
     *
     * @param payment id of the payment
     * @throws Refusal when the invoice has no such payment
     */
    public static byte[] write(Invoice invoice, String payment, PaperText text, PageFormat format) {
        var ids = invoice.payments().stream().map(Payment::id).toList();
        int at = ids.indexOf(payment);
        if (at < 0) {
            throw Refusal.unknown("payment", payment, ids.isEmpty() ? "no payment yet" : String.join(", ", ids));
        }
        var paid = invoice.payments().get(at);
        var title = new TitleBlock(text.say(Label.RECEIPT), text.say(Label.RECEIPT_SUBTITLE, invoice.number()))
                .with(text.say(Label.NUMBER), paid.id())
                .with(text.say(Label.DATE), text.figures().date(paid.on()))
                .with(text.say(Label.METHOD), text.word("methods", paid.method()));
        if (!paid.reference().isBlank()) {
            title.with(text.say(Label.REFERENCE), paid.reference());
        }
        var upToHere = invoice.payments().subList(0, at + 1).stream()
                .map(Payment::amount)
                .reduce(Money.zero(invoice.currency()), Money::plus);
        var left = invoice.totals().total().minus(upToHere);
        var name = text.say(Label.RECEIPT) + " " + paid.id();
        return new InvoicePaper(invoice, text).write(title, name, content(paid, left, text), format);
    }

    private static List<Block> content(Payment paid, Money left, PaperText text) {
        var figures = text.figures();
        return List.of(
                Words.section(text.say(Label.RECEIVED, figures.money(paid.amount()))),
                new Space(4),
                Stack.of(Words.label(text.say(Label.BALANCE_AFTER)), Paragraph.of(figures.money(left), Type.TOTAL)));
    }
}

package fairflame.document;

import fairflame.Refusal;
import fairflame.document.page.Block;
import fairflame.document.page.Ink;
import fairflame.document.page.PageFormat;
import fairflame.document.page.Paragraph;
import fairflame.document.page.Space;
import fairflame.document.page.Stack;
import fairflame.document.page.Text;
import fairflame.document.page.Together;
import fairflame.invoice.Invoice;
import java.util.ArrayList;
import java.util.List;

/** The record of tests after the repair that the customer keeps. Carries no price. */
public final class CompletionCertificatePdf {
    private CompletionCertificatePdf() {}

    /**
     * The file's bytes: the same for the same invoice, words and format.
     *
     * @throws Refusal when the work is not complete or a test lead is not recorded as removed
     */
    public static byte[] write(Invoice invoice, PaperText text, PageFormat format) {
        if (invoice.kind() == Invoice.Kind.CREDIT) {
            throw Refusal.notAllowed("completion record", "credit note " + invoice.number(), "the invoice of the work");
        }
        if (!invoice.complete()) {
            throw Refusal.notAllowed("completion record", "work not complete", "an invoice of completed work");
        }
        if (!invoice.completion().leadsRemoved()) {
            throw Refusal.notAllowed("completion record", "test lead in place", "every bypass lead removed");
        }
        var title = new TitleBlock(text.say(Label.CERTIFICATE), text.say(Label.CERTIFICATE_SUBTITLE, invoice.quote()))
                .with(text.say(Label.INVOICE), invoice.number())
                .with(text.say(Label.SUPPLIED), text.figures().date(invoice.supplied()));
        var name = text.say(Label.CERTIFICATE) + " " + invoice.number();
        return new InvoicePaper(invoice, text).write(title, name, content(invoice, text), format);
    }

    private static List<Block> content(Invoice invoice, PaperText text) {
        var words = text.say(
                Label.CERTIFICATE_WORDS,
                invoice.quote(),
                Integer.toString(invoice.revision()),
                text.figures().date(invoice.supplied()));
        var blocks = new ArrayList<Block>();
        blocks.add(Words.section(invoice.title()));
        blocks.add(Paragraph.of(
                Text.of("\u2713 ", Type.FINDING.with(Ink.MOSS)).and(text.say(Label.COMPLETE), Type.FINDING)));
        blocks.add(new Space(4));
        blocks.add(Paragraph.of(words, Type.TEXT));
        blocks.add(new Space(10));
        blocks.add(new CompletionBlock(invoice.completion(), text).block());
        blocks.add(new Space(18));
        blocks.add(new Together(Stack.of(
                Words.label(text.say(Label.FOR_THE_SHOP, invoice.seller().name())), new SignatureBlock(text).empty())));
        return blocks;
    }
}

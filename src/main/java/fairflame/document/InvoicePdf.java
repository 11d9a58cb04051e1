package fairflame.document;

import fairflame.document.page.Block;
import fairflame.document.page.Framed;
import fairflame.document.page.Heading;
import fairflame.document.page.Ink;
import fairflame.document.page.PageFormat;
import fairflame.document.page.Paragraph;
import fairflame.document.page.Space;
import fairflame.document.page.Stack;
import fairflame.document.page.Stroke;
import fairflame.document.page.Text;
import fairflame.document.page.Together;
import fairflame.invoice.Invoice;
import fairflame.invoice.Payment;
import java.util.ArrayList;
import java.util.List;

/** An invoice, part invoice or credit note on paper. */
public final class InvoicePdf {
    private final Invoice invoice;
    private final PaperText text;
    private final Figures figures;

    private InvoicePdf(Invoice invoice, PaperText text) {
        this.invoice = invoice;
        this.text = text;
        this.figures = text.figures();
    }

    /** The file's bytes: the same for the same invoice, words and format. */
    public static byte[] write(Invoice invoice, PaperText text, PageFormat format) {
        var paper = new InvoicePdf(invoice, text);
        var name = paper.title() + " " + invoice.number();
        return new InvoicePaper(invoice, text).write(paper.titleBlock(), name, paper.content(), format);
    }

    static Label title(Invoice.Kind kind) {
        return switch (kind) {
            case FULL -> Label.INVOICE;
            case PART -> Label.PART_INVOICE;
            case CREDIT -> Label.CREDIT_NOTE;
        };
    }

    private String title() {
        return text.say(title(invoice.kind()));
    }

    private TitleBlock titleBlock() {
        boolean credit = invoice.kind() == Invoice.Kind.CREDIT;
        var subtitle = credit
                ? text.say(Label.CREDIT_SUBTITLE, invoice.corrects())
                : text.say(Label.INVOICE_SUBTITLE, invoice.quote(), Integer.toString(invoice.revision()));
        var block = new TitleBlock(title(), subtitle)
                .with(text.say(Label.NUMBER), invoice.number())
                .with(text.say(Label.ISSUED), figures.date(invoice.issued()))
                .with(text.say(Label.SUPPLIED), figures.date(invoice.supplied()));
        // Nobody has a day to pay a credit by.
        return credit ? block : block.with(text.say(Label.DUE), figures.date(invoice.due()));
    }

    private List<Block> content() {
        var blocks = new ArrayList<Block>();
        blocks.add(Words.section(invoice.title()));
        if (!invoice.changeOrders().isEmpty()) {
            var numbers = String.join(", ", invoice.changeOrders());
            blocks.add(Paragraph.of(text.say(Label.CHANGE_ORDERS, numbers), Type.TEXT));
        }
        blocks.add(new ItemTable(invoice.lines(), text).block());
        blocks.add(new Space(8));
        blocks.add(totals());
        blocks.add(new Space(12));
        if (invoice.kind() != Invoice.Kind.CREDIT) {
            blocks.add(payment());
            blocks.add(new Space(14));
            blocks.addAll(completion());
        }
        if (!invoice.notes().isEmpty()) {
            blocks.add(new Together(Stack.of(Words.section(text.say(notesTitle())), QuotePdf.halved(invoice.notes()))));
        }
        return blocks;
    }

    // What a credit note says besides its lines is why it was written.
    private Label notesTitle() {
        return invoice.kind() == Invoice.Kind.CREDIT ? Label.WHY : Label.CAUTIONS;
    }

    private Block totals() {
        var totals = new TotalsBlock(invoice.totals(), text);
        for (var payment : invoice.payments()) {
            totals.add(paid(payment, text), payment.amount().negated());
        }
        totals.rule();
        boolean credit = invoice.balance().isNegative();
        totals.strong(
                text.say(credit ? Label.CREDIT_BALANCE : Label.BALANCE),
                invoice.balance().abs());
        return totals.block(invoice.lines());
    }

    static String paid(Payment payment, PaperText text) {
        var label = payment.deposit() ? Label.DEPOSIT_PAID : Label.PAYMENT;
        return text.say(label, text.figures().date(payment.on()), text.word("methods", payment.method()));
    }

    private Block payment() {
        boolean owed = invoice.balance().isPositive();
        var words = owed ? text.say(Label.DUE_BY, figures.date(invoice.due())) : text.say(Label.PAID_IN_FULL);
        var blocks = new ArrayList<Block>();
        blocks.add(Paragraph.of(words, Type.HEADING));
        if (owed) {
            blocks.add(new Space(3));
            blocks.add(Words.label(text.say(Label.HOW_TO_PAY)));
            text.company().pay().forEach(line -> blocks.add(Paragraph.of(line, Type.TEXT)));
        }
        return new Together(Framed.of(new Stack(blocks), 10, Ink.PAPER, Stroke.solid(Ink.RULE, 0.8)));
    }

    private List<Block> completion() {
        var blocks = new ArrayList<Block>();
        blocks.add(Words.section(text.say(Label.COMPLETION_TITLE)));
        var words = invoice.complete()
                ? Text.of("\u2713 ", Type.HEADING.with(Ink.MOSS)).and(text.say(Label.COMPLETE), Type.HEADING)
                : Text.of(text.say(Label.NOT_COMPLETE), Type.HEADING.with(Ink.AMBER));
        blocks.add(new Heading(Paragraph.of(words)));
        blocks.add(new Space(5));
        blocks.add(new CompletionBlock(invoice.completion(), text).block());
        blocks.add(new Space(12));
        return blocks;
    }
}

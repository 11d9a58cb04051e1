package fairflame.document;

import fairflame.document.page.Block;
import fairflame.document.page.PageFormat;
import fairflame.document.page.PaperFile;
import fairflame.document.page.PaperInfo;
import fairflame.document.page.Paragraph;
import fairflame.document.page.Space;
import fairflame.document.page.Stack;
import fairflame.invoice.Invoice;
import java.util.ArrayList;
import java.util.List;

/** What every paper made from an invoice shares: letterhead, people, foot, file. */
final class InvoicePaper {
    private static final int SHORT_SEAL = 12;

    private final Invoice invoice;
    private final PaperText text;

    InvoicePaper(Invoice invoice, PaperText text) {
        this.invoice = invoice;
        this.text = text;
    }

    byte[] write(TitleBlock title, String name, List<Block> content, PageFormat format) {
        var blocks = new ArrayList<Block>();
        blocks.add(Letterhead.of(invoice.seller(), invoice.sellerLicence(), text.company()));
        blocks.add(new Space(14));
        blocks.add(title.block());
        blocks.add(Parties.of(Label.BILL_TO, invoice.customer(), invoice.site(), work(), text));
        blocks.addAll(content);
        var info = new PaperInfo(name, invoice.seller().name(), text.language(), invoice.issued());
        var running =
                new RunningLines(invoice.seller().name(), invoice.customer().name(), foot(), text);
        return new PaperFile(info, format, running).write(new Stack(blocks));
    }

    private Block work() {
        return Stack.of(Words.label(text.say(Label.THE_WORK)), Paragraph.of(invoice.title(), Type.TEXT));
    }

    private String foot() {
        var quote = text.say(Label.FOOT_QUOTE, invoice.quote(), Integer.toString(invoice.revision()));
        var seal = invoice.seal().length() > SHORT_SEAL ? invoice.seal().substring(0, SHORT_SEAL) : invoice.seal();
        return String.join("  \u00B7  ", number(invoice, text), quote, text.say(Label.FOOT_SEAL, seal));
    }

    /** What the paper is and its number, as its foot says it. */
    static String number(Invoice invoice, PaperText text) {
        var label = invoice.kind() == Invoice.Kind.CREDIT ? Label.FOOT_CREDIT : Label.FOOT_INVOICE;
        return text.say(label, invoice.number());
    }
}

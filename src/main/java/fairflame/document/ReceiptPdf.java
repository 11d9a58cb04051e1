package fairflame.document;

import fairflame.Refusal;
import fairflame.document.page.Block;
import fairflame.document.page.PageFormat;
import fairflame.document.page.PaperFile;
import fairflame.document.page.PaperInfo;
import fairflame.document.page.Paragraph;
import fairflame.document.page.Space;
import fairflame.document.page.Stack;
import fairflame.invoice.Payment;
import fairflame.quote.Quote;
import java.util.ArrayList;
import java.util.List;

/** A receipt for one payment on an invoice, or for a deposit on a signed quote. */
public final class ReceiptPdf {
    private final MoneyIn money;
    private final Quote quote;
    private final Payment paid;
    private final PaperText text;

    private ReceiptPdf(MoneyIn money, Payment paid, PaperText text) {
        this.money = money;
        this.quote = money.signed().quote();
        this.paid = paid;
        this.text = text;
    }

    /**
     * The file's bytes: the same for the same money, payment, words and format.
     *
     * @param payment id of the payment
     * @throws Refusal when there is no such payment
     */
    public static byte[] write(MoneyIn money, String payment, PaperText text, PageFormat format) {
        return new ReceiptPdf(money, money.payment(payment), text).file(format);
    }

    private byte[] file(PageFormat format) {
        var name = text.say(Label.RECEIPT) + " " + paid.id();
        var info = new PaperInfo(name, quote.seller().name(), text.language(), paid.on());
        var running = new RunningLines(quote.seller().name(), quote.customer().name(), foot(name), text);
        var work = Stack.of(
                Words.label(text.say(Label.THE_WORK)),
                Paragraph.of(money.signed().taken().title(), Type.TEXT));
        var blocks = new ArrayList<Block>();
        blocks.add(Letterhead.of(quote.seller(), quote.sellerLicence(), text.company()));
        blocks.add(new Space(14));
        blocks.add(title());
        blocks.add(Parties.of(Label.RECEIVED_FROM, quote.customer(), quote.site(), work, text));
        blocks.addAll(amounts());
        return new PaperFile(info, format, running).write(new Stack(blocks));
    }

    private Block title() {
        var subtitle = money.invoice()
                .map(invoice -> text.say(Label.RECEIPT_SUBTITLE, invoice))
                .orElseGet(() -> text.say(Label.DEPOSIT_SUBTITLE, quote.number()));
        var block = new TitleBlock(text.say(Label.RECEIPT), subtitle)
                .with(text.say(Label.NUMBER), paid.id())
                .with(text.say(Label.QUOTE), quote.number())
                .with(text.say(Label.DATE), text.figures().date(paid.on()))
                .with(text.say(Label.METHOD), text.word("methods", paid.method()));
        var noted = paid.reference().isBlank() ? block : block.with(text.say(Label.REFERENCE), paid.reference());
        return noted.block();
    }

    private List<Block> amounts() {
        var figures = text.figures();
        var after = money.after(paid.id());
        var left = money.invoice().isPresent() ? Label.BALANCE_AFTER : Label.LEFT_AFTER_DEPOSIT;
        return List.of(
                Words.section(text.say(Label.RECEIVED, figures.money(paid.amount()))),
                new Space(4),
                Stack.of(
                        Words.label(text.say(after.isNegative() ? Label.CREDIT_BALANCE : left)),
                        Paragraph.of(figures.money(after.abs()), Type.TOTAL)));
    }

    private String foot(String name) {
        return String.join(
                "  \u00B7  ",
                name,
                text.say(Label.FOOT_QUOTE, quote.number(), Integer.toString(quote.revision())),
                text.say(Label.FOOT_SEAL, money.signed().seal().brief()));
    }
}

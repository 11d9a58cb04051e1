package fairflame.document;

import fairflame.agreement.SignedRevision;
import fairflame.document.page.Block;
import fairflame.document.page.Columns;
import fairflame.document.page.Drawing;
import fairflame.document.page.Grid;
import fairflame.document.page.Ink;
import fairflame.document.page.PageFormat;
import fairflame.document.page.PaperFile;
import fairflame.document.page.PaperInfo;
import fairflame.document.page.Picture;
import fairflame.document.page.Row;
import fairflame.document.page.Space;
import fairflame.document.page.Stack;
import fairflame.document.page.Together;
import fairflame.quote.Quote;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A quote on paper, unsigned or signed. */
public final class QuotePdf {
    private final Quote quote;
    private final Optional<SignedRevision> signed;
    private final PaperText text;
    private final PrintedNotes notes;
    private final Optional<AnswerSheet> asked;

    private QuotePdf(Quote quote, Optional<SignedRevision> signed, Optional<AnswerSheet> asked, PaperText text) {
        this.quote = quote;
        this.signed = signed;
        this.asked = asked;
        this.text = text;
        this.notes = new PrintedNotes(quote, text);
    }

    /**
     * What is drawn beside the words.
     *
     * @param gasLine after the finding, over the whole width of the text
     * @param photos files by digest; those that the quote shows are printed
     */
    public record Pictures(Optional<Drawing> gasLine, Map<String, byte[]> photos) {
        public static final Pictures NONE = new Pictures(Optional.empty(), Map.of());

        public Pictures {
            photos = Map.copyOf(photos);
        }
    }

    /** The file's bytes: the same for the same quote, words and format. */
    public static byte[] write(Quote quote, Optional<SignedRevision> signed, PaperText text, PageFormat format) {
        return write(quote, signed, text, format, Pictures.NONE);
    }

    /** The same with a drawing of the gas line after the finding. */
    public static byte[] write(
            Quote quote,
            Optional<SignedRevision> signed,
            PaperText text,
            PageFormat format,
            Optional<Drawing> gasLine) {
        return write(quote, signed, text, format, new Pictures(gasLine, Map.of()));
    }

    /** The same with all pictures. */
    public static byte[] write(
            Quote quote, Optional<SignedRevision> signed, PaperText text, PageFormat format, Pictures pictures) {
        return new QuotePdf(quote, signed, Optional.empty(), text).file(format, pictures);
    }

    /** The quote for a customer who is away: its last part is an answer to be filled in on the file itself. */
    public static byte[] away(Quote quote, AnswerSheet sheet, PaperText text, PageFormat format, Pictures pictures) {
        return new QuotePdf(quote, Optional.empty(), Optional.of(sheet), text).file(format, pictures);
    }

    private byte[] file(PageFormat format, Pictures pictures) {
        var info = new PaperInfo(title() + " " + quote.number(), quote.seller().name(), text.language(), quote.made());
        var running = new RunningLines(quote.seller().name(), quote.customer().name(), foot(), text);
        return new PaperFile(info, format, running).write(body(pictures));
    }

    private String title() {
        if (signed.isPresent()) {
            return text.say(Label.SIGNED_QUOTE);
        }
        return text.say(quote.repair() ? Label.QUOTE : Label.DIAGNOSIS_QUOTE);
    }

    private String foot() {
        var seal = signed.map(
                        revision -> text.say(Label.FOOT_SEAL, revision.seal().brief()))
                .orElseGet(() -> text.say(Label.FOOT_UNSIGNED));
        return text.say(Label.FOOT_QUOTE, quote.number(), Integer.toString(quote.revision())) + "  \u00B7  " + seal;
    }

    private Block body(Pictures pictures) {
        var blocks = new ArrayList<Block>();
        blocks.add(Letterhead.of(quote.seller(), quote.sellerLicence(), text.company()));
        blocks.add(new Space(14));
        blocks.add(titleBlock());
        blocks.add(Parties.of(
                Label.PREPARED_FOR,
                quote.customer(),
                quote.site(),
                Parties.heater(quote.heater(), quote.place(), text),
                text));
        blocks.add(new FindingBlock(quote.finding(), quote.repair(), text).block());
        new PhotoBlock(text).of(quote.photos(), pictures.photos()).ifPresent(blocks::add);
        pictures.gasLine().ifPresent(drawing -> blocks.add(drawn(drawing)));
        notice(blocks);
        cautions(blocks);
        var taken = signed.map(SignedRevision::choice);
        blocks.add(new ChoiceColumns(quote, taken, text).block());
        var detail = new ChoiceDetail(quote, notes, text);
        quote.choices().forEach(choice -> blocks.add(detail.block(choice)));
        if (asked.isPresent()) {
            blocks.add(terms());
            blocks.add(new Space(10));
            blocks.add(new AnswerForm(quote, asked.get(), text).block(notes.cancel()));
        } else {
            // What is signed and its terms stay on one page.
            blocks.add(new Together(Stack.of(terms(), new Space(10), new Agreement(quote, notes, text).block(signed))));
        }
        if (!notes.cancel().isEmpty()) {
            new CancelNotice(quote, text).block(signed).ifPresent(blocks::add);
        }
        return new Stack(blocks);
    }

    private Block titleBlock() {
        var figures = text.figures();
        var subtitle = quote.repair() ? Label.QUOTE_SUBTITLE : Label.DIAGNOSIS_SUBTITLE;
        return new TitleBlock(title(), text.say(subtitle))
                .with(text.say(Label.NUMBER), quote.number())
                .with(text.say(Label.REVISION), Integer.toString(quote.revision()))
                .with(text.say(Label.DATE), figures.date(quote.made()))
                .with(text.say(Label.VALID_UNTIL), figures.date(quote.validUntil()))
                .block();
    }

    private Block drawn(Drawing drawing) {
        return new Together(Stack.of(Words.section(text.say(Label.GAS_LINE)), new Picture(drawing), new Space(10)));
    }

    private void notice(List<Block> blocks) {
        if (!notes.boxed().isEmpty()) {
            blocks.add(NoticeBox.of(text.say(Label.NOTICE), notes.boxed(), Ink.AMBER));
            blocks.add(new Space(12));
        }
    }

    private void cautions(List<Block> blocks) {
        if (!notes.cautions().isEmpty()) {
            blocks.add(new Together(Stack.of(Words.section(text.say(Label.CAUTIONS)), halved(notes.cautions()))));
            blocks.add(new Space(8));
        }
        if (!quote.assumed().isEmpty()) {
            blocks.add(new Together(Stack.of(
                    Words.section(text.say(Label.ASSUMED)), Bullets.marked("\u2022", quote.assumed(), Type.OPEN))));
            blocks.add(new Space(8));
        }
    }

    private Block terms() {
        return new Together(Stack.of(Words.section(text.say(Label.TERMS_TITLE)), halved(quote.terms())));
    }

    /** Short sentences in two columns, row by row, so that they break over pages in reading order. */
    static Block halved(List<String> sentences) {
        var rows = new ArrayList<Row>();
        for (int i = 0; i < sentences.size(); i += 2) {
            var cells = new ArrayList<Block>();
            for (var sentence : sentences.subList(i, Math.min(i + 2, sentences.size()))) {
                cells.add(Bullets.led(List.of(sentence), Type.SMALL));
            }
            if (cells.size() == 1) {
                cells.add(new Stack(List.of()));
            }
            rows.add(Row.of(cells).padded(0, 2));
        }
        return new Grid(Columns.equal(2, 18), List.of(), rows, Grid.Kind.LAYOUT);
    }
}

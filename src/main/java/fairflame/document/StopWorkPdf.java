package fairflame.document;

import fairflame.document.page.Block;
import fairflame.document.page.Framed;
import fairflame.document.page.Ink;
import fairflame.document.page.PageFormat;
import fairflame.document.page.PaperFile;
import fairflame.document.page.PaperInfo;
import fairflame.document.page.Paragraph;
import fairflame.document.page.Role;
import fairflame.document.page.Space;
import fairflame.document.page.Stack;
import fairflame.document.page.Stroke;
import fairflame.document.page.Style;
import fairflame.document.page.Text;
import fairflame.document.page.Together;
import fairflame.quote.StopWorkSheet;
import java.util.ArrayList;
import java.util.List;

/** The sheet that is handed over instead of a price when the evidence is dangerous. */
public final class StopWorkPdf {
    private static final Style HEADLINE = Type.SECTION.sized(17).with(Ink.OXIDE);
    private static final Style ADVICE = Type.TEXT.sized(12);

    private final StopWorkSheet sheet;
    private final PaperText text;

    private StopWorkPdf(StopWorkSheet sheet, PaperText text) {
        this.sheet = sheet;
        this.text = text;
    }

    /** The file's bytes: the same for the same sheet, words and format. */
    public static byte[] write(StopWorkSheet sheet, PaperText text, PageFormat format) {
        var seller = sheet.seller().name();
        var info = new PaperInfo(
                text.say(Label.STOP_WORK) + " " + sheet.visit(),
                seller,
                text.language(),
                sheet.at().toLocalDate());
        var running =
                new RunningLines(seller, sheet.customer().name(), text.say(Label.FOOT_VISIT, sheet.visit()), text);
        return new PaperFile(info, format, running).write(new StopWorkPdf(sheet, text).body());
    }

    private Block body() {
        var blocks = new ArrayList<Block>();
        blocks.add(Letterhead.of(sheet.seller(), sheet.sellerLicence(), text.company()));
        blocks.add(new Space(14));
        blocks.add(titleBlock());
        blocks.add(Parties.of(Label.PREPARED_FOR, sheet.customer(), sheet.site(), heater(), text));
        blocks.add(NoticeBox.around(dangers(), Ink.OXIDE));
        blocks.add(new Space(12));
        listed(blocks, Label.STOP_DONE, sheet.done());
        blocks.add(Bullets.marked("\u2022", sheet.always(), Type.STRONG));
        blocks.add(new Space(8));
        blocks.add(receipt());
        return new Stack(blocks);
    }

    private Block titleBlock() {
        var figures = text.figures();
        return new TitleBlock(text.say(Label.STOP_WORK), text.say(Label.STOP_WORK_SUBTITLE))
                .with(text.say(Label.VISIT), sheet.visit())
                .with(text.say(Label.DATE), figures.date(sheet.at().toLocalDate()))
                .with(text.say(Label.TIME), figures.clock(sheet.at()) + " (" + figures.zone(sheet.at()) + ")")
                .block();
    }

    private Block heater() {
        return Stack.of(Words.label(text.say(Label.HEATER)), Paragraph.of(Parties.capital(sheet.heater()), Type.TEXT));
    }

    private Block dangers() {
        var inside = new ArrayList<Block>();
        inside.add(Paragraph.heading(Role.HEADING_2, sheet.headline(), HEADLINE));
        for (var danger : sheet.dangers()) {
            inside.add(new Space(8));
            inside.add(Words.label(text.say(Label.STOP_FOUND)));
            inside.add(Paragraph.of(Text.of(danger.title() + ". ", Type.STRONG).and(danger.found(), Type.TEXT)));
            inside.add(new Space(6));
            inside.add(Words.label(text.say(Label.STOP_ADVICE)));
            inside.add(Bullets.numbered(danger.advice(), ADVICE));
        }
        return new Stack(inside);
    }

    private void listed(List<Block> blocks, Label label, List<String> sentences) {
        if (!sentences.isEmpty()) {
            blocks.add(Words.section(text.say(label)));
            blocks.add(Bullets.marked("\u2022", sentences, Type.TEXT));
            blocks.add(new Space(6));
        }
    }

    private Block receipt() {
        var inside = Stack.of(
                Words.heading(text.say(Label.RECEIPT_ONLY)),
                new Space(3),
                Paragraph.of(sheet.receipt(), Type.TEXT),
                new SignatureBlock(text).empty());
        return new Together(Framed.of(inside, 12, Ink.WHITE, Stroke.solid(Ink.INK, 1.1)));
    }
}

package fairflame.document;

import fairflame.agreement.Declined;
import fairflame.agreement.SignedRevision;
import fairflame.document.page.Block;
import fairflame.document.page.Columns;
import fairflame.document.page.Framed;
import fairflame.document.page.Grid;
import fairflame.document.page.Ink;
import fairflame.document.page.Paragraph;
import fairflame.document.page.Role;
import fairflame.document.page.Space;
import fairflame.document.page.Stack;
import fairflame.document.page.Stroke;
import fairflame.document.page.Style;
import fairflame.document.page.Text;
import fairflame.document.page.Together;
import fairflame.quote.Quote;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What is being agreed to, right above the line to sign on; signed, what was agreed to, declined and sealed. */
final class Agreement {
    private static final Style CANCEL = Type.STRONG.sized(10.5);

    private final Quote quote;
    private final PrintedNotes notes;
    private final PaperText text;
    private final ChoiceNames names;

    Agreement(Quote quote, PrintedNotes notes, PaperText text) {
        this.quote = quote;
        this.notes = notes;
        this.text = text;
        this.names = new ChoiceNames(quote, text);
    }

    Block block(Optional<SignedRevision> signed) {
        var inside = new ArrayList<Block>();
        inside.add(Paragraph.heading(Role.HEADING_2, text.say(Label.AGREEMENT), Type.SECTION));
        inside.add(new Space(4));
        signed.ifPresentOrElse(revision -> inside.addAll(given(revision)), () -> inside.addAll(asked()));
        var frame = Framed.of(new Stack(inside), 12, Ink.WHITE, Stroke.solid(Ink.INK, 1.1));
        var blocks = new ArrayList<Block>();
        blocks.add(new Together(frame));
        signed.ifPresent(revision -> blocks.addAll(declined(revision.declined())));
        return new Stack(blocks);
    }

    private List<Block> asked() {
        var blocks = new ArrayList<Block>();
        boolean one = quote.choices().size() == 1;
        for (var choice : quote.choices()) {
            var total = text.figures().money(choice.totals().total());
            var words = one
                    ? text.say(Label.AGREE_ONLY, total)
                    : text.say(Label.AGREE_ONE, names.of(choice.id()), choice.title(), total);
            blocks.add(one ? Paragraph.of(words, Type.STRONG) : ticked("\u2610", words));
        }
        blocks.add(new Space(3));
        blocks.add(Paragraph.of(text.say(one ? Label.AGREE_TICK_ONLY : Label.AGREE_TICK), Type.TEXT));
        cancel(blocks);
        blocks.add(new SignatureBlock(text).empty());
        return blocks;
    }

    private List<Block> given(SignedRevision signed) {
        var blocks = new ArrayList<Block>();
        var taken = signed.taken();
        var total = text.figures().money(taken.totals().total());
        blocks.add(ticked("\u2611", text.say(Label.TAKEN, names.of(taken.id()), taken.title()) + ", " + total));
        blocks.add(new Space(4));
        blocks.add(Paragraph.of(signed.signature().consent(), Type.TEXT));
        cancel(blocks);
        blocks.add(new Space(6));
        blocks.add(new SignatureBlock(text).signed(signed.signature(), signed.seal()));
        return blocks;
    }

    private void cancel(List<Block> blocks) {
        for (var sentence : notes.cancel()) {
            blocks.add(new Space(5));
            blocks.add(Paragraph.of(sentence, CANCEL));
        }
    }

    private static Block ticked(String box, String words) {
        return Grid.beside(
                new Columns(List.of(Columns.fixed(13), Columns.share(1)), 5),
                Paragraph.of(box, Type.STRONG.sized(12)),
                Paragraph.of(words, Type.STRONG));
    }

    private List<Block> declined(List<Declined> declined) {
        if (declined.isEmpty()) {
            return List.of();
        }
        var lines = new ArrayList<Block>();
        lines.add(Words.label(text.say(Label.DECLINED_TITLE)));
        for (var each : declined) {
            var total = text.figures().money(each.total());
            var words = text.say(Label.DECLINED, names.of(each.choice()), each.title(), total);
            lines.add(Paragraph.of(Text.of(words, Type.SMALL_STRONG).and(" " + each.acknowledgement(), Type.SMALL)));
        }
        return List.of(new Space(8), new Together(new Stack(lines)));
    }
}

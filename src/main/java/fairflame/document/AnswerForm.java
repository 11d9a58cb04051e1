package fairflame.document;

import fairflame.document.page.Block;
import fairflame.document.page.Columns;
import fairflame.document.page.Entry;
import fairflame.document.page.EntryBlock;
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
import fairflame.quote.Choice;
import fairflame.quote.Quote;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/** The answer of a customer who is away: to be filled in on the file itself. Nothing is ticked beforehand. */
final class AnswerForm {
    private static final double BUTTON = 13;
    private static final double LINE = 20;
    private static final double ROOM = 44;
    private static final Style CANCEL = Type.STRONG.sized(10.5);

    private final Quote quote;
    private final AnswerSheet sheet;
    private final PaperText text;
    private final ChoiceNames names;

    AnswerForm(Quote quote, AnswerSheet sheet, PaperText text) {
        this.quote = quote;
        this.sheet = sheet;
        this.text = text;
        this.names = new ChoiceNames(quote, text);
    }

    Block block(List<String> cancel) {
        var inside = new ArrayList<Block>();
        inside.add(Paragraph.heading(Role.HEADING_2, text.say(Label.AWAY_TITLE), Type.SECTION));
        inside.add(new Space(2));
        inside.add(Paragraph.of(text.say(Label.AWAY_INTRO, quote.seller().email()), Type.TEXT));
        inside.add(new Space(8));
        inside.add(new Together(choices()));
        inside.add(ticked(
                Entry.tick(AnswerSheet.ELECTRONIC, sheet.electronic()),
                text.say(Label.AWAY_ALWAYS),
                sheet.electronic()));
        for (var sentence : cancel) {
            inside.add(new Space(5));
            inside.add(Paragraph.of(sentence, CANCEL));
        }
        inside.add(new Space(8));
        inside.add(new Together(signing()));
        inside.add(new Space(6));
        inside.add(identity());
        return new Together(Framed.of(new Stack(inside), 12, Ink.WHITE, Stroke.solid(Ink.INK, 1.1)));
    }

    private Block choices() {
        var blocks = new ArrayList<Block>();
        for (var choice : quote.choices()) {
            var title = text.say(
                    Label.AWAY_CHOICE,
                    names.of(choice.id()),
                    choice.title(),
                    text.figures().money(choice.totals().total()));
            blocks.add(beside(
                    Entry.radio(AnswerSheet.CHOICE, AnswerSheet.value(choice.id()), title),
                    Paragraph.of(title, Type.HEADING)));
            blocks.add(new Space(3));
            blocks.add(Grid.beside(
                    new Columns(List.of(Columns.fixed(BUTTON), Columns.share(1)), 7), new Space(0), sentences(choice)));
            blocks.add(new Space(6));
        }
        var none = text.say(Label.AWAY_NONE);
        blocks.add(beside(Entry.radio(AnswerSheet.CHOICE, AnswerSheet.NONE, none), Paragraph.of(none, Type.HEADING)));
        blocks.add(new Space(8));
        return new Stack(blocks);
    }

    private Block sentences(Choice choice) {
        var order = sheet.orders().getOrDefault(choice.id(), "");
        var decline = sheet.declines().getOrDefault(choice.id(), "");
        return Stack.of(
                ticked(Entry.tick(AnswerSheet.order(choice.id()), order), text.say(Label.AWAY_IF_TAKEN), order),
                new Space(4),
                ticked(Entry.tick(AnswerSheet.decline(choice.id()), decline), text.say(Label.AWAY_IF_LEFT), decline));
    }

    private static Block ticked(Entry entry, String when, String sentence) {
        return beside(entry, Paragraph.of(Text.of(when + " ", Type.SMALL_STRONG).and(sentence, Type.TEXT)));
    }

    private static Block beside(Entry entry, Block words) {
        return Grid.beside(
                new Columns(List.of(Columns.fixed(BUTTON), Columns.share(1)), 7),
                new EntryBlock(entry, BUTTON, BUTTON),
                words);
    }

    private Block signing() {
        var example = LocalDate.of(quote.made().getYear(), 7, 4).toString();
        return Stack.of(
                role(),
                new Space(7),
                Grid.beside(
                        Columns.equal(2, 16),
                        line(Entry.line(AnswerSheet.NAME, text.say(Label.PRINTED_NAME)), text.say(Label.PRINTED_NAME)),
                        line(
                                Entry.line(AnswerSheet.DATE, text.say(Label.AWAY_DATE, example)),
                                text.say(Label.AWAY_DATE, example))),
                new Space(6),
                Grid.beside(
                        Columns.equal(2, 16),
                        line(Entry.line(AnswerSheet.SIGNATURE, text.say(Label.AWAY_TYPED)), text.say(Label.AWAY_TYPED)),
                        Stack.of(
                                new EntryBlock(
                                        Entry.signature(AnswerSheet.DRAWN, text.say(Label.AWAY_DRAWN)), 400, ROOM),
                                under(text.say(Label.AWAY_DRAWN)))));
    }

    private Block role() {
        var cells = new ArrayList<Block>();
        cells.add(Paragraph.of(text.say(Label.AWAY_ROLE), Type.STRONG));
        for (var role : List.of("owner", "tenant", "agent")) {
            var words = Parties.role(role, text);
            cells.add(beside(Entry.radio(AnswerSheet.ROLE, role, words), Paragraph.of(words, Type.TEXT)));
        }
        return Grid.beside(Columns.equal(4, 12), cells.toArray(Block[]::new));
    }

    private static Block line(Entry entry, String words) {
        return Stack.of(new EntryBlock(entry, 400, LINE), under(words));
    }

    private static Block under(String words) {
        return Stack.of(new Space(2), Paragraph.of(words, Type.QUIET));
    }

    private Block identity() {
        var identity = sheet.identity();
        return Stack.of(
                Paragraph.of(
                        text.say(Label.AWAY_IDENTITY, identity.quote(), Integer.toString(identity.revision())),
                        Type.QUIET),
                Paragraph.of(identity.digest(), Type.TINY_FIGURES),
                new EntryBlock(Entry.fixed(AnswerSheet.IDENTITY, identity.text()), 1, 1));
    }
}

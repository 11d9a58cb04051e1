package fairflame.document;

import fairflame.document.page.Block;
import fairflame.document.page.Ink;
import fairflame.document.page.Paragraph;
import fairflame.document.page.Space;
import fairflame.document.page.Stack;
import fairflame.document.page.Together;
import fairflame.quote.Choice;
import fairflame.quote.Quote;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** One choice line by line, with its totals, tests and arithmetic. */
final class ChoiceDetail {
    // A short table is not torn from its total.
    private static final int FEW = 6;

    private final Quote quote;
    private final PrintedNotes notes;
    private final PaperText text;
    private final ChoiceNames names;

    ChoiceDetail(Quote quote, PrintedNotes notes, PaperText text) {
        this.quote = quote;
        this.notes = notes;
        this.text = text;
        this.names = new ChoiceNames(quote, text);
    }

    Block block(Choice choice) {
        var blocks = new ArrayList<Block>();
        var lines = Stack.of(
                Words.section(
                        quote.choices().size() == 1
                                ? text.say(Label.LINE_BY_LINE)
                                : text.say(Label.LINES_OF, names.of(choice.id()), choice.title())),
                new ItemTable(choice.lines(), text).block(),
                new Space(8),
                totals(choice));
        blocks.add(choice.lines().size() > FEW ? lines : new Together(lines));
        if (!choice.arithmetic().isEmpty() && !ChoiceColumns.sharesArithmetic(quote)) {
            blocks.add(new Space(6));
            blocks.add(arithmetic(choice, text));
        }
        blocks.add(new Space(12));
        return new Stack(blocks);
    }

    static Block arithmetic(Choice choice, PaperText text) {
        var sentences = new ArrayList<Block>();
        sentences.add(Words.label(text.say(Label.ARITHMETIC)));
        choice.arithmetic().forEach(sentence -> sentences.add(Paragraph.of(sentence, Type.SMALL)));
        return new Together(new Stack(sentences));
    }

    // Tests are kept by letter; a test without a word of its own prints as it is kept.
    private List<Block> tests(Choice choice) {
        var tests =
                choice.tests().stream().map(test -> text.word("tests", test)).toList();
        return Bullets.under(text.say(Label.TESTS_BEFORE), tests, Type.SMALL).stream()
                .flatMap(list -> Stream.of(new Space(7), list))
                .toList();
    }

    // The reminder of the notice and the total it stands over never part.
    private Block totals(Choice choice) {
        var totals = new TotalsBlock(choice.totals(), text);
        if (!choice.deposit().isZero()) {
            totals.add(text.say(Label.DEPOSIT), choice.deposit());
            totals.add(text.say(Label.AFTER_DEPOSIT), choice.totals().total().minus(choice.deposit()));
        }
        var table = totals.block(choice.lines(), tests(choice));
        return notes.boxed(choice)
                ? new Together(Stack.of(NoticeBox.line(text.say(Label.NOTICE_ABOVE), Ink.AMBER), new Space(8), table))
                : table;
    }
}

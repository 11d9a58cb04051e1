package fairflame.document;

import fairflame.document.page.Block;
import fairflame.document.page.Columns;
import fairflame.document.page.Grid;
import fairflame.document.page.Ink;
import fairflame.document.page.Paragraph;
import fairflame.document.page.Row;
import fairflame.document.page.Space;
import fairflame.document.page.Stack;
import fairflame.document.page.Style;
import fairflame.document.page.Text;
import fairflame.invoice.Completion;
import fairflame.invoice.PressureTest;
import fairflame.invoice.TestRecord;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;

/** Permit, fitter, tests after the repair, and the test leads that had to come out. */
final class CompletionBlock {
    private final Completion completion;
    private final PaperText text;

    CompletionBlock(Completion completion, PaperText text) {
        this.completion = completion;
        this.text = text;
    }

    Block block() {
        var blocks = new ArrayList<Block>();
        blocks.add(Grid.beside(
                Columns.equal(2, 18), fact(Label.PERMIT, completion.permitNumber()), fact(Label.FITTER, fitter())));
        completion.pressureTest().ifPresent(test -> {
            blocks.add(new Space(6));
            blocks.add(pressureTest(test));
        });
        if (!completion.tests().isEmpty()) {
            blocks.add(new Space(8));
            blocks.add(Words.label(text.say(Label.TESTS_DONE)));
            blocks.add(tests());
        }
        blocks.add(new Space(8));
        blocks.add(leads());
        return new Stack(blocks);
    }

    private Block fact(Label label, String value) {
        var words = value.isBlank() ? text.say(Label.NONE_RECORDED) : value;
        return Stack.of(Words.label(text.say(label)), Paragraph.of(words, Type.TEXT));
    }

    private String fitter() {
        return completion.fitterName().isBlank()
                ? ""
                : text.say(Label.FITTER_LICENCE, completion.fitterName(), completion.fitterLicence());
    }

    private Block pressureTest(PressureTest test) {
        var figures = text.figures();
        var words = text.say(
                Label.PRESSURE_TEST_WORDS,
                figures.shortest(test.psi()),
                Integer.toString(test.minutes()),
                figures.shortest(test.gaugeTopPsi()),
                text.office(test.medium()));
        var witness =
                test.witness().isBlank() ? text.say(Label.NO_WITNESS) : text.say(Label.WITNESSED_BY, test.witness());
        return Stack.of(
                Words.label(text.say(Label.PRESSURE_TEST)),
                Grid.beside(
                        new Columns(List.of(Columns.fixed(80), Columns.share(1)), 8),
                        Paragraph.of(verdict(test.held(), Type.STRONG)),
                        Paragraph.of(words + ", " + witness, Type.TEXT)));
    }

    private Block tests() {
        var rows = new ArrayList<Row>();
        // By letter: the record keeps them in no order of its own.
        new TreeMap<>(completion.tests()).forEach((letter, test) -> rows.add(row(letter, test)));
        var columns = new Columns(List.of(Columns.fixed(14), Columns.share(3), Columns.fixed(80), Columns.share(4)), 8);
        var header = Row.of(
                        Paragraph.of("", Type.LABEL),
                        Paragraph.of(text.say(Label.TEST), Type.LABEL),
                        Paragraph.of("", Type.LABEL),
                        Paragraph.of(text.say(Label.RESULT), Type.LABEL))
                .padded(2, 3)
                .ruled(Type.RULE);
        return new Grid(columns, List.of(header), rows, Grid.Kind.TABLE);
    }

    private Row row(String letter, TestRecord test) {
        return Row.of(
                        Paragraph.of(letter, Type.TINY_FIGURES.leaded(Type.TEXT.leading())),
                        Paragraph.of(text.word("tests", letter), Type.TEXT),
                        Paragraph.of(verdict(test.passed(), Type.STRONG)),
                        Paragraph.of(test.result(), Type.TEXT))
                .padded(2.5, 3)
                .ruled(Type.QUIET_RULE);
    }

    private Text verdict(boolean passed, Style style) {
        var ink = passed ? Ink.MOSS : Ink.OXIDE;
        var word = passed ? "\u2713 " + text.say(Label.PASSED) : "\u2717 " + text.say(Label.FAILED);
        return Text.of(word, style.with(ink));
    }

    private Block leads() {
        return completion.leadsRemoved()
                ? Paragraph.of(
                        Text.of("\u2713 ", Type.STRONG.with(Ink.MOSS)).and(text.say(Label.LEADS_REMOVED), Type.STRONG))
                : NoticeBox.line(text.say(Label.LEADS_OPEN), Ink.OXIDE);
    }
}

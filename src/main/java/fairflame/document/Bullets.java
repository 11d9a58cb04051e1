package fairflame.document;

import fairflame.document.page.Block;
import fairflame.document.page.Columns;
import fairflame.document.page.Face;
import fairflame.document.page.Grid;
import fairflame.document.page.Paragraph;
import fairflame.document.page.Row;
import fairflame.document.page.Stack;
import fairflame.document.page.Style;
import fairflame.document.page.Text;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Lists with hanging marks, and texts whose first words are strong. */
final class Bullets {
    private static final double GAP = 2.5;
    // "Hidden damage: ..." is a lead; a long clause before a colon is not.
    private static final int LONGEST_LEAD = 32;
    // The name of a cause that was ruled out is one, however long.
    private static final int LONGEST_CAUSE = 80;

    private Bullets() {}

    /** Sentences, each behind the same mark. */
    static Block marked(String mark, List<String> sentences, Style style) {
        return list(same(mark, sentences), plain(sentences, style), style);
    }

    /** Sentences behind a dot, their leads strong. */
    static Block led(List<String> sentences, Style style) {
        return led(sentences, style, LONGEST_LEAD);
    }

    /** Causes and why they are out, each behind a dot. */
    static Block causes(List<String> sentences, Style style) {
        return led(sentences, style, LONGEST_CAUSE);
    }

    private static Block led(List<String> sentences, Style style, int longest) {
        var texts = sentences.stream()
                .map(sentence -> led(sentence, style, longest))
                .toList();
        return list(same("\u2022", sentences), texts, style);
    }

    static Block numbered(List<String> sentences, Style style) {
        var marks = new ArrayList<String>();
        for (int i = 1; i <= sentences.size(); i++) {
            marks.add(i + ".");
        }
        return list(marks, plain(sentences, style), style);
    }

    private static List<String> same(String mark, List<String> sentences) {
        return sentences.stream().map(ignored -> mark).toList();
    }

    private static List<Text> plain(List<String> sentences, Style style) {
        return sentences.stream().map(sentence -> Text.of(sentence, style)).toList();
    }

    private static Block list(List<String> marks, List<Text> sentences, Style style) {
        double widest = marks.stream()
                .mapToDouble(mark -> Text.of(mark, style).width())
                .max()
                .orElse(0);
        var rows = new ArrayList<Row>();
        for (int i = 0; i < sentences.size(); i++) {
            rows.add(Row.of(Paragraph.of(marks.get(i), style), Paragraph.of(sentences.get(i)))
                    .padded(0, GAP));
        }
        var columns = new Columns(List.of(Columns.fixed(widest), Columns.share(1)), 5);
        return new Grid(columns, List.of(), rows, Grid.Kind.LAYOUT);
    }

    /** A text with its lead, up to the first colon, strong. */
    private static Text led(String sentence, Style style, int longest) {
        int colon = sentence.indexOf(": ");
        if (colon <= 0 || colon > longest || sentence.substring(0, colon).contains(". ")) {
            return Text.of(sentence, style);
        }
        var strong = style.with(Face.SEMIBOLD);
        return Text.of(sentence.substring(0, colon + 1), strong).and(sentence.substring(colon + 1), style);
    }

    /** A small label over a list; nothing when the list is empty. */
    static Optional<Block> under(String label, List<String> sentences, Style style) {
        return sentences.isEmpty()
                ? Optional.empty()
                : Optional.of(Stack.of(Words.label(label), marked("\u2022", sentences, style)));
    }
}

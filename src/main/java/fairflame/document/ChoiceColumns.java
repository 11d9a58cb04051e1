package fairflame.document;

import fairflame.document.page.Block;
import fairflame.document.page.Columns;
import fairflame.document.page.Face;
import fairflame.document.page.Grid;
import fairflame.document.page.Heading;
import fairflame.document.page.Ink;
import fairflame.document.page.Paragraph;
import fairflame.document.page.Role;
import fairflame.document.page.Row;
import fairflame.document.page.Space;
import fairflame.document.page.Stack;
import fairflame.document.page.Style;
import fairflame.document.page.Text;
import fairflame.quote.Choice;
import fairflame.quote.Quote;
import fairflame.quote.Work;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** The choices side by side, as boxes of one size with their rows at one height: no trick that steers. */
final class ChoiceColumns {
    private static final int MOST_IN_A_ROW = 3;
    private static final double GAP = 12;
    private static final Style PRICE = new Style(Face.MONO_SEMIBOLD, 19, 24, Ink.INK);

    private final Quote quote;
    private final Optional<String> taken;
    private final PaperText text;
    private final ChoiceNames names;

    ChoiceColumns(Quote quote, Optional<String> taken, PaperText text) {
        this.quote = quote;
        this.taken = taken;
        this.text = text;
        this.names = new ChoiceNames(quote, text);
    }

    Block block() {
        var choices = quote.choices();
        boolean one = choices.size() == 1;
        var blocks = new ArrayList<Block>();
        blocks.add(Words.section(text.say(one ? Label.ONE_CHOICE_TITLE : Label.CHOICES_TITLE)));
        if (!one) {
            blocks.add(new Heading(Stack.of(Paragraph.of(text.say(Label.CHOICES_INTRO), Type.TEXT), new Space(6))));
        }
        // Four choices stand two by two, not three and a lonely one.
        int columns = choices.size() == 4 ? 2 : Math.min(choices.size(), MOST_IN_A_ROW);
        for (int i = 0; i < choices.size(); i += columns) {
            blocks.add(boxes(choices.subList(i, Math.min(i + columns, choices.size())), columns));
            blocks.add(new Space(GAP));
        }
        if (sharesArithmetic(quote)) {
            blocks.add(ChoiceDetail.arithmetic(choices.get(0), text));
            blocks.add(new Space(GAP));
        }
        return new Stack(blocks);
    }

    /** Whether the same arithmetic stands behind all of several choices: then it is told once, below them. */
    static boolean sharesArithmetic(Quote quote) {
        var sums = quote.choices().stream().map(Choice::arithmetic).distinct().toList();
        return quote.choices().size() > 1 && sums.size() == 1 && !sums.get(0).isEmpty();
    }

    private Block boxes(List<Choice> choices, int columns) {
        var rows = new ArrayList<Row>();
        rows.add(row(choices, this::title).padded(8, 2));
        rows.add(row(choices, this::price).padded(2, 4).ruled(Type.QUIET_RULE));
        rows.add(row(choices, this::done).padded(6, 6));
        rows.add(row(choices, this::leaves).padded(0, 6));
        rows.add(row(choices, this::terms).padded(0, 8));
        return new Grid(Columns.equal(Math.min(columns, choices.size()), GAP), List.of(), rows, Grid.Kind.BOXES);
    }

    private static Row row(List<Choice> choices, Function<Choice, Block> cell) {
        return Row.of(choices.stream().map(cell).toList()).clinging();
    }

    private Block title(Choice choice) {
        return Stack.of(
                Paragraph.of(mark(choice), Type.LABEL.with(Ink.LAGOON)),
                Paragraph.heading(Role.HEADING_3, choice.title(), Type.HEADING));
    }

    private String mark(Choice choice) {
        var name = names.of(choice.id());
        if (taken.isPresent()) {
            return taken.get().equals(choice.id()) ? "\u2713 " + name : name;
        }
        boolean worthSaying = choice.suggested() && quote.choices().size() > 1;
        return worthSaying ? name + " \u00B7 " + text.say(Label.SUGGESTED) : name;
    }

    private Block price(Choice choice) {
        return Stack.of(
                Paragraph.of(text.figures().money(choice.totals().total()), PRICE.sized(priceSize())),
                Paragraph.of(text.say(Label.WITH_TAX), Type.QUIET));
    }

    // One size for all prices, small enough for the longest.
    private double priceSize() {
        double room = quote.choices().size() > 2 ? 138 : 210;
        double widest = quote.choices().stream()
                .map(choice -> text.figures().money(choice.totals().total()))
                .mapToDouble(words -> Text.of(words, PRICE).width())
                .max()
                .orElse(1);
        return PRICE.size() * Math.min(1, room / widest);
    }

    private Block done(Choice choice) {
        var blocks = new ArrayList<Block>();
        blocks.add(Paragraph.of(choice.plain(), Type.TEXT));
        if (!choice.work().isEmpty()) {
            blocks.add(new Space(4));
            blocks.add(Words.label(text.say(Label.WHAT_IS_DONE)));
            blocks.add(Bullets.marked(
                    "\u2022", choice.work().stream().map(Work::plain).distinct().toList(), Type.TEXT));
        }
        return new Stack(blocks);
    }

    private Block leaves(Choice choice) {
        var words = choice.leavesUnfixed().isBlank() ? text.say(Label.LEAVES_NOTHING) : choice.leavesUnfixed();
        return Stack.of(Words.label(text.say(Label.LEAVES_UNFIXED)), Paragraph.of(words, Type.TEXT));
    }

    private Block terms(Choice choice) {
        var deposit = choice.deposit().isZero()
                ? text.say(Label.NO_DEPOSIT)
                : text.say(Label.DEPOSIT_OF, text.figures().money(choice.deposit()));
        var blocks = new ArrayList<Block>();
        if (choice.hours().signum() > 0) {
            var hours = text.figures().number(choice.hours());
            blocks.add(Paragraph.of(text.say(Label.LABOUR_HOURS, hours), Type.QUIET));
        }
        blocks.add(Paragraph.of(deposit, Type.QUIET));
        return new Stack(blocks);
    }
}

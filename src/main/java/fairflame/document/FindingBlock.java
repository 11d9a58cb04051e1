package fairflame.document;

import fairflame.document.page.Around;
import fairflame.document.page.Block;
import fairflame.document.page.Columns;
import fairflame.document.page.Face;
import fairflame.document.page.Grid;
import fairflame.document.page.Paragraph;
import fairflame.document.page.Space;
import fairflame.document.page.Stack;
import fairflame.document.page.Style;
import fairflame.quote.FindingSheet;
import fairflame.quote.Gauge;
import java.util.ArrayList;
import java.util.List;

/** What was found, in plain words, beside what was measured against what is allowed. */
final class FindingBlock {
    private static final int MOST_IN_A_ROW = 4;
    private static final int MOST_IN_TEXT_SIZE = 8;

    private final FindingSheet finding;
    private final boolean repair;
    private final PaperText text;

    FindingBlock(FindingSheet finding, boolean repair, PaperText text) {
        this.finding = finding;
        this.repair = repair;
        this.text = text;
    }

    Block block() {
        var gauges = finding.gauges();
        var blocks = new ArrayList<Block>();
        blocks.add(Words.section(text.say(Label.FOUND)));
        blocks.add(Paragraph.of(finding.headline(), Type.FINDING));
        blocks.add(new Space(8));
        switch (gauges.size()) {
            case 0 -> blocks.add(new Stack(reasons()));
            case 1 -> blocks.add(beside(gauges, GaugeBlock.WIDTH + 26));
            case 2 -> blocks.add(beside(gauges, 2 * GaugeBlock.WIDTH + 12));
            default -> {
                blocks.addAll(rows(gauges));
                blocks.add(Grid.beside(Columns.equal(2, 20), new Stack(shown()), new Stack(excluded())));
            }
        }
        blocks.add(new Space(10));
        return new Stack(blocks);
    }

    private Block beside(List<Gauge> gauges, double width) {
        return new Around(new GaugeBlock(text).row(gauges, gauges.size()), width, 20, new Stack(reasons()));
    }

    private List<Block> rows(List<Gauge> gauges) {
        int columns = Math.min(gauges.size(), MOST_IN_A_ROW);
        var rows = new ArrayList<Block>();
        for (int i = 0; i < gauges.size(); i += columns) {
            rows.add(new GaugeBlock(text).row(gauges.subList(i, Math.min(i + columns, gauges.size())), columns));
            rows.add(new Space(10));
        }
        return rows;
    }

    // Many readings are set smaller, so that the finding stays on its page.
    private Style size() {
        int sentences = finding.supports().size()
                + finding.ruledOut().size()
                + finding.unknown().size();
        return sentences > MOST_IN_TEXT_SIZE ? Type.SMALL : Type.TEXT;
    }

    private Style open() {
        return size().with(Face.ITALIC);
    }

    private List<Block> reasons() {
        var blocks = shown();
        blocks.addAll(excluded());
        return blocks;
    }

    private List<Block> shown() {
        var blocks = new ArrayList<Block>();
        add(blocks, text.say(Label.SHOWN_BY), finding.supports(), size());
        if (!finding.unknown().isEmpty() && !repair) {
            blocks.add(Words.label(text.say(Label.NEXT_CHECKS)));
            blocks.add(Bullets.led(finding.unknown(), open()));
            blocks.add(new Space(5));
        }
        return blocks;
    }

    private List<Block> excluded() {
        var blocks = new ArrayList<Block>();
        if (!finding.ruledOut().isEmpty()) {
            blocks.add(Words.label(text.say(Label.RULED_OUT)));
            blocks.add(Bullets.causes(finding.ruledOut(), size()));
            blocks.add(new Space(5));
        }
        if (repair) {
            add(blocks, text.say(Label.STILL_OPEN), finding.unknown(), open());
        }
        if (!finding.causes().isEmpty()) {
            blocks.add(Words.label(text.say(Label.EXACT_WORDS)));
            finding.causes().forEach(cause -> blocks.add(Paragraph.of(cause, Type.SMALL)));
        }
        return blocks;
    }

    private static void add(List<Block> blocks, String label, List<String> sentences, Style style) {
        Bullets.under(label, sentences, style).ifPresent(block -> {
            blocks.add(block);
            blocks.add(new Space(5));
        });
    }
}

package fairflame.document;

import fairflame.document.SheetStyles.Look;
import fairflame.quote.Line;
import java.util.List;

/** Why each line costs what it costs: reading, rule, catalog row, standard time, with the source. */
final class ReasonsTab {
    static final int LAST_COLUMN = 4;

    private final Tab tab;

    ReasonsTab(Tab tab, PaperText text) {
        this.tab = tab;
        tab.next(Tab.TALL)
                .text(0, "", Look.HEADER)
                .text(1, text.say(Label.LINE), Look.HEADER)
                .text(2, text.say(Label.GROUND), Look.HEADER)
                .text(3, text.say(Label.WHY), Look.HEADER)
                .text(4, text.say(Label.SOURCE), Look.HEADER)
                .freeze(0);
    }

    static int[] widths() {
        return new int[] {12, 8, 18, 70, 34};
    }

    ReasonsTab add(String choice, List<Line> lines) {
        for (var line : lines) {
            for (var basis : line.basis()) {
                tab.next()
                        .text(0, choice, Look.TEXT)
                        .text(1, line.id(), Look.TEXT)
                        .text(2, basis.what(), Look.TEXT)
                        .wrapped(3, basis.words(), Look.TEXT)
                        .text(4, basis.source(), Look.TEXT);
            }
        }
        return this;
    }

    Tab tab() {
        return tab;
    }
}

package fairflame.document;

import fairflame.document.page.Block;
import fairflame.document.page.Ink;
import fairflame.document.page.PageFormat;
import fairflame.document.page.Paragraph;
import fairflame.document.page.Space;
import fairflame.invoice.report.ShopReport;
import fairflame.invoice.report.TimeComparison;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** The figures of the shop as pictures: quotes won, revenue, hours against standard. */
public final class ReportPdf {
    private final ShopReport report;
    private final Map<String, String> names;
    private final PaperText text;

    private ReportPdf(ShopReport report, Map<String, String> names, PaperText text) {
        this.report = report;
        this.names = names;
        this.text = text;
    }

    /**
     * The file's bytes.
     *
     * @param names words for ids of causes and tasks; an id without words is printed itself
     */
    public static byte[] write(ShopReport report, Map<String, String> names, PaperText text, PageFormat format) {
        var paper = new ReportPdf(report, names, text);
        var figures = text.figures();
        var title = text.office("Figures of the shop");
        var heading = new TitleBlock(title, text.office("What was won, what was earned, how long it took"))
                .with(text.office("From"), figures.date(report.from()))
                .with(text.office("To"), figures.date(report.to()));
        return new OfficePaper(text, format, report.to()).write(heading, title, "", paper.content());
    }

    private List<Block> content() {
        var blocks = new ArrayList<Block>();
        part(
                blocks,
                "Quotes signed, by cause",
                "Bar: share of the repair quotes for a cause that were signed.",
                wins());
        part(
                blocks,
                "Revenue by work, before tax",
                "Credit notes are taken out. The tasks of a job stand together, because access and hours are shared.",
                revenue());
        part(
                blocks,
                "Hours against standard",
                "Bar: the middle half of the jobs. Dark line: the median job. Triangle: the standard time.",
                hours());
        report.hours().stream()
                .filter(row -> row.suggestion().isPresent())
                .forEach(row -> blocks.add(Paragraph.of(suggestion(row), Type.SMALL)));
        return blocks;
    }

    private void part(List<Block> blocks, String title, String words, List<Block> charts) {
        blocks.add(Words.section(text.office(title)));
        if (charts.isEmpty()) {
            blocks.add(Paragraph.of(text.office("Nothing yet in this time."), Type.OPEN));
        } else {
            blocks.add(Paragraph.of(text.office(words), Type.QUIET));
            blocks.add(new Space(4));
            blocks.addAll(charts);
        }
        blocks.add(new Space(12));
    }

    private String name(String id) {
        return names.getOrDefault(id, id);
    }

    private List<Block> wins() {
        var rows = report.wins();
        return chart(
                rows.stream()
                        .map(row -> new BarChart.Bar(
                                name(row.cause()),
                                row.perMille(),
                                row.signed() + " / " + row.quoted() + "  " + Math.round(row.perMille() / 10f) + " %",
                                Ink.MOSS))
                        .toList(),
                1000);
    }

    private List<Block> revenue() {
        var rows = report.revenue();
        return chart(
                rows.stream()
                        .map(row -> new BarChart.Bar(
                                work(row.work()),
                                Math.max(0, row.amount().getAmount().doubleValue()),
                                text.figures().money(row.amount()),
                                Ink.LAGOON))
                        .toList(),
                0);
    }

    private String work(String tasks) {
        var ids = tasks.split(" \\+ ");
        return ids.length == 1
                ? name(tasks)
                : java.util.Arrays.stream(ids).map(this::name).collect(Collectors.joining(" + "));
    }

    private static List<Block> chart(List<BarChart.Bar> bars, double full) {
        if (bars.isEmpty()) {
            return List.of();
        }
        return List.of(BarChart.of(bars, full));
    }

    private List<Block> hours() {
        var rows = report.hours();
        if (rows.isEmpty()) {
            return List.of();
        }
        return List.of(SpreadChart.of(rows.stream().map(this::spread).toList()));
    }

    private SpreadChart.Spread spread(TimeComparison row) {
        var figures = text.figures();
        return new SpreadChart.Spread(
                title(row),
                row.lower().doubleValue(),
                row.median().doubleValue(),
                row.upper().doubleValue(),
                row.standard().doubleValue(),
                figures.shortest(row.median()) + " / " + figures.shortest(row.standard()) + " h, n=" + row.jobs());
    }

    private String title(TimeComparison row) {
        return name(row.task()) + (row.condition().isEmpty() ? "" : ", " + row.condition());
    }

    private String suggestion(TimeComparison row) {
        return title(row) + ": "
                + text.office("the jobs suggest this factor on the standard time; a person decides") + ": "
                + row.suggestion()
                        .map(factor -> text.figures().shortest(factor))
                        .orElse("");
    }
}

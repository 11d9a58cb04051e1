package fairflame.document;

import fairflame.document.page.Block;
import fairflame.document.page.PageFormat;
import fairflame.document.page.Paragraph;
import fairflame.document.page.Space;
import fairflame.invoice.order.OrderLine;
import fairflame.invoice.order.OrderSheet;
import fairflame.invoice.order.PartNeeded;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.joda.money.CurrencyUnit;

/** An order to one supplier, and behind it what goes on the truck for which job. */
public final class OrderSheetPdf {
    private final OrderSheet sheet;
    private final PaperText text;

    private OrderSheetPdf(OrderSheet sheet, PaperText text) {
        this.sheet = sheet;
        this.text = text;
    }

    /**
     * The file's bytes.
     *
     * @param number of the order, or a word that says that it is not placed
     */
    public static byte[] write(
            OrderSheet sheet, String number, LocalDate made, CurrencyUnit currency, PaperText text, PageFormat format) {
        var paper = new OrderSheetPdf(sheet, text);
        var title = text.office("Order");
        var heading = new TitleBlock(title, text.office("Parts for work that customers have signed for"))
                .with(text.say(Label.NUMBER), number)
                .with(text.say(Label.DATE), text.figures().date(made))
                .with(text.office("Supplier"), sheet.supplier().name());
        return new OfficePaper(text, format, made)
                .write(heading, title + " " + number, sheet.supplier().name(), paper.content(currency));
    }

    private List<Block> content(CurrencyUnit currency) {
        var blocks = new ArrayList<Block>();
        var supplier = sheet.supplier();
        blocks.add(Paragraph.of(supplier.name() + ", " + supplier.phone() + ", " + supplier.email(), Type.TEXT));
        blocks.add(Paragraph.of(text.office("Usual delivery, working days") + ": " + supplier.leadDays(), Type.QUIET));
        blocks.add(new Space(10));
        blocks.add(Words.section(text.office("To order")));
        blocks.add(order(currency));
        blocks.add(new Space(14));
        blocks.add(Words.section(text.office("For the truck, job by job")));
        blocks.add(Paragraph.of(
                text.office("What each job uses. Orders are rounded up over all jobs, so one tube may serve two."),
                Type.QUIET));
        blocks.add(truck());
        return blocks;
    }

    private Block order(CurrencyUnit currency) {
        var figures = text.figures();
        var table = new OfficeTable()
                .column(OfficeTable.Kind.SHORT, text.office("Part"))
                .column(OfficeTable.Kind.WORDS, text.say(Label.DESCRIPTION))
                .column(OfficeTable.Kind.FIGURES, text.say(Label.QUANTITY))
                .column(OfficeTable.Kind.SHORT, text.say(Label.UNIT))
                .column(OfficeTable.Kind.FIGURES, text.office("Cost"))
                .column(OfficeTable.Kind.FIGURES, text.say(Label.AMOUNT));
        for (var line : sheet.lines()) {
            table.row(
                    line.part().number(),
                    line.part().description(),
                    figures.shortest(line.quantity()),
                    text.word("units", line.part().unit()),
                    figures.plain(line.part().cost()),
                    figures.plain(line.cost()));
        }
        return table.strongRow(
                        "",
                        text.office("Cost of this order before tax"),
                        "",
                        "",
                        "",
                        figures.money(sheet.cost(currency)))
                .block();
    }

    private Block truck() {
        var table = new OfficeTable()
                .column(OfficeTable.Kind.SHORT, text.office("Job"))
                .column(OfficeTable.Kind.SHORT, text.office("Part"))
                .column(OfficeTable.Kind.WORDS, text.say(Label.DESCRIPTION))
                .column(OfficeTable.Kind.FIGURES, text.say(Label.QUANTITY))
                .column(OfficeTable.Kind.SHORT, text.say(Label.UNIT));
        var jobs = sheet.lines().stream()
                .flatMap(line -> line.uses().stream())
                .map(PartNeeded::quote)
                .collect(Collectors.toCollection(TreeSet::new));
        for (var job : jobs) {
            for (var line : sheet.lines()) {
                line.uses().stream().filter(use -> use.quote().equals(job)).forEach(use -> add(table, line, use));
            }
        }
        return table.block();
    }

    private void add(OfficeTable table, OrderLine line, PartNeeded use) {
        table.row(
                use.quote(),
                line.part().number(),
                line.part().description(),
                text.figures().shortest(use.quantity()),
                text.word("units", line.part().unit()));
    }
}

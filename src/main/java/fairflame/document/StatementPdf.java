package fairflame.document;

import fairflame.document.page.Block;
import fairflame.document.page.PageFormat;
import fairflame.document.page.Paragraph;
import fairflame.document.page.Space;
import fairflame.invoice.account.Ageing;
import fairflame.invoice.account.Statement;
import java.util.ArrayList;
import java.util.List;

/** A customer's account on paper. */
public final class StatementPdf {
    private StatementPdf() {}

    /**
     * The file's bytes.
     *
     * @param ageing of this customer's open invoices on the last day
     */
    public static byte[] write(Statement statement, Ageing ageing, PaperText text, PageFormat format) {
        var figures = text.figures();
        var title = text.office("Statement of account");
        var heading = new TitleBlock(title, text.office("What was invoiced, paid and is still open"))
                .with(text.office("From"), figures.date(statement.from()))
                .with(text.office("To"), figures.date(statement.to()));
        var blocks = new ArrayList<Block>();
        blocks.add(Words.label(text.office("Customer")));
        blocks.add(Words.party(statement.customer(), ""));
        blocks.add(new Space(12));
        blocks.add(rows(statement, text));
        blocks.add(new Space(14));
        blocks.add(Words.section(text.office("Still open, by how long it is overdue")));
        blocks.add(ageing(ageing, text));
        if (ageing.spare().isPositive()) {
            blocks.add(new Space(6));
            blocks.add(Paragraph.of(
                    text.office("Your money with us, not used yet") + ": " + figures.money(ageing.spare()), Type.TEXT));
        }
        return new OfficePaper(text, format, statement.to())
                .write(heading, title, statement.customer().name(), blocks);
    }

    private static Block rows(Statement statement, PaperText text) {
        var figures = text.figures();
        var table = new OfficeTable()
                .column(OfficeTable.Kind.SHORT, text.say(Label.DATE))
                .column(OfficeTable.Kind.SHORT, text.say(Label.NUMBER))
                .column(OfficeTable.Kind.WORDS, text.say(Label.DESCRIPTION))
                .column(OfficeTable.Kind.FIGURES, text.say(Label.AMOUNT))
                .column(OfficeTable.Kind.FIGURES, text.office("Balance"));
        table.row(
                figures.date(statement.from()),
                "",
                text.office("Brought forward"),
                "",
                figures.plain(statement.opening()));
        for (int i = 0; i < statement.rows().size(); i++) {
            var row = statement.rows().get(i);
            table.row(
                    figures.date(row.on()),
                    row.document(),
                    row.what(),
                    figures.plain(row.charge()),
                    figures.plain(statement.balances().get(i)));
        }
        return table.strongRow(
                        figures.date(statement.to()),
                        "",
                        text.office("Balance"),
                        "",
                        figures.money(statement.closing()))
                .block();
    }

    private static Block ageing(Ageing ageing, PaperText text) {
        var figures = text.figures();
        var table = new OfficeTable()
                .column(OfficeTable.Kind.SHORT, text.say(Label.NUMBER))
                .column(OfficeTable.Kind.WORDS, text.office("Overdue"))
                .column(OfficeTable.Kind.SHORT, text.office("Due"))
                .column(OfficeTable.Kind.FIGURES, text.office("Open"));
        List<Ageing.Row> rows = ageing.rows();
        for (var row : rows) {
            var late = row.daysLate() == 0
                    ? text.office("not due")
                    : row.daysLate() + " " + text.office(row.daysLate() == 1 ? "day" : "days");
            table.row(
                    row.item().invoice().number(),
                    late,
                    figures.date(row.item().invoice().due()),
                    figures.plain(row.item().open()));
        }
        return table.strongRow("", text.office("All that is open"), "", figures.money(ageing.total()))
                .block();
    }
}

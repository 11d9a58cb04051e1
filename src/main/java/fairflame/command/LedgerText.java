package fairflame.command;

import com.fasterxml.jackson.databind.JsonNode;
import fairflame.invoice.account.Ageing;
import fairflame.invoice.account.Movement;
import fairflame.invoice.account.Statement;
import fairflame.invoice.report.ShopReport;
import fairflame.invoice.report.TimeComparison;
import fairflame.money.Amounts;
import java.io.PrintWriter;
import java.util.List;

/** How the ledger is printed. */
final class LedgerText {
    private LedgerText() {}

    static JsonNode data(Ageing ageing) {
        var root = Printing.object()
                .put("day", ageing.day().toString())
                .put("open", Amounts.plain(ageing.total()))
                .put("customersMoney", Amounts.plain(ageing.spare()));
        var steps = root.putObject("steps");
        for (var step : Ageing.Step.values()) {
            steps.put(step.words(), Amounts.plain(ageing.sum(step)));
        }
        var array = root.putArray("invoices");
        ageing.rows()
                .forEach(row -> array.addObject()
                        .put("invoice", row.item().invoice().number())
                        .put("customer", row.item().invoice().customer().name())
                        .put("due", row.item().invoice().due().toString())
                        .put("daysLate", row.daysLate())
                        .put("open", Amounts.plain(row.item().open())));
        return root;
    }

    static void print(PrintWriter out, Ageing ageing) {
        ageing.rows()
                .forEach(row -> out.printf(
                        "%-13s %-24s due %s %5d days late %12s%n",
                        row.item().invoice().number(),
                        row.item().invoice().customer().name(),
                        row.item().invoice().due(),
                        row.daysLate(),
                        Amounts.plain(row.item().open())));
        for (var step : Ageing.Step.values()) {
            out.printf("  %-16s %12s%n", step.words(), Amounts.plain(ageing.sum(step)));
        }
        out.printf("  %-16s %12s%n", "open", Amounts.plain(ageing.total()));
        out.printf("  %-16s %12s%n", "customers' money", Amounts.plain(ageing.spare()));
    }

    static JsonNode data(Statement statement, List<String> files) {
        var root = Printing.object()
                .put("customer", statement.customer().name())
                .put("from", statement.from().toString())
                .put("to", statement.to().toString())
                .put("opening", Amounts.plain(statement.opening()))
                .put("closing", Amounts.plain(statement.closing()));
        var rows = root.putArray("rows");
        for (int i = 0; i < statement.rows().size(); i++) {
            var row = statement.rows().get(i);
            rows.addObject()
                    .put("day", row.on().toString())
                    .put("document", row.document())
                    .put("what", row.what())
                    .put("amount", Amounts.plain(row.charge()))
                    .put("balance", Amounts.plain(statement.balances().get(i)));
        }
        root.set("files", Printing.texts(files));
        return root;
    }

    static void print(PrintWriter out, Statement statement, List<String> files) {
        out.println(statement.customer().name() + ", " + statement.from() + " to " + statement.to());
        out.printf("%-40s %12s%n", "brought forward", Amounts.plain(statement.opening()));
        statement
                .rows()
                .forEach(row -> out.printf(
                        "%s %-14s %-34s %12s%n", row.on(), row.document(), row.what(), Amounts.plain(row.charge())));
        out.printf("%-40s %12s%n", "balance", Amounts.plain(statement.closing()));
        out.println("Written: " + String.join(", ", files));
    }

    static JsonNode data(Movement movement) {
        return Printing.object()
                .put("id", movement.id())
                .put("kind", movement.kind().word())
                .put("day", movement.on().toString())
                .put("quote", movement.quote())
                .put("invoice", movement.invoice().orElse(null))
                .put("amount", Amounts.plain(movement.amount()))
                .put("method", movement.method())
                .put("reason", movement.reason());
    }

    static JsonNode data(ShopReport report, List<String> files) {
        var root = Printing.object()
                .put("from", report.from().toString())
                .put("to", report.to().toString());
        var wins = root.putArray("wins");
        report.wins()
                .forEach(row -> wins.addObject()
                        .put("cause", row.cause())
                        .put("quoted", row.quoted())
                        .put("signed", row.signed()));
        var revenue = root.putArray("revenue");
        report.revenue()
                .forEach(row -> revenue.addObject()
                        .put("work", row.work())
                        .put("jobs", row.jobs())
                        .put("amount", Amounts.plain(row.amount())));
        root.set("hours", hours(report.hours()));
        root.set("files", Printing.texts(files));
        return root;
    }

    static JsonNode hours(List<TimeComparison> comparisons) {
        var array = com.fasterxml.jackson.databind.node.JsonNodeFactory.instance.arrayNode();
        comparisons.forEach(row -> array.addObject()
                .put("task", row.task())
                .put("condition", row.condition())
                .put("jobs", row.jobs())
                .put("median", row.median().toPlainString())
                .put("lower", row.lower().toPlainString())
                .put("upper", row.upper().toPlainString())
                .put("standard", row.standard().toPlainString())
                .put("suggestion", row.suggestion().map(Object::toString).orElse(null)));
        return array;
    }

    static void hours(PrintWriter out, List<TimeComparison> comparisons) {
        comparisons.forEach(row -> out.printf(
                "%-6s %-18s %3d jobs, median %s h (%s to %s), standard %s h%s%n",
                row.task(),
                row.condition(),
                row.jobs(),
                row.median().toPlainString(),
                row.lower().toPlainString(),
                row.upper().toPlainString(),
                row.standard().toPlainString(),
                row.suggestion()
                        .map(factor -> "; suggested factor " + factor + ", a person decides")
                        .orElse("")));
    }
}

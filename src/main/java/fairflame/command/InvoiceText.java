package fairflame.command;

import com.fasterxml.jackson.databind.node.ObjectNode;
import fairflame.money.Amounts;
import fairflame.visit.Billing;
import java.io.PrintWriter;

/** An invoice for people and for programs. */
final class InvoiceText {
    private InvoiceText() {}

    static ObjectNode data(Billing.Result result) {
        var invoice = result.invoice();
        var totals = invoice.totals();
        var root = Printing.object()
                .put("number", invoice.number())
                .put("quote", invoice.quote())
                .put("revision", invoice.revision())
                .put("issued", invoice.issued().toString())
                .put("due", invoice.due().toString())
                .put("currency", invoice.currency().getCode())
                .put("complete", invoice.complete())
                .put("subtotal", Amounts.plain(totals.subtotal()))
                .put("discount", Amounts.plain(totals.discount()))
                .put("tax", Amounts.plain(totals.tax()))
                .put("total", Amounts.plain(totals.total()))
                .put("paid", Amounts.plain(invoice.paid()))
                .put("balance", Amounts.plain(result.balance()));
        var lines = root.putArray("lines");
        invoice.lines()
                .forEach(line -> lines.addObject()
                        .put("id", line.id())
                        .put("description", line.description())
                        .put("quantity", line.quantity().toPlainString())
                        .put("net", Amounts.plain(line.net())));
        root.set("notes", Printing.texts(invoice.notes()));
        root.set("files", Printing.texts(result.files()));
        return root;
    }

    static void print(PrintWriter out, Billing.Result result) {
        var invoice = result.invoice();
        out.printf(
                "Invoice %s for quote %s: total %s, paid %s, balance %s, due %s%n",
                invoice.number(),
                invoice.quote(),
                Amounts.plain(invoice.totals().total()),
                Amounts.plain(invoice.paid()),
                Amounts.plain(result.balance()),
                invoice.due());
        out.println(
                invoice.complete() ? "The work is on record as complete." : "The work is NOT on record as complete.");
        invoice.notes().forEach(note -> out.println("  " + note));
        out.println("Written: " + String.join(", ", result.files()));
    }
}

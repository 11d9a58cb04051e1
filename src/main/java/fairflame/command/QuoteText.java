package fairflame.command;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import fairflame.money.Amounts;
import fairflame.quote.Basis;
import fairflame.quote.Choice;
import fairflame.quote.Line;
import fairflame.quote.Note;
import fairflame.quote.Quote;
import fairflame.quote.StopWorkSheet;
import java.io.PrintWriter;
import java.util.List;
import java.util.stream.Collectors;

/** A quote for people and for programs. Money is written as text with two decimals. */
final class QuoteText {
    private QuoteText() {}

    static ObjectNode data(Quote quote, List<String> files) {
        var root = Printing.object()
                .put("number", quote.number())
                .put("revision", quote.revision())
                .put("visit", quote.visit())
                .put("outcome", quote.repair() ? "settled" : "not-settled")
                .put("kind", quote.repair() ? "repair" : "diagnosis-only")
                .put("made", quote.made().toString())
                .put("validUntil", quote.validUntil().toString())
                .put("currency", quote.currency().getCode())
                .put("finding", quote.finding().headline());
        var choices = root.putArray("choices");
        quote.choices().forEach(choice -> choices.add(choice(choice)));
        root.set("notes", notes(quote.notes()));
        root.set("assumed", Printing.texts(quote.assumed()));
        root.set("files", Printing.texts(files));
        return root;
    }

    private static ObjectNode choice(Choice choice) {
        var totals = choice.totals();
        var node = Printing.object()
                .put("id", choice.id())
                .put("title", choice.title())
                .put("suggested", choice.suggested())
                .put("leavesUnfixed", choice.leavesUnfixed())
                .put("hours", choice.hours().toPlainString())
                .put("subtotal", Amounts.plain(totals.subtotal()))
                .put("discount", Amounts.plain(totals.discount()))
                .put("tax", Amounts.plain(totals.tax()))
                .put("total", Amounts.plain(totals.total()))
                .put("deposit", Amounts.plain(choice.deposit()));
        var lines = node.putArray("lines");
        choice.lines().forEach(line -> lines.add(line(line)));
        var taxes = node.putArray("taxes");
        totals.taxes()
                .forEach(tax -> taxes.addObject()
                        .put("name", tax.name())
                        .put("rate", tax.rate().value().toPlainString())
                        .put("base", Amounts.plain(tax.base()))
                        .put("amount", Amounts.plain(tax.amount())));
        node.set("notes", notes(choice.notes()));
        node.set("tests", Printing.texts(choice.tests()));
        node.set("arithmetic", Printing.texts(choice.arithmetic()));
        return node;
    }

    private static JsonNode line(Line line) {
        return Printing.object()
                .put("id", line.id())
                .put("kind", line.kind().word())
                .put("item", line.item())
                .put("description", line.description())
                .put("quantity", line.quantity().toPlainString())
                .put("unit", line.unit())
                .put("unitPrice", Amounts.plain(line.unitPrice()))
                .put("net", Amounts.plain(line.net()))
                .put("taxable", line.taxable())
                .set("basis", basis(line.basis()));
    }

    private static ArrayNode basis(List<Basis> basis) {
        var array = Printing.object().putArray("basis");
        basis.forEach(each -> array.addObject()
                .put("what", each.what())
                .put("words", each.words())
                .put("source", each.source()));
        return array;
    }

    private static ArrayNode notes(List<Note> notes) {
        var array = Printing.object().putArray("notes");
        notes.forEach(note -> array.addObject()
                .put("rule", note.rule())
                .put("text", note.text())
                .put("boxed", note.boxed())
                .put("because", note.because()));
        return array;
    }

    static ObjectNode data(StopWorkSheet sheet, List<String> files) {
        var root = Printing.object()
                .put("visit", sheet.visit())
                .put("outcome", "stop-work")
                .put("headline", sheet.headline());
        root.putArray("choices");
        var notes = root.putArray("notes");
        sheet.always()
                .forEach(words -> notes.addObject().put("rule", "STOP-WORK").put("text", words));
        var dangers = root.putArray("dangers");
        sheet.dangers()
                .forEach(danger -> dangers.addObject()
                        .put("gate", danger.gate())
                        .put("title", danger.title())
                        .put("found", danger.found())
                        .set("advice", Printing.texts(danger.advice())));
        root.set("files", Printing.texts(files));
        return root;
    }

    static void print(PrintWriter out, Quote quote) {
        out.println(
                "Quote " + quote.number() + ", revision " + quote.revision() + ", valid until " + quote.validUntil());
        out.println("  " + quote.finding().headline());
        for (var choice : quote.choices()) {
            out.println();
            out.println("  " + choice.id() + (choice.suggested() ? " (suggested)" : "") + ": " + choice.title());
            choice.lines()
                    .forEach(line -> out.printf(
                            "    %-4s %-52.52s %8s %-5.5s %10s%n",
                            line.id(),
                            line.description(),
                            line.quantity().stripTrailingZeros().toPlainString(),
                            line.unit(),
                            Amounts.plain(line.net())));
            choice.totals()
                    .taxes()
                    .forEach(tax ->
                            out.printf("    %-72s %10s%n", tax.name() + " " + tax.rate(), Amounts.plain(tax.amount())));
            out.printf(
                    "    %-72s %10s%n",
                    "TOTAL " + quote.currency(), Amounts.plain(choice.totals().total()));
            choice.arithmetic().forEach(words -> out.println("    " + words));
            if (!choice.leavesUnfixed().isEmpty()) {
                out.println("    Leaves unfixed: " + choice.leavesUnfixed());
            }
        }
        out.println();
        var boxed = quote.choices().stream()
                .flatMap(choice -> quote.notes(choice).stream())
                .filter(Note::boxed)
                .map(note -> note.rule() + ": " + note.text())
                .collect(Collectors.toCollection(java.util.LinkedHashSet::new));
        boxed.forEach(note -> out.println("  ! " + note));
        quote.assumed().forEach(words -> out.println("  assumed: " + words));
    }
}

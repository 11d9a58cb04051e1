package fairflame.command;

import com.fasterxml.jackson.databind.JsonNode;
import fairflame.invoice.order.OrderSheet;
import fairflame.money.Amounts;
import fairflame.visit.Ordering;
import fairflame.visit.Workplace;
import java.io.PrintWriter;
import java.util.List;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Lists the parts that signed quotes still need, or marks those of one supplier as ordered. */
@Command(
        name = "order",
        mixinStandardHelpOptions = true,
        description = "List parts to order for signed quotes, by supplier; with --place write the order and mark it.")
final class OrderCommand extends ShopCommand {
    @Option(names = "--place", paramLabel = "SUPPLIER", description = "order everything from this supplier")
    private @Nullable String place;

    @Override
    void run(Workplace workplace) {
        var ordering = new Ordering(workplace);
        var supplier = place;
        if (supplier == null) {
            var sheets = ordering.sheets();
            print(() -> data(sheets), out -> text(out, sheets));
            return;
        }
        var placed = ordering.place(supplier);
        print(
                () -> {
                    var root = Printing.object()
                            .put("number", placed.content().number())
                            .put("supplier", supplier);
                    root.set("files", Printing.texts(placed.files()));
                    return root;
                },
                out -> out.println(placed.content().number() + " placed with " + supplier + ". Written: "
                        + String.join(", ", placed.files())));
    }

    private static JsonNode data(List<OrderSheet> sheets) {
        var root = Printing.object();
        var array = root.putArray("orders");
        for (var sheet : sheets) {
            var lines = array.addObject().put("supplier", sheet.supplier().id()).putArray("lines");
            sheet.lines().forEach(line -> {
                var node = lines.addObject()
                        .put("part", line.part().number())
                        .put("description", line.part().description())
                        .put("quantity", line.quantity().toPlainString())
                        .put("needed", line.needed().toPlainString())
                        .put("unit", line.part().unit())
                        .put("cost", Amounts.plain(line.cost()));
                var uses = node.putArray("for");
                line.uses()
                        .forEach(use -> uses.addObject()
                                .put("quote", use.quote())
                                .put("quantity", use.quantity().toPlainString()));
            });
        }
        return root;
    }

    private static void text(PrintWriter out, List<OrderSheet> sheets) {
        for (var sheet : sheets) {
            out.println(sheet.supplier().id() + ", " + sheet.supplier().name());
            sheet.lines()
                    .forEach(line -> out.printf(
                            "  %-10s %8s %-6s %10s  %s%n",
                            line.part().number(),
                            line.quantity().toPlainString(),
                            line.part().unit(),
                            Amounts.plain(line.cost()),
                            line.part().description()));
        }
        if (sheets.isEmpty()) {
            out.println("Nothing to order.");
        }
    }
}

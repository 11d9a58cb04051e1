package fairflame.command;

import fairflame.money.Amounts;
import fairflame.visit.Repricing;
import fairflame.visit.Workplace;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Shows what an unsigned quote would come to at today's prices; with {@code --make} makes the new revision. */
@Command(
        name = "reprice",
        mixinStandardHelpOptions = true,
        description = "Show what an unsigned quote would come to at today's prices; --make makes the new revision.")
final class RepriceCommand extends ShopCommand {
    @Parameters(paramLabel = "QUOTE", description = "number of the quote")
    private String quote;

    @Option(names = "--make", description = "make the new revision")
    private boolean make;

    @Override
    void run(Workplace workplace) {
        var repricing = new Repricing(workplace);
        var differences = repricing.differences(quote);
        var revision = make ? repricing.make(quote).revision() : 0;
        print(
                () -> {
                    var root = Printing.object().put("quote", quote).put("newRevision", revision);
                    var array = root.putArray("choices");
                    differences.forEach(each -> array.addObject()
                            .put("id", each.choice())
                            .put("then", Amounts.plain(each.then()))
                            .put("now", Amounts.plain(each.now()))
                            .set("lines", Printing.texts(each.lines())));
                    return root;
                },
                out -> {
                    differences.forEach(each -> {
                        out.println(
                                each.choice() + ": " + Amounts.plain(each.then()) + " -> " + Amounts.plain(each.now()));
                        each.lines().forEach(line -> out.println("  " + line));
                    });
                    out.println(differences.isEmpty() ? "Nothing has changed." : "");
                    if (revision > 0) {
                        out.println(quote + " is at revision " + revision + ".");
                    }
                });
    }
}

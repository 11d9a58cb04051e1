package fairflame.command;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import fairflame.gas.LayoutDrawing;
import fairflame.gas.Pipe;
import fairflame.gas.Plan;
import fairflame.gas.PlanChoices;
import fairflame.money.Amounts;
import fairflame.quantity.Pressure;
import fairflame.visit.GasLine;
import fairflame.visit.LayoutFile;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Prints the cheapest set of changes that makes a gas line enough, proven optimal, and its alternatives. */
@Command(
        name = "plan",
        mixinStandardHelpOptions = true,
        description = "The cheapest changes after which every appliance has its pressure, at the shop's own prices.")
final class PlanCommand implements Callable<Integer> {
    @Parameters(paramLabel = "LAYOUT", description = "layout file, see docs/formats/layout.schema.json")
    private Path file;

    @Option(names = "--place", paramLabel = "ID", required = true, description = "jurisdiction, such as larkwell")
    private String place;

    @Option(
            names = "--raise-to",
            paramLabel = "PRESSURE",
            description = "delivery pressure that the gas supplier has agreed to, such as 2psi")
    private @Nullable Pressure raised;

    @Option(
            names = "--svg",
            paramLabel = "FILE",
            description = "write the line before and after the cheapest plan as a scalable drawing")
    private @Nullable Path svg;

    @Mixin
    private ShopOptions shop;

    @Mixin
    private Printing printing;

    @Override
    public Integer call() {
        var library = shop.library();
        var layout = LayoutFile.read(file, library.tables());
        var choices = new GasLine(library).plan(layout, place, Optional.ofNullable(raised));
        var picture = svg;
        if (picture != null) {
            choices.best()
                    .ifPresent(best -> LayoutFile.writeDrawing(
                            picture, LayoutDrawing.beforeAndAfter(library.tables(), layout, best)));
        }
        printing.print(() -> data(choices), out -> text(out, choices));
        return 0;
    }

    private static JsonNode data(PlanChoices choices) {
        var root = Printing.object();
        choices.best().ifPresentOrElse(best -> root.set("best", plan(best)), () -> root.putNull("best"));
        var alternatives = root.putArray("alternatives");
        choices.alternatives().forEach(plan -> alternatives.add(plan(plan)));
        root.putObject("proof")
                .put(
                        "optimalCost",
                        choices.best().map(best -> Amounts.plain(best.cost())).orElse(null))
                .put("states", choices.proof().states())
                .put("searches", choices.proof().searches());
        root.set("notes", Printing.texts(choices.notes()));
        return root;
    }

    private static ObjectNode plan(Plan plan) {
        var node = Printing.object()
                .put("kind", plan.kind().name().toLowerCase(Locale.ROOT).replace('_', '-'))
                .put("cost", Amounts.plain(plan.cost()));
        var changes = node.putArray("changes");
        plan.changes()
                .forEach(change -> changes.addObject()
                        .put(
                                "kind",
                                change.kind().name().toLowerCase(Locale.ROOT).replace('_', '-'))
                        .put("at", change.at())
                        .put(
                                "material",
                                change.pipe()
                                        .map(pipe -> pipe.material().word())
                                        .orElse(null))
                        .put("size", change.pipe().map(Pipe::size).orElse(null))
                        .put("price", Amounts.plain(change.price()))
                        .put("words", change.words()));
        var appliances = node.putArray("appliances");
        plan.firing()
                .appliances()
                .forEach(outlet -> appliances
                        .addObject()
                        .put("id", outlet.id())
                        .put("pressureInH2O", Printing.rounded(outlet.pressure().inchesWater(), 2))
                        .put("enough", outlet.enough()));
        return node;
    }

    private static void text(PrintWriter out, PlanChoices choices) {
        choices.best()
                .ifPresentOrElse(
                        best -> text(out, "Cheapest", best),
                        () -> out.println("Nothing that is offered makes it enough."));
        choices.alternatives().forEach(plan -> text(out, "Or", plan));
        out.printf(
                "Proof: %,d states kept in %d exact searches.%n",
                choices.proof().states(), choices.proof().searches());
        choices.notes().forEach(note -> out.println("  note: " + note));
    }

    private static void text(PrintWriter out, String head, Plan plan) {
        out.println(head + ", " + plan.kind().words() + ": " + plan.cost());
        plan.changes().forEach(change -> out.printf("  %-70s %12s%n", change.words(), Amounts.plain(change.price())));
        plan.firing()
                .appliances()
                .forEach(outlet -> out.printf(
                        "  %-20s %.2f in w.c., needs %.2f%n",
                        outlet.id(),
                        outlet.pressure().inchesWater(),
                        outlet.inlet().minimum().inchesWater()));
    }
}

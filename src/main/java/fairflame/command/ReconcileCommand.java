package fairflame.command;

import fairflame.gas.GasTables;
import fairflame.gas.Measured;
import fairflame.gas.Reconciliation;
import fairflame.quantity.GasFlow;
import fairflame.quantity.Pressure;
import fairflame.visit.GasLine;
import fairflame.visit.LayoutFile;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Holds measured pressures against what the pipe predicts: is pipe size to blame at all? */
@Command(
        name = "reconcile",
        mixinStandardHelpOptions = true,
        description = "Does pipe size explain a measured dip, or is something else to be looked at first?")
final class ReconcileCommand implements Callable<Integer> {
    @Parameters(paramLabel = "LAYOUT", description = "layout file, see docs/formats/layout.schema.json")
    private Path file;

    @Option(
            names = "--static",
            required = true,
            description = "pressure at the appliance with no gas flowing, such as 10inwc")
    private Pressure still;

    @Option(
            names = "--firing",
            required = true,
            description = "lowest pressure at the appliance while firing, such as 6inwc")
    private Pressure firing;

    @Option(names = "--meter-firing", description = "pressure at the meter in the same state")
    private @Nullable Pressure meter;

    @Option(names = "--clocked", description = "flow of the appliance by the meter's dial, such as 374cfh")
    private @Nullable GasFlow clocked;

    @Option(names = "--appliance", paramLabel = "ID", description = "the largest one when left out")
    private @Nullable String appliance;

    @Option(names = "--all-firing", description = "everything fired during the reading, not the appliance alone")
    private boolean allFiring;

    @Mixin
    private ShopOptions shop;

    @Mixin
    private Printing printing;

    @Override
    public Integer call() {
        var layout = LayoutFile.read(file, GasTables.shipped());
        var asked = appliance;
        var measured = new Measured(still, firing, Optional.ofNullable(meter), Optional.ofNullable(clocked));
        var result = new GasLine(shop.library())
                .reconcile(layout, asked == null ? layout.largest().id() : asked, measured, allFiring);
        printing.print(
                () -> Printing.object()
                        .put("verdict", word(result))
                        .put("measuredInH2O", Printing.rounded(result.measured().inchesWater(), 2))
                        .put(
                                "predictedInH2O",
                                Printing.rounded(result.predicted().inchesWater(), 2))
                        .put("lowestInH2O", Printing.rounded(result.lowest().inchesWater(), 2))
                        .put("highestInH2O", Printing.rounded(result.highest().inchesWater(), 2))
                        .put("words", result.words())
                        .set("lookAt", Printing.texts(result.lookAt())),
                out -> {
                    out.println(result.words());
                    result.lookAt().forEach(place -> out.println("  look first at: " + place));
                });
        return 0;
    }

    private static String word(Reconciliation result) {
        return result.verdict().name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}

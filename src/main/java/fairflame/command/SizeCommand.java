package fairflame.command;

import com.fasterxml.jackson.databind.JsonNode;
import fairflame.gas.Firing;
import fairflame.gas.GasTables;
import fairflame.gas.Layout;
import fairflame.gas.LayoutDrawing;
import fairflame.gas.Method;
import fairflame.gas.Pipe;
import fairflame.gas.PressureProfile;
import fairflame.gas.Sizing;
import fairflame.visit.LayoutFile;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Locale;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Sizes a gas line by the code's method and prints the pressure at every appliance. */
@Command(
        name = "size",
        mixinStandardHelpOptions = true,
        description = "Size every segment of a gas line and predict the pressure at every appliance, all firing.")
final class SizeCommand implements Callable<Integer> {
    @Parameters(paramLabel = "LAYOUT", description = "layout file, see docs/formats/layout.schema.json")
    private Path file;

    @Option(names = "--method", description = "longest-length, branch-length or hybrid")
    private @Nullable Method method;

    @Option(names = "--svg", paramLabel = "FILE", description = "write the line as a scalable drawing")
    private @Nullable Path svg;

    @Mixin
    private Printing printing;

    @Override
    public Integer call() {
        var tables = GasTables.shipped();
        var layout = LayoutFile.read(file, tables);
        var sizing = Sizing.of(tables, layout, method == null ? Method.usualFor(layout) : method);
        var profile = PressureProfile.of(tables, layout, Firing.all(layout));
        var picture = svg;
        if (picture != null) {
            LayoutFile.writeDrawing(picture, LayoutDrawing.of(tables, layout, layout.site()));
        }
        var alone = PressureProfile.of(
                tables, layout, Firing.alone(layout, layout.largest().id()));
        printing.print(() -> data(layout, sizing, profile, alone), out -> text(out, layout, sizing, profile, alone));
        return 0;
    }

    private static JsonNode data(Layout layout, Sizing sizing, PressureProfile profile, PressureProfile alone) {
        var root = Printing.object().put("method", sizing.method().words());
        var segments = root.putArray("segments");
        for (var size : sizing.segments()) {
            segments.addObject()
                    .put("id", size.id())
                    .put("flowCfh", Printing.rounded(size.flow().cubicFeetPerHour(), 1))
                    .put("lengthUsedFt", Printing.rounded(size.lengthUsed().feet(), 2))
                    .put("requiredSize", size.required().map(Pipe::size).orElse(null))
                    .put("installedSize", size.installed().size())
                    .put("enough", size.enough())
                    .put("carriesCfh", Printing.rounded(size.carries().flow().cubicFeetPerHour(), 1))
                    .put("by", size.carries().by())
                    .put(
                            "actualFlowCfh",
                            Printing.rounded(profile.segment(size.id()).flow().cubicFeetPerHour(), 1))
                    .put(
                            "dropInH2O",
                            Printing.rounded(profile.segment(size.id()).drop().inchesWater(), 2));
        }
        var appliances = root.putArray("appliances");
        for (var outlet : profile.appliances()) {
            appliances
                    .addObject()
                    .put("id", outlet.id())
                    .put("pressureInH2O", Printing.rounded(outlet.pressure().inchesWater(), 2))
                    .put(
                            "minimumInH2O",
                            Printing.rounded(outlet.inlet().minimum().inchesWater(), 2))
                    .put("flowCfh", Printing.rounded(outlet.flow().cubicFeetPerHour(), 1))
                    .put("enough", outlet.enough());
        }
        var largest = layout.largest().id();
        root.putObject("alone")
                .put("id", largest)
                .put(
                        "pressureInH2O",
                        Printing.rounded(alone.appliance(largest).pressure().inchesWater(), 2));
        root.put(
                "supply",
                sizing.supply().answer().name().toLowerCase(Locale.ROOT).replace('_', '-'));
        root.put("supplyWords", sizing.supply().words());
        root.set("notes", Printing.texts(sizing.notes()));
        return root;
    }

    private static void text(
            PrintWriter out, Layout layout, Sizing sizing, PressureProfile profile, PressureProfile alone) {
        out.println(layout.site() + ", " + sizing.method().words());
        out.printf(
                "%-14s %12s %14s %10s %10s  %s%n",
                "segment", "flow ft\u00B3/h", "length used ft", "required", "installed", "");
        for (var size : sizing.segments()) {
            out.printf(
                    "%-14s %12.1f %14.1f %10s %10s  %s%n",
                    size.id(),
                    size.flow().cubicFeetPerHour(),
                    size.lengthUsed().feet(),
                    size.required().map(Pipe::size).orElse("none"),
                    size.installed().size(),
                    size.enough() ? "enough" : "TOO SMALL");
        }
        out.printf("%-14s %18s %15s%n", "appliance", "pressure in w.c.", "needs in w.c.");
        for (var outlet : profile.appliances()) {
            out.printf(
                    "%-14s %18.2f %15.2f  %s%n",
                    outlet.id(),
                    outlet.pressure().inchesWater(),
                    outlet.inlet().minimum().inchesWater(),
                    outlet.enough() ? "enough" : "TOO LOW");
        }
        var largest = layout.largest().id();
        out.printf(
                "%s alone: %.2f in w.c.%n",
                largest, alone.appliance(largest).pressure().inchesWater());
        out.println(sizing.supply().words());
        sizing.notes().forEach(note -> out.println("  note: " + note));
    }
}

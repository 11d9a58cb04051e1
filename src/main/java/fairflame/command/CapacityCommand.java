package fairflame.command;

import com.fasterxml.jackson.databind.JsonNode;
import fairflame.Refusal;
import fairflame.gas.Capacity;
import fairflame.gas.Fuel;
import fairflame.gas.Gas;
import fairflame.gas.GasTables;
import fairflame.gas.Material;
import fairflame.gas.Pipe;
import fairflame.gas.Run;
import fairflame.quantity.HeatingValue;
import fairflame.quantity.Length;
import fairflame.quantity.Pressure;
import java.io.PrintWriter;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Prints what one run of pipe carries and which table or equation says so. */
@Command(
        name = "capacity",
        mixinStandardHelpOptions = true,
        description =
                "What one run of gas pipe carries. Every value is given with its unit: ft, m, inwc, psi, kPa, mbar.")
final class CapacityCommand implements Callable<Integer> {
    @Option(names = "--gas", required = true, description = "natural or propane")
    private Fuel fuel;

    @Option(
            names = "--material",
            required = true,
            description = "steel-schedule-40, copper-k, copper-l, polyethylene or csst")
    private Material material;

    @Option(names = "--size", description = "nominal size such as 1-1/4; not for csst")
    private @Nullable String size;

    @Option(names = "--ehd", description = "equivalent hydraulic diameter of csst, such as 25")
    private @Nullable String ehd;

    @Option(names = "--length", required = true, description = "equivalent length such as 60ft")
    private Length length;

    @Option(names = "--inlet", required = true, description = "gauge pressure at the beginning such as 7inwc")
    private Pressure inlet;

    @Option(names = "--drop", required = true, description = "allowed drop such as 0.5inwc")
    private Pressure drop;

    @Option(names = "--heating-value", description = "such as 1030btu/ft3; without it the code's figure is assumed")
    private @Nullable HeatingValue heatingValue;

    @Option(names = "--specific-gravity", description = "relative to air; without it the code's figure is assumed")
    private @Nullable Double specificGravity;

    @Mixin
    private Printing printing;

    @Override
    public Integer call() {
        var gas = Gas.of(fuel, Optional.ofNullable(specificGravity), Optional.ofNullable(heatingValue));
        var tables = GasTables.shipped();
        var run = new Run(gas, tables.known(pipe()), length, inlet, drop);
        var capacity = Capacity.of(tables, run);
        printing.print(() -> data(capacity), out -> text(out, run, capacity));
        return 0;
    }

    private Pipe pipe() {
        var wanted = material == Material.CSST ? ehd : size;
        var option = material == Material.CSST ? "--ehd" : "--size";
        if (wanted == null || (size != null && ehd != null)) {
            throw Refusal.missing("option " + option, "--ehd for csst, --size for every other material, never both");
        }
        return new Pipe(material, wanted);
    }

    private static JsonNode data(Capacity capacity) {
        return Printing.object()
                .put("capacityCfh", Printing.rounded(capacity.flow().cubicFeetPerHour(), 1))
                .put("capacityBtuPerHour", Printing.rounded(capacity.heat().btuPerHour(), 0))
                .put("by", capacity.by())
                .put("basis", capacity.basis().name().toLowerCase(java.util.Locale.ROOT))
                .set("notes", Printing.texts(capacity.notes()));
    }

    private static void text(PrintWriter out, Run run, Capacity capacity) {
        out.printf(
                "%s carries %,.1f ft\u00B3/h = %,.0f Btu/h over %.1f ft%n",
                run.pipe().words(),
                capacity.flow().cubicFeetPerHour(),
                capacity.heat().btuPerHour(),
                run.length().feet());
        out.println("by " + capacity.by());
        capacity.notes().forEach(note -> out.println("  note: " + note));
    }
}

package fairflame.command;

import fairflame.gas.AirTest;
import fairflame.quantity.Pressure;
import fairflame.quantity.Temperature;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Prints what a tight line under test shows after its air has warmed or cooled. */
@Command(
        name = "air-test",
        mixinStandardHelpOptions = true,
        description = "The pressure that a tight gas line under test shows at another temperature.")
final class AirTestCommand implements Callable<Integer> {
    @Option(names = "--start", required = true, description = "gauge pressure at first, such as 20psi")
    private Pressure start;

    @Option(names = "--from", required = true, description = "temperature of the pipe at first, such as 70f")
    private Temperature from;

    @Option(names = "--to", required = true, description = "temperature later, such as 40f")
    private Temperature to;

    @Mixin
    private Printing printing;

    @Override
    public Integer call() {
        var after = AirTest.after(start, from, to);
        printing.print(
                () -> Printing.object()
                        .put("pressurePsi", Printing.rounded(after.psi(), 2))
                        .put("changePsi", Printing.rounded(after.psi() - start.psi(), 2)),
                out -> out.printf(
                        "A tight line shows %.1f psi then (%+.1f psi), by 2018 IFGC A.7.5.%n",
                        after.psi(), after.psi() - start.psi()));
        return 0;
    }
}

package fairflame.start;

import fairflame.Refusal;
import fairflame.screen.Screens;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneId;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Opens the window. Loaded only when it is asked for, so that the command line runs without a display. */
@Command(
        name = "window",
        mixinStandardHelpOptions = true,
        description = "Open the window on a shop's folder; the invented samples where no shop was begun.")
final class WindowFace implements Callable<Integer> {
    /** The word that asks for it. */
    static final String WORD = "window";

    private static final int REFUSED = 1;

    @Option(
            names = "--out",
            paramLabel = "DIR",
            defaultValue = "fairflame-shop",
            description = "folder of the shop: its database, papers and, once begun, its own catalog and templates")
    private Path out = Path.of("fairflame-shop");

    @Option(
            names = "--by",
            paramLabel = "NAME",
            defaultValue = "technician",
            description = "who works: stands in the journal and on new visits")
    private String by = "technician";

    static int run(PrintWriter out, PrintWriter err, String... arguments) {
        return new CommandLine(new WindowFace())
                .setOut(out)
                .setErr(err)
                .setExecutionExceptionHandler((thrown, command, parsed) -> {
                    if (thrown instanceof Refusal refusal) {
                        command.getErr().println(refusal.getMessage());
                        return REFUSED;
                    }
                    throw thrown;
                })
                .execute(arguments);
    }

    @Override
    public Integer call() {
        Screens.open(out, Clock.system(ZoneId.systemDefault()), by);
        return CommandLine.ExitCode.OK;
    }
}

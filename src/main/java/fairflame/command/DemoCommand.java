package fairflame.command;

import fairflame.visit.Demo;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Runs the whole job on invented visits. */
@Command(
        name = "demo",
        mixinStandardHelpOptions = true,
        description = "Four invented visits from reading to quote, signature, invoice and payment.")
final class DemoCommand implements Callable<Integer> {
    @Option(
            names = "--out",
            paramLabel = "DIR",
            description = "folder for papers and database",
            defaultValue = "demo-out")
    private Path out;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        new Demo(out, spec.commandLine().getOut()::println).run();
        return 0;
    }
}

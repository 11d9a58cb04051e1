package fairflame.command;

import java.util.concurrent.Callable;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** A word with subcommands: on its own it prints the help. */
abstract class CommandGroup implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Override
    public final Integer call() {
        spec.commandLine().usage(spec.commandLine().getOut());
        return 0;
    }
}

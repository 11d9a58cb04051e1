package fairflame.command;

import fairflame.visit.Demo;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

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

    @Mixin
    private Printing printing;

    @Override
    public Integer call() {
        // The story is told as it happens; for programs it is gathered.
        var story = new ArrayList<String>();
        printing.print(
                () -> {
                    new Demo(out, story::add).run();
                    return Printing.object().put("folder", out.toString()).set("story", Printing.texts(story));
                },
                terminal -> new Demo(out, line -> {
                            terminal.println(line);
                            terminal.flush();
                        })
                        .run());
        return 0;
    }
}

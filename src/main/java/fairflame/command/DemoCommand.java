package fairflame.command;

import fairflame.visit.Demo;
import fairflame.wording.Language;
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

    @Option(
            names = "--language",
            paramLabel = "CODE",
            description = "language of the customers, en or es; take a folder of its own for each",
            defaultValue = "en")
    private String language;

    @Mixin
    private Printing printing;

    @Override
    public Integer call() {
        // The story is told as it happens; for programs it is gathered.
        var story = new ArrayList<String>();
        var spoken = Language.of(language);
        printing.print(
                () -> {
                    new Demo(out, spoken, story::add).run();
                    return Printing.object().put("folder", out.toString()).set("story", Printing.texts(story));
                },
                terminal -> new Demo(out, spoken, line -> {
                            terminal.println(line);
                            terminal.flush();
                        })
                        .run());
        return 0;
    }
}

package fairflame.command;

import fairflame.visit.AwayPaper;
import fairflame.visit.Progress;
import fairflame.visit.Workplace;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Writes the paper for a customer who is away, and an e-mail draft that carries it. */
@Command(
        name = "away",
        mixinStandardHelpOptions = true,
        description = "Write a quote as a PDF that a customer who is away fills in and sends back, and an e-mail draft"
                + " with it. What comes back is read by: sign QUOTE --returned FILE")
final class AwayCommand extends ShopCommand {
    @Parameters(paramLabel = "QUOTE", description = "number of the quote, such as Q-2026-0001")
    private String number;

    @Option(
            names = "--language",
            description = "of headings and labels, en or es; that of the quote when left out",
            defaultValue = "")
    private String language;

    @Override
    void run(Workplace workplace) {
        var written = new AwayPaper(workplace, language, Progress.UNWATCHED).write(number);
        var files = List.of(
                String.valueOf(written.paper().getFileName()),
                String.valueOf(written.mail().getFileName()));
        print(
                () -> Printing.object()
                        .put("quote", written.quote())
                        .put("revision", written.revision())
                        .set("files", Printing.texts(files)),
                out -> out.println("Written: " + String.join(", ", files)));
    }
}

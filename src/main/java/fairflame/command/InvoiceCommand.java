package fairflame.command;

import fairflame.visit.Billing;
import fairflame.visit.CompletionFile;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Makes the invoice of a signed quote. */
@Command(
        name = "invoice",
        mixinStandardHelpOptions = true,
        description =
                "Make the invoice of a signed quote. Gas work is complete only with permit, fitter and tests on record.")
final class InvoiceCommand implements Callable<Integer> {
    @Parameters(paramLabel = "QUOTE", description = "number of the signed quote")
    private String number;

    @Mixin
    private WorkOptions work;

    @Option(
            names = "--completion",
            paramLabel = "FILE",
            description = "record of the finished work, see docs/formats/completion.schema.json")
    private @Nullable Path completion;

    @Option(names = "--not-complete", description = "bill without calling the work complete; the paper says so")
    private boolean notComplete;

    @Option(names = "--supplied", paramLabel = "DAY", description = "day of the work; today when left out")
    private @Nullable LocalDate supplied;

    @Option(names = "--due-days", description = "days until payment is due", defaultValue = "14")
    private int dueDays;

    @Mixin
    private Printing printing;

    @Override
    public Integer call() {
        var record = completion == null ? CompletionFile.NOTHING : CompletionFile.read(completion);
        try (var workplace = work.open()) {
            var day = supplied;
            var result = new Billing(workplace)
                    .invoice(
                            number,
                            record,
                            new Billing.Terms(day == null ? workplace.today() : day, dueDays, !notComplete));
            printing.print(() -> InvoiceText.data(result), out -> InvoiceText.print(out, result));
            return 0;
        }
    }
}

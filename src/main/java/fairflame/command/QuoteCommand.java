package fairflame.command;

import fairflame.quote.Quote;
import fairflame.quote.Why;
import fairflame.visit.CustomerLanguage;
import fairflame.visit.Library;
import fairflame.visit.Offer;
import fairflame.visit.VisitRecord;
import fairflame.wording.Language;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Makes the quote of a visit, stores it and writes its papers; or answers why a figure is what it is. */
@Command(
        name = "quote",
        mixinStandardHelpOptions = true,
        description =
                "Make the quote of a visit: PDF, spreadsheet and data in the folder. Stop-work ends with exit code 3.")
final class QuoteCommand implements Callable<Integer> {
    @Parameters(paramLabel = "VISIT", description = "visit file, see docs/formats/visit.schema.json")
    private Path file;

    @Mixin
    private WorkOptions work;

    @Option(
            names = "--why",
            paramLabel = "LINE",
            description = "print the ground of one line (L1, L2) or total (hours, subtotal, tax, total, deposit)")
    private @Nullable String why;

    @Option(names = "--choice", paramLabel = "ID", description = "choice to ask about; the suggested one when left out")
    private @Nullable String choice;

    @Option(
            names = "--done",
            paramLabel = "SENTENCE",
            description = "what was done about a danger, for the stop-work sheet; may be repeated")
    private List<String> done = List.of();

    @Option(
            names = "--language",
            paramLabel = "CODE",
            description =
                    "language of the customer, en or es, instead of the one in the visit file; kept with the visit")
    private @Nullable String language;

    @Mixin
    private Printing printing;

    @Override
    public Integer call() {
        var library = work.shop().library();
        var visit = spoken(work.shop().visit(file, library), library);
        try (var workplace = work.open(library)) {
            return new Offer(workplace)
                    .make(visit, done)
                    .match(
                            quoted -> {
                                print(quoted);
                                return 0;
                            },
                            halted -> {
                                printing.print(() -> QuoteText.data(halted.sheet(), halted.files()), out -> {
                                    FindingText.print(out, halted.examined());
                                    out.println("No price was made. Written: " + String.join(", ", halted.files()));
                                });
                                return CommandFace.STOP_WORK;
                            });
        }
    }

    private VisitRecord spoken(VisitRecord visit, Library library) {
        var wanted = language;
        return wanted == null ? visit : CustomerLanguage.of(visit, Language.of(wanted), library);
    }

    private void print(Offer.Quoted quoted) {
        var quote = quoted.quote();
        var line = why;
        if (line != null) {
            var chain = Why.chain(quote, asked(quote), line);
            printing.print(() -> Printing.texts(chain), out -> chain.forEach(out::println));
            return;
        }
        printing.print(() -> QuoteText.data(quote, quoted.files()), out -> {
            FindingText.print(out, quoted.examined());
            out.println();
            QuoteText.print(out, quote);
            out.println("Written: " + String.join(", ", quoted.files()));
        });
    }

    private String asked(Quote quote) {
        var named = choice;
        return named != null
                ? named
                : quote.choices().stream()
                        .filter(each -> each.suggested())
                        .findFirst()
                        .orElseThrow()
                        .id();
    }
}

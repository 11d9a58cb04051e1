package fairflame.command;

import fairflame.diagnosis.Finding;
import fairflame.visit.Examination;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Prints what a visit's readings prove, or what to check next. */
@Command(
        name = "diagnose",
        mixinStandardHelpOptions = true,
        description =
                "What the readings of a visit prove, with the reasons; or the next check; or stop-work (exit code 3).")
final class DiagnoseCommand implements Callable<Integer> {
    @Parameters(paramLabel = "VISIT", description = "visit file, see docs/formats/visit.schema.json")
    private Path file;

    @Mixin
    private ShopOptions shop;

    @Mixin
    private Printing printing;

    @Override
    public Integer call() {
        var library = shop.library();
        var examined = Examination.of(shop.visit(file, library), library);
        printing.print(() -> FindingText.data(examined), out -> FindingText.print(out, examined));
        return exitCode(examined.finding());
    }

    static int exitCode(Finding finding) {
        return finding.match(settled -> 0, unsettled -> 0, danger -> CommandFace.STOP_WORK);
    }
}

package fairflame.command;

import fairflame.agreement.CancelRight;
import fairflame.agreement.OnPaper;
import fairflame.agreement.SigningAct;
import fairflame.money.Amounts;
import fairflame.quote.Quote;
import fairflame.visit.Agreeing;
import fairflame.visit.PaperReturn;
import fairflame.visit.StrokesFile;
import fairflame.visit.Workplace;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Takes the customer's signature on a quote and seals it. Without the consents it prints what would be agreed to. */
@Command(
        name = "sign",
        mixinStandardHelpOptions = true,
        description =
                "Sign one choice of a quote. Nothing is assumed: each consent and each declined choice is an option.")
final class SignCommand implements Callable<Integer> {
    @Parameters(paramLabel = "QUOTE", description = "number of the quote, such as Q-2026-0001")
    private String number;

    @Mixin
    private WorkOptions work;

    @Option(names = "--choice", paramLabel = "ID", description = "the choice taken")
    private String choice = "";

    @Option(names = "--name", description = "name as the signer writes it")
    private String name = "";

    @Option(names = "--role", description = "owner, tenant or agent", defaultValue = "owner")
    private String role;

    @Option(names = "--authorise", description = "the signer authorises the work for its total")
    private boolean authorise;

    @Option(names = "--electronic", description = "the signer agrees to sign on a screen, paper having been offered")
    private boolean electronic;

    @Option(
            names = "--decline",
            paramLabel = "ID",
            description = "a choice that the signer says no to, after its words were read; once for each other choice")
    private List<String> declined = List.of();

    @Option(
            names = "--strokes",
            paramLabel = "FILE",
            description = "drawn signature: a JSON list of lines, each a list of x,y")
    private @Nullable Path strokes;

    @Option(
            names = "--returned",
            paramLabel = "FILE",
            description = "the paper of 'away', filled in by the customer: choice, name and consents are read from it")
    private @Nullable Path returned;

    @Mixin
    private Printing printing;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        refuseHalfLine();
        try (var workplace = work.open()) {
            var agreeing = new Agreeing(workplace);
            var quote = agreeing.quote(number);
            if (returned != null) {
                return new PaperReturn(workplace)
                        .read(number, returned)
                        .match(ordered -> tell(agreeing, quote, ordered.result()), this::tell);
            }
            return tell(agreeing, quote, agreeing.sign(number, choice, act(workplace, agreeing, quote)));
        }
    }

    private void refuseHalfLine() {
        boolean told = !choice.isEmpty() || !name.isEmpty() || authorise || electronic || !declined.isEmpty();
        if (returned != null && (told || strokes != null)) {
            throw new ParameterException(
                    spec.commandLine(), "--returned stands alone: what was agreed to is read from the paper");
        }
        if (returned == null && choice.isEmpty()) {
            throw new ParameterException(spec.commandLine(), "Missing required option: '--choice=ID'");
        }
        if (returned == null && name.isEmpty()) {
            throw new ParameterException(spec.commandLine(), "Missing required option: '--name=<name>'");
        }
    }

    private Integer tell(PaperReturn.NoneTaken none) {
        printing.print(
                () -> Printing.object()
                        .put("quote", none.quote())
                        .putNull("choice")
                        .put("name", none.name())
                        .put("dated", none.dated().toString())
                        .put("kept", none.file()),
                out -> out.println(
                        none.name() + " takes none of the choices of " + none.quote() + "; kept as " + none.file()));
        return 0;
    }

    private Integer tell(Agreeing agreeing, Quote quote, Agreeing.Result result) {
        var signed = result.signed();
        var taken = signed.choice();
        var paper = signed.signature().paper();
        printing.print(
                () -> Printing.object()
                        .put("quote", signed.quote().number())
                        .put("revision", signed.quote().revision())
                        .put("choice", signed.choice())
                        .put("total", Amounts.plain(signed.taken().totals().total()))
                        .put("deposit", Amounts.plain(signed.taken().deposit()))
                        .put("signedAt", signed.signature().at().toString())
                        .put("content", signed.seal().content())
                        .put("chain", signed.seal().chain())
                        .put("dated", paper.map(each -> each.dated().toString()).orElse(null))
                        .put("returnedFile", paper.map(OnPaper::file).orElse(null))
                        .put("returnedDigest", paper.map(OnPaper::sha256).orElse(null))
                        .put(
                                "lastDayToCancel",
                                CancelRight.of(signed)
                                        .map(right -> right.lastDay().toString())
                                        .orElse(null))
                        .set("files", Printing.texts(result.files())),
                out -> {
                    print(out, agreeing, quote, taken);
                    out.println("Signed by " + signed.signature().name() + " at "
                            + signed.signature().at() + ", seal "
                            + signed.seal().brief());
                    CancelRight.of(signed)
                            .ifPresent(right -> out.println("May be cancelled until midnight of " + right.lastDay()));
                    out.println("Written: " + String.join(", ", result.files()));
                });
        return 0;
    }

    private static void print(PrintWriter out, Agreeing agreeing, Quote quote, String choice) {
        agreeing.consent(quote, choice).forEach(out::println);
        agreeing.declines(quote, choice).values().forEach(words -> out.println("Declined: " + words));
    }

    private SigningAct act(Workplace workplace, Agreeing agreeing, Quote quote) {
        Set<String> accepted = new LinkedHashSet<>();
        if (authorise) {
            accepted.add(SigningAct.AUTHORISE);
        }
        if (electronic) {
            accepted.add(SigningAct.ELECTRONIC);
        }
        var words = agreeing.declines(quote, quote.choice(choice).id());
        Map<String, String> said = new LinkedHashMap<>();
        declined.forEach(id -> said.put(quote.choice(id).id(), words.getOrDefault(id, "")));
        var drawn = strokes == null ? List.<List<Integer>>of() : StrokesFile.read(strokes);
        return new SigningAct(name, role, workplace.now(), accepted, said, drawn, workplace.who());
    }
}

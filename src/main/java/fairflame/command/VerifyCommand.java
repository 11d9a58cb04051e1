package fairflame.command;

import fairflame.agreement.Difference;
import fairflame.visit.Proof;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Proves that a signed quote is what was signed, or names what differs. */
@Command(
        name = "verify",
        mixinStandardHelpOptions = true,
        description = "Prove a signed quote by its seal, or name what differs (exit code 1).")
final class VerifyCommand implements Callable<Integer> {
    @Parameters(paramLabel = "QUOTE", description = "number of the signed quote")
    private String number;

    @Mixin
    private WorkOptions work;

    @Mixin
    private Printing printing;

    @Override
    public Integer call() {
        try (var workplace = work.open()) {
            var proof = new Proof(workplace).of(number);
            printing.print(
                    () -> Printing.object()
                            .put("subject", proof.subject())
                            .put("seal", proof.seal())
                            .put("intact", proof.holds())
                            .set(
                                    "differences",
                                    Printing.texts(proof.differences().stream()
                                            .map(Difference::toString)
                                            .toList())),
                    out -> {
                        out.println(proof.subject() + ", seal " + proof.seal() + ": "
                                + (proof.holds() ? "as it was signed" : "NOT as it was signed"));
                        proof.differences().forEach(difference -> out.println("  " + difference));
                    });
            return proof.holds() ? 0 : 1;
        }
    }
}

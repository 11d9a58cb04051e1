package fairflame.screen.away;

import fairflame.agreement.SignedRevision;
import fairflame.visit.Progress;
import java.nio.file.Path;
import java.util.Optional;

/** What the sheet for a customer who is away asks of the use cases. */
public interface AwayWork {
    /** Writes the paper of a quote and an e-mail draft with it; refused when it is signed or has expired. */
    Sent write(String quote, String language, Progress progress);

    /** Reads a returned paper of a quote; refused by name when it is altered, half filled in or of another revision. */
    Answer read(String quote, Path file, Progress progress);

    /** Where the paper and its draft are. */
    record Sent(Path paper, Path mail) {}

    /**
     * What a returned paper led to.
     *
     * @param signed what was sealed; empty when none of the choices is wanted
     * @param name who answered
     */
    record Answer(Optional<SignedRevision> signed, String name) {}
}

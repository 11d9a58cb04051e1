package fairflame.agreement;

import fairflame.quote.Choice;
import fairflame.quote.Quote;
import java.util.List;

/** A quote revision with the choice taken, the choices declined, the signature and the seal. */
public record SignedRevision(Quote quote, String choice, List<Declined> declined, Signature signature, Seal seal) {
    public SignedRevision {
        declined = List.copyOf(declined);
    }

    /** The choice that was taken. */
    public Choice taken() {
        return quote.choices().stream()
                .filter(candidate -> candidate.id().equals(choice))
                .findFirst()
                .orElseThrow();
    }
}

package fairflame.invoice.permit;

import fairflame.Refusal;
import fairflame.invoice.PressureTest;
import java.time.LocalDate;
import java.util.Optional;

/**
 * Who did the gas work of a signed quote, under which licence, and the pressure test. Whether the test is enough for the
 * place, {@link fairflame.invoice.CompletionGate} says.
 *
 * @param licenceEnds last day of the licence
 */
public record GasWork(
        String quote,
        int revision,
        LocalDate on,
        String fitter,
        String licence,
        LocalDate licenceEnds,
        Optional<PressureTest> test) {
    public GasWork {
        if (fitter.isBlank() || licence.isBlank()) {
            throw Refusal.missing("licensed gas fitter", "name and number of the licence");
        }
        if (licenceEnds.isBefore(on)) {
            throw Refusal.notAllowed(
                    "gas work on " + on,
                    "licence " + licence + " ended " + licenceEnds,
                    "a licence that is valid then");
        }
    }
}

package fairflame.invoice.permit;

import fairflame.Refusal;
import fairflame.invoice.PressureTest;
import fairflame.quote.PlaceRules;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Who did the gas work of a signed quote, under which licence, and the pressure test.
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

    /** What of the test falls short of the rules of the place, a sentence each; empty when all is well. */
    public List<String> shortfalls(PlaceRules rules) {
        var found = new ArrayList<String>();
        if (!rules.gasLicencePattern().isEmpty() && !licence.matches(rules.gasLicencePattern())) {
            found.add("licence " + licence + " is not written as " + rules.gasLicence() + " licences of the place are");
        }
        test.ifPresent(done -> test(done, rules, found));
        return List.copyOf(found);
    }

    private static void test(PressureTest done, PlaceRules rules, List<String> found) {
        var asked = rules.gasTest();
        if (!done.held()) {
            found.add("the pressure did not hold");
        }
        if (done.psi().compareTo(asked.psi()) < 0) {
            found.add("tested at " + plain(done.psi()) + " psi, asked are " + plain(asked.psi()) + " psi");
        }
        if (done.minutes() < asked.minutes()) {
            found.add("held " + done.minutes() + " minutes, asked are " + asked.minutes());
        }
        if (done.gaugeTopPsi().compareTo(asked.psi().multiply(asked.gaugeFactor())) > 0) {
            found.add("gauge to " + plain(done.gaugeTopPsi()) + " psi, at most "
                    + plain(asked.psi().multiply(asked.gaugeFactor())) + " psi");
        }
        if (asked.witness() && done.witness().isBlank()) {
            found.add("no witness, the place asks for one");
        }
        // International Fuel Gas Code 406.2: air, nitrogen, carbon dioxide or an inert gas; never oxygen.
        if (done.medium().strip().equalsIgnoreCase("oxygen")) {
            found.add("tested with oxygen, which is forbidden");
        }
    }

    private static String plain(BigDecimal value) {
        return value.stripTrailingZeros().toPlainString();
    }
}

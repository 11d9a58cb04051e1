package fairflame.invoice;

import fairflame.agreement.Agreed;
import fairflame.catalog.GasTestRule;
import fairflame.catalog.PermitNeed;
import fairflame.quote.PlaceRules;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** What still stands between the work and calling it complete: permit, licensed fitter, tests, test leads. */
public final class CompletionGate {
    private static final String NOT_REQUIRED = "not required:";
    // IFGC 406.2: air, nitrogen, carbon dioxide or an inert gas; oxygen never.
    private static final Set<String> MEDIA = Set.of("air", "nitrogen", "carbon dioxide", "inert gas");

    private CompletionGate() {}

    /** What is missing, a sentence each; nothing when the work is complete. */
    public static List<String> missing(Agreed agreed, Completion completion) {
        var duties = agreed.duties();
        var rules = agreed.signed().quote().rules();
        var missing = new ArrayList<String>();
        if (!completion.leadsRemoved()) {
            missing.add("Every test lead placed across a safety switch has to be recorded as removed.");
        }
        permit(duties.permit(), completion, missing);
        if (duties.regulatedGas()) {
            fitter(rules, completion, missing);
        }
        tests(agreed.tests(), completion, missing);
        if (duties.pressureTest()) {
            pressure(rules.gasTest(), completion, missing);
        }
        return missing;
    }

    private static void permit(PermitNeed need, Completion completion, List<String> missing) {
        var number = completion.permitNumber().strip();
        if (need == PermitNeed.NO) {
            return;
        }
        if (number.isEmpty()) {
            missing.add(
                    need == PermitNeed.YES
                            ? "The permit number is missing."
                            : "The permit number is missing, or '" + NOT_REQUIRED + "' with who said so and when.");
        } else if (number.startsWith(NOT_REQUIRED)) {
            if (need == PermitNeed.YES) {
                missing.add("This work needs a permit here; its number is missing.");
            } else if (number.length() < NOT_REQUIRED.length() + 5) {
                missing.add("Who said that no permit is required, and when, is missing.");
            }
        }
    }

    private static void fitter(PlaceRules rules, Completion completion, List<String> missing) {
        if (completion.fitterName().isBlank()) {
            missing.add("The name of the " + rules.gasLicence() + " who did the gas work is missing.");
        }
        var number = completion.fitterLicence().strip();
        if (number.isEmpty()) {
            missing.add("The licence number of the " + rules.gasLicence() + " is missing.");
        } else if (!rules.gasLicencePattern().isEmpty() && !number.matches(rules.gasLicencePattern())) {
            missing.add("The licence number " + number + " is not written as the place writes it: "
                    + rules.gasLicencePattern() + ".");
        }
    }

    private static void tests(List<String> letters, Completion completion, List<String> missing) {
        for (var letter : letters) {
            var record = completion.tests().get(letter);
            if (record == null || record.result().isBlank()) {
                missing.add("The result of test " + letter + " is missing.");
            } else if (!record.passed()) {
                missing.add("Test " + letter + " was not passed: " + record.result() + ".");
            }
        }
    }

    private static void pressure(GasTestRule rule, Completion completion, List<String> missing) {
        if (completion.pressureTest().isEmpty()) {
            missing.add("The record of the pressure test of the new gas piping is missing.");
            return;
        }
        var test = completion.pressureTest().get();
        if (!test.held()) {
            missing.add("The new gas piping did not hold its pressure.");
        }
        if (test.psi().compareTo(rule.psi()) < 0) {
            missing.add("The pressure test was done at " + plain(test.psi()) + " psi; the place asks for "
                    + plain(rule.psi()) + " psi.");
        }
        if (test.minutes() < rule.minutes()) {
            missing.add("The pressure was held for " + test.minutes() + " minutes; the place asks for " + rule.minutes()
                    + ".");
        }
        if (test.gaugeTopPsi().compareTo(test.psi().multiply(rule.gaugeFactor())) > 0) {
            missing.add("The scale of the gauge goes to " + plain(test.gaugeTopPsi()) + " psi; at most "
                    + plain(rule.gaugeFactor()) + " times the test pressure is allowed.");
        }
        if (!MEDIA.contains(test.medium())) {
            missing.add(
                    "The test medium " + test.medium() + " is not one of air, nitrogen, carbon dioxide, inert gas.");
        }
        if (rule.witness() && test.witness().isBlank()) {
            missing.add("The name of the inspector who saw the pressure test is missing.");
        }
    }

    private static String plain(BigDecimal number) {
        return number.stripTrailingZeros().toPlainString();
    }
}

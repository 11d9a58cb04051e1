package fairflame.invoice;

import static fairflame.invoice.DemoInvoices.HELD;
import static fairflame.invoice.DemoInvoices.PIPE;
import static fairflame.invoice.DemoInvoices.PIPE_DONE;
import static fairflame.quote.DemoShop.dec;
import static org.assertj.core.api.Assertions.assertThat;

import fairflame.agreement.Agreed;
import fairflame.agreement.DemoAgreements;
import fairflame.quote.DemoQuotes;
import fairflame.quote.DemoScopes;
import fairflame.quote.DemoShop;
import fairflame.quote.PricingInputs;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

class CompletionGateTest {
    private static List<String> missing(Completion completion) {
        return CompletionGate.missing(Agreed.of(PIPE), completion);
    }

    private static Completion with(String permit, String name, String licence) {
        return new Completion(permit, name, licence, PIPE_DONE.tests(), PIPE_DONE.pressureTest(), true);
    }

    private static List<String> tested(PressureTest test) {
        return missing(
                new Completion("GP-2026-118", "Tove Lind", "GF-20417", PIPE_DONE.tests(), Optional.of(test), true));
    }

    @Test
    void aGasLineIsCompleteWithPermitFitterTestsAndNoLeadLeft() {
        assertThat(missing(PIPE_DONE)).isEmpty();
    }

    @Test
    void permitAndFitterHaveToBeOnRecord() {
        assertThat(missing(with("", "Tove Lind", "GF-20417"))).containsExactly("The permit number is missing.");
        assertThat(missing(with("not required: office, 2 December", "Tove Lind", "GF-20417")))
                .containsExactly("This work needs a permit here; its number is missing.");
        assertThat(missing(with("GP-1", " ", "GF-20417")))
                .containsExactly("The name of the licensed gas fitter who did the gas work is missing.");
        assertThat(missing(with("GP-1", "Tove Lind", "")))
                .containsExactly("The licence number of the licensed gas fitter is missing.");
        assertThat(missing(with("GP-1", "Tove Lind", "20417")))
                .containsExactly("The licence number 20417 is not written as the place writes it: GF-\\d{5}.");
    }

    @Test
    void everyTestIsOnRecordAndPassed() {
        var untested = new Completion(
                "GP-1", "Tove Lind", "GF-20417", DemoInvoices.passed("A", "C", "G", "P"), Optional.of(HELD), true);
        assertThat(missing(untested)).containsExactly("The result of test K is missing.");
        var tests = new java.util.TreeMap<>(DemoInvoices.passed("A", "C", "G", "K", "P"));
        tests.put("A", new TestRecord(false, "bubbles at the union"));
        tests.put("C", new TestRecord(true, " "));
        assertThat(missing(new Completion("GP-1", "Tove Lind", "GF-20417", tests, Optional.of(HELD), true)))
                .containsExactly("Test A was not passed: bubbles at the union.", "The result of test C is missing.");
    }

    @Test
    void noTestLeadIsForgotten() {
        assertThat(missing(new Completion(
                        "GP-1", "Tove Lind", "GF-20417", PIPE_DONE.tests(), PIPE_DONE.pressureTest(), false)))
                .containsExactly("Every test lead placed across a safety switch has to be recorded as removed.");
    }

    @Test
    void thePressureTestMeetsTheRuleOfThePlace() {
        assertThat(missing(new Completion("GP-1", "Tove Lind", "GF-20417", PIPE_DONE.tests(), Optional.empty(), true)))
                .containsExactly("The record of the pressure test of the new gas piping is missing.");
        assertThat(tested(new PressureTest(dec("2.9"), 14, dec("14.6"), "oxygen", "", false)))
                .containsExactly(
                        "The new gas piping did not hold its pressure.",
                        "The pressure test was done at 2.9 psi; the place asks for 3 psi.",
                        "The pressure was held for 14 minutes; the place asks for 15.",
                        "The scale of the gauge goes to 14.6 psi; at most 5 times the test pressure is allowed.",
                        "The test medium oxygen is not one of air, nitrogen, carbon dioxide, inert gas.",
                        "The name of the inspector who saw the pressure test is missing.");
        // Top of scale at most five times the test pressure: 15 psi for 3 psi.
        assertThat(tested(new PressureTest(dec("3.00"), 15, dec("15.0"), "nitrogen", "R. Holm", true)))
                .isEmpty();
    }

    @Test
    void aPermitThatHadToBeAskedForIsAnsweredEitherWay() {
        var quote = DemoQuotes.quoting(DemoQuotes.request(DemoShop.CITY, PricingInputs.inZone("near")))
                .repair(
                        DemoQuotes.SETTLED,
                        DemoQuotes.plan(
                                DemoScopes.scope("valve", true, "", List.of(DemoScopes.job(DemoShop.R10)), Set.of())));
        var agreed = Agreed.of(DemoAgreements.sign(quote, "valve", Map.of()));
        var tests = DemoInvoices.passed("A", "C", "G");
        assertThat(CompletionGate.missing(
                        agreed, new Completion("", "T. Lind", "GF-20417", tests, Optional.empty(), true)))
                .containsExactly("The permit number is missing, or 'not required:' with who said so and when.");
        assertThat(CompletionGate.missing(
                        agreed, new Completion("not required:", "T. Lind", "GF-20417", tests, Optional.empty(), true)))
                .containsExactly("Who said that no permit is required, and when, is missing.");
        for (var answer : List.of("GP-9", "not required: permit office, Ms Aro, 1 December 2026")) {
            assertThat(CompletionGate.missing(
                            agreed, new Completion(answer, "T. Lind", "GF-20417", tests, Optional.empty(), true)))
                    .isEmpty();
        }
    }

    @Test
    void whereAnyTextWillDoTheLicenceOnlyHasToBeThere() {
        var quote = DemoQuotes.quoting(DemoQuotes.request(DemoShop.STRICT, PricingInputs.inZone("near")))
                .repair(DemoQuotes.SETTLED, DemoQuotes.plan(DemoScopes.LARGER_LINE));
        var agreed = Agreed.of(DemoAgreements.sign(quote, "larger-line", Map.of()));
        // 10 psi, gauge up to four times, no witness
        var held = new PressureTest(dec("10"), 15, dec("40"), "air", "", true);
        assertThat(CompletionGate.missing(
                        agreed, new Completion("P1", "T. Lind", "any", PIPE_DONE.tests(), Optional.of(held), true)))
                .isEmpty();
    }
}

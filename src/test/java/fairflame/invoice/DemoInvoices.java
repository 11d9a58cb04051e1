package fairflame.invoice;

import static fairflame.quote.DemoShop.dec;

import fairflame.agreement.Agreed;
import fairflame.agreement.DemoAgreements;
import fairflame.agreement.SignedRevision;
import fairflame.agreement.WorkedFigures;
import fairflame.quote.DemoQuotes;
import fairflame.quote.DemoScopes;
import fairflame.quote.DemoShop;
import fairflame.quote.LineKind;
import fairflame.quote.PricingInputs;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.joda.money.Money;

/** Invoices of the demo by hand. Invented for the demo. */
final class DemoInvoices {
    static final LocalDate DONE = LocalDate.of(2026, 12, 1);

    private DemoInvoices() {}

    static Issue issue(int sequence) {
        return issue("I", sequence);
    }

    static Issue issue(String series, int sequence) {
        return new Issue(new InvoiceNumber(series, 2026, sequence), DONE.plusDays(1), DONE, DONE.plusDays(15));
    }

    static Completion completion(String... letters) {
        return new Completion("", "", "", passed(letters), Optional.empty(), true);
    }

    static Map<String, TestRecord> passed(String... letters) {
        var tests = new TreeMap<String, TestRecord>();
        List.of(letters).forEach(letter -> tests.put(letter, new TestRecord(true, "as it should be")));
        return tests;
    }

    static final Completion SWITCHES_DONE = completion("B", "D", "E", "H");

    static Invoicing invoicing(SignedRevision signed) {
        return new Invoicing(Agreed.of(signed), DemoQuotes.CAUTIONS);
    }

    /** The larger gas line, signed: permit, licensed gas fitter, pressure test of 3 psi for 15 minutes with a witness. */
    static final SignedRevision PIPE = DemoAgreements.sign(
            DemoQuotes.quoting(DemoQuotes.request(DemoShop.CITY, PricingInputs.inZone("near")))
                    .repair(DemoQuotes.SETTLED, DemoQuotes.plan(DemoScopes.LARGER_LINE)),
            "larger-line",
            Map.of());

    static final PressureTest HELD = new PressureTest(dec("3"), 15, dec("15"), "air", "Inspector R. Holm", true);

    static final Completion PIPE_DONE = new Completion(
            "GP-2026-118", "Tove Lind", "GF-20417", passed("A", "C", "G", "K", "P"), Optional.of(HELD), true);

    /** Three taxed parts, signed. */
    static final SignedRevision THREE_PARTS = WorkedFigures.signed(List.of(
            WorkedFigures.line("L1", LineKind.PART, "36.39", "0.00", true),
            WorkedFigures.line("L2", LineKind.PART, "36.40", "0.00", true),
            WorkedFigures.line("L3", LineKind.PART, "36.40", "0.00", true)));

    static Payment payment(String id, Money amount, boolean deposit) {
        return new Payment(id, DONE, amount, "card", "", deposit);
    }
}

package fairflame.invoice;

import static fairflame.agreement.DemoAgreements.BOTH;
import static fairflame.agreement.DemoAgreements.CONSENT;
import static fairflame.agreement.DemoAgreements.act;
import static fairflame.invoice.DemoInvoices.SWITCHES_DONE;
import static fairflame.invoice.DemoInvoices.THREE_PARTS;
import static fairflame.invoice.DemoInvoices.completion;
import static fairflame.invoice.DemoInvoices.invoicing;
import static fairflame.invoice.DemoInvoices.issue;
import static fairflame.invoice.DemoInvoices.payment;
import static fairflame.quote.DemoShop.dec;
import static fairflame.quote.DemoShop.usd;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fairflame.Refusal;
import fairflame.agreement.AddedLine;
import fairflame.agreement.Agreed;
import fairflame.agreement.Change;
import fairflame.agreement.Changing;
import fairflame.agreement.WorkedFigures;
import fairflame.quote.DemoQuotes;
import fairflame.quote.LineKind;
import fairflame.quote.Taxation;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;

class CreditingTest {
    private static final BigDecimal ONE = BigDecimal.ONE;

    private static Invoice withPart() {
        var agreed = Agreed.of(WorkedFigures.SIGNED);
        var changing = new Changing(CONSENT);
        var part = new AddedLine(LineKind.PART, "", "third switch", dec("1"), "each", usd("48.35"), "wet", "demo");
        var order = changing.sign(
                agreed,
                changing.draft(agreed, Change.of("wet", List.of(part), List.of())),
                act(Map.of()),
                agreed.seal());
        return new Invoicing(new Agreed(WorkedFigures.SIGNED, List.of(order)), DemoQuotes.CAUTIONS)
                .rest(issue(1), completion(), List.of());
    }

    @Test
    void aPartialCreditTakesTheTaxThatFallsAway() {
        // Invoice 339.06; credit 48.35 with tax 10.77 - 7.27 = 3.50 (alone it would be 3.51): 51.85.
        var invoice = withPart();
        var credit = Crediting.partial(issue("C", 1), invoice, List.of(), Map.of("C1.1", ONE), "not fitted");
        assertThat(credit.totals().subtotal()).isEqualTo(usd("-48.35"));
        assertThat(credit.totals().tax()).isEqualTo(usd("-3.50"));
        assertThat(credit.totals().total()).isEqualTo(usd("-51.85"));
        assertThat(credit.corrects()).isEqualTo("I-2026-0001");
        assertThat(credit.kind()).isEqualTo(Invoice.Kind.CREDIT);
        assertThat(credit.notes()).containsExactly("not fitted");
        assertThat(EnRules.broken(credit)).isEmpty();
        // Deposit 28.72 and 200.00 paid: 339.06 - 51.85 - 228.72 = 58.49.
        var account = new Account(List.of(invoice, credit), List.of())
                .receive(payment("P1", usd("28.72"), true), DemoInvoices.DONE)
                .receive(payment("P2", usd("200.00"), false), DemoInvoices.DONE);
        assertThat(account.balance()).isEqualTo(usd("58.49"));
    }

    @Test
    void aFullCreditIsTheExactNegative() {
        var invoice = invoicing(BOTH).complete(issue(1), SWITCHES_DONE, List.of());
        var credit = Crediting.full(issue("C", 1), invoice, List.of(), "wrong address");
        assertThat(credit.totals().subtotal())
                .isEqualTo(invoice.totals().subtotal().negated());
        assertThat(credit.totals().tax()).isEqualTo(invoice.totals().tax().negated());
        assertThat(credit.totals().total()).isEqualTo(invoice.totals().total().negated());
        for (int i = 0; i < invoice.lines().size(); i++) {
            assertThat(credit.lines().get(i).net())
                    .isEqualTo(invoice.lines().get(i).net().negated());
            assertThat(credit.lines().get(i).quantity())
                    .isEqualByComparingTo(invoice.lines().get(i).quantity().negate());
        }
        assertThat(EnRules.broken(credit)).isEmpty();
        assertThat(EnRules.brokenTax(credit)).isEmpty();
        assertThat(new Account(List.of(invoice, credit), List.of()).balance()).isEqualTo(usd("0.00"));
    }

    @Test
    void anUntaxedLineGivesBackNoTaxEvenOfAPartBillThatCarriesACent() {
        int carried = 0;
        for (long seed = 0; seed < 120; seed++) {
            for (var bill : SplitPapers.of(new Random(seed))) {
                var untaxed = bill.lines().stream()
                        .filter(line -> !line.taxable() && line.quantity().signum() > 0)
                        .findFirst();
                if (bill.kind() == Invoice.Kind.CREDIT || untaxed.isEmpty()) {
                    continue;
                }
                var own = Taxation.of(bill.lines(), bill.taxRule(), bill.currency());
                carried += own.tax().equals(bill.totals().tax()) ? 0 : 1;
                var issue = new Issue(InvoiceNumber.parse("C-2026-0001"), bill.issued(), bill.supplied(), bill.due());
                var line = untaxed.get();
                var note = Crediting.partial(issue, bill, List.of(), Map.of(line.id(), line.quantity()), "not done");
                assertThat(note.totals().tax().isZero())
                        .as("seed %d: %s", seed, note)
                        .isTrue();
                // What is left then goes back with the whole tax, to the cent.
                if (bill.lines().size() > 1) {
                    var rest = Crediting.full(issue, bill, List.of(note), "nor the rest");
                    assertThat(note.totals().total().plus(rest.totals().total()))
                            .as("seed %d: %s", seed, bill)
                            .isEqualTo(bill.totals().total().negated());
                }
            }
        }
        assertThat(carried).as("bills that carry a cent").isPositive();
    }

    @Test
    void creditsOfAnySplitAddUpToTheInvoice() {
        var seed = 381L;
        var random = new Random(seed);
        for (int i = 0; i < 150; i++) {
            var invoice =
                    random.nextBoolean() ? withPart() : invoicing(THREE_PARTS).rest(issue(1), completion(), List.of());
            var papers = new java.util.ArrayList<Invoice>(List.of(invoice));
            var credits = new java.util.ArrayList<Invoice>();
            for (int c = random.nextInt(3); c > 0; c--) {
                var back = new HashMap<String, BigDecimal>();
                for (var line : invoice.lines()) {
                    if (random.nextBoolean()) {
                        back.put(line.id(), dec("0.01").multiply(dec("" + (1 + random.nextInt(33)))));
                    }
                }
                if (!back.isEmpty()) {
                    credits.add(Crediting.partial(issue("C", credits.size() + 1), invoice, credits, back, "less"));
                }
            }
            credits.add(Crediting.full(issue("C", credits.size() + 1), invoice, credits, "all"));
            papers.addAll(credits);
            assertThat(new Account(papers, List.of()).balance())
                    .as("seed %d case %d", seed, i)
                    .isEqualTo(usd("0.00"));
            assertThat(credits)
                    .as("seed %d case %d", seed, i)
                    .allSatisfy(credit -> assertThat(EnRules.broken(credit)).isEmpty());
        }
    }

    @Test
    void noMoreIsCreditedThanWasBilled() {
        var invoice = invoicing(THREE_PARTS).rest(issue(1), completion(), List.of());
        var half = Crediting.partial(issue("C", 1), invoice, List.of(), Map.of("L1", dec("0.5")), "half");
        refused("up to 0.5,", () -> Crediting.partial(issue("C", 2), invoice, List.of(half), Map.of("L1", ONE), "x"));
        refused(
                "quantity to credit",
                () -> Crediting.partial(issue("C", 2), invoice, List.of(), Map.of("L1", dec("0")), "x"));
        refused(
                "line to credit 'L9'",
                () -> Crediting.partial(issue("C", 2), invoice, List.of(), Map.of("L9", ONE), "x"));
        refused("line to credit", () -> Crediting.partial(issue("C", 2), invoice, List.of(), Map.of(), "x"));
        refused("reason of a credit note", () -> Crediting.full(issue("C", 2), invoice, List.of(), " "));
        refused("an invoice", () -> Crediting.full(issue("C", 2), half, List.of(), "x"));
        var all = Crediting.full(issue("C", 2), invoice, List.of(half), "rest");
        refused("line to credit", () -> Crediting.full(issue("C", 3), invoice, List.of(half, all), "again"));
        var other = invoicing(BOTH).rest(issue(7), SWITCHES_DONE, List.of());
        refused("of another invoice", () -> Crediting.full(issue("C", 2), other, List.of(half), "x"));
        var before = new Issue(
                new InvoiceNumber("C", 2026, 9),
                invoice.issued().minusDays(1),
                DemoInvoices.DONE,
                LocalDate.of(2026, 12, 9));
        refused("day of the credit note", () -> Crediting.full(before, invoice, List.of(), "x"));
    }

    private static void refused(String words, org.assertj.core.api.ThrowableAssert.ThrowingCallable call) {
        assertThatThrownBy(call).isInstanceOf(Refusal.class).hasMessageContaining(words);
    }
}

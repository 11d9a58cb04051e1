package fairflame.invoice;

import static fairflame.agreement.DemoAgreements.BOTH;
import static fairflame.invoice.DemoInvoices.DONE;
import static fairflame.invoice.DemoInvoices.SWITCHES_DONE;
import static fairflame.invoice.DemoInvoices.THREE_PARTS;
import static fairflame.invoice.DemoInvoices.completion;
import static fairflame.invoice.DemoInvoices.invoicing;
import static fairflame.invoice.DemoInvoices.issue;
import static fairflame.invoice.DemoInvoices.payment;
import static fairflame.quote.DemoShop.usd;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fairflame.Refusal;
import fairflame.quote.DemoShop;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class AccountTest {
    private static final Invoice INVOICE = invoicing(BOTH).complete(issue(1), SWITCHES_DONE, List.of());
    private static final Account OPEN = new Account(List.of(INVOICE), List.of());

    @Test
    void paymentsComeOffTheBalance() {
        var account = OPEN.receive(payment("P1", usd("38.98"), true), DONE)
                .receive(payment("P2", usd("350.88"), false), DONE);
        assertThat(account.paid()).isEqualTo(usd("389.86"));
        assertThat(account.balance()).isEqualTo(usd("0.00"));
        var shown = account.shown("I-2026-0001");
        assertThat(shown.payments()).extracting(Payment::id).containsExactly("P1", "P2");
        assertThat(shown.payments().get(0).deposit()).isTrue();
        assertThat(shown.balance()).isEqualTo(usd("0.00"));
        assertThat(EnRules.broken(shown)).isEmpty();
        assertThat(shown.lines()).isEqualTo(INVOICE.lines());
    }

    @Test
    void aPaymentThatCannotBeRightIsRefused() {
        refused("up to USD 389.86, what is due", payment("P1", usd("389.87"), false));
        refused("payment 'USD 0.00'", payment("P1", usd("0.00"), false));
        refused("payment 'USD -5.00'", payment("P1", usd("-5.00"), false));
        refused("currency 'EUR'", payment("P1", Money.of(CurrencyUnit.EUR, 5), false));
        refused("day of the payment", new Payment("P1", DONE.plusDays(1), usd("5.00"), "card", "", false));
        refused("method of the payment", new Payment("P1", DONE, usd("5.00"), " ", "", false));
        var once = OPEN.receive(payment("P1", usd("5.00"), false), DONE);
        assertThatThrownBy(() -> once.receive(payment("P1", usd("5.00"), false), DONE))
                .hasMessageContaining("entered already");
        var paid = OPEN.receive(payment("P1", usd("389.86"), false), DONE);
        assertThatThrownBy(() -> paid.receive(payment("P2", usd("0.01"), false), DONE))
                .hasMessageContaining("up to USD 0.00");
        assertThatThrownBy(() -> new Account(List.of(), List.of())).isInstanceOf(Refusal.Missing.class);
    }

    private static void refused(String words, Payment payment) {
        assertThatThrownBy(() -> OPEN.receive(payment, DONE))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining(words);
    }

    @Test
    void paymentsCountForTheOldestInvoiceFirst() {
        var papers = new ArrayList<Invoice>();
        for (int i = 1; i <= 3; i++) {
            papers.add(invoicing(THREE_PARTS).part(issue(i), completion(), papers, Map.of("L" + i, BigDecimal.ONE)));
        }
        // 39.03, 39.04, 39.04
        var account = new Account(papers, List.of())
                .receive(payment("P1", usd("30.00"), true), DONE)
                .receive(payment("P2", usd("50.00"), false), DONE);
        assertThat(account.shown("I-2026-0001").payments())
                .extracting(Payment::amount)
                .containsExactly(usd("30.00"), usd("9.03"));
        assertThat(account.shown("I-2026-0002").payments())
                .extracting(Payment::amount)
                .containsExactly(usd("39.04"));
        assertThat(account.shown("I-2026-0003").payments())
                .extracting(Payment::amount)
                .containsExactly(usd("1.93"));
        assertThat(account.shown("I-2026-0003").balance()).isEqualTo(usd("37.11"));
        assertThatThrownBy(() -> account.shown("I-2026-0009"))
                .isInstanceOf(Refusal.Unknown.class)
                .hasMessageContaining("I-2026-0001, I-2026-0002, I-2026-0003");
    }

    @Test
    void aCreditedInvoiceTakesOnlyWhatIsLeftOfIt() {
        var first = invoicing(THREE_PARTS).part(issue(1), completion(), List.of(), Map.of("L1", BigDecimal.ONE));
        var credit = Crediting.full(issue("C", 1), first, List.of(), "wrong");
        var second = invoicing(THREE_PARTS)
                .part(issue(2), completion(), List.of(first, credit), Map.of("L2", BigDecimal.ONE));
        var account = new Account(List.of(first, credit, second), List.of())
                .receive(payment("P1", usd("20.00"), false), DONE);
        assertThat(account.shown("I-2026-0001").payments()).isEmpty();
        assertThat(account.shown("I-2026-0002").paid()).isEqualTo(usd("20.00"));
    }

    @Test
    void aDepositIsTakenAfterSigningAndWithinTheCap() {
        var today = LocalDate.of(2026, 11, 25);
        var deposit = new Payment("D1", LocalDate.of(2026, 11, 20), usd("38.98"), "card", "", true);
        assertThat(Deposits.receive(BOTH, List.of(), deposit, today)).containsExactly(deposit);
        refusedDeposit("up to USD 38.98", of("D1", "38.99", today), List.of(), today);
        refusedDeposit("above zero", of("D1", "0.00", today), List.of(), today);
        refusedDeposit("up to USD 0.00", of("D2", "0.01", today), List.of(deposit), today);
        refusedDeposit("entered already", of("D1", "0.01", today), List.of(deposit), today);
        refusedDeposit("day of the deposit", of("D1", "1.00", LocalDate.of(2026, 11, 19)), List.of(), today);
        refusedDeposit("day of the deposit", of("D1", "1.00", today.plusDays(1)), List.of(), today);
        refusedDeposit(
                "currency",
                new Payment("D1", today, Money.of(CurrencyUnit.EUR, 1), "card", "", true),
                List.of(),
                today);
    }

    private static Payment of(String id, String amount, LocalDate on) {
        return new Payment(id, on, DemoShop.usd(amount), "card", "", true);
    }

    private static void refusedDeposit(String words, Payment deposit, List<Payment> taken, LocalDate today) {
        assertThatThrownBy(() -> Deposits.receive(BOTH, taken, deposit, today))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining(words);
    }

    @Test
    void numbersHaveNoGapAndStartAnewEachYear() {
        var first = InvoiceNumber.next(Optional.empty(), "I", 2026);
        assertThat(first).hasToString("I-2026-0001");
        assertThat(InvoiceNumber.next(Optional.of(first), "I", 2026)).hasToString("I-2026-0002");
        assertThat(InvoiceNumber.next(Optional.of(InvoiceNumber.parse("I-2026-9999")), "I", 2026))
                .hasToString("I-2026-10000");
        assertThat(InvoiceNumber.parse("I-2026-10000").sequence()).isEqualTo(10_000);
        assertThatThrownBy(() -> InvoiceNumber.next(Optional.of(first), "I", 2027))
                .isInstanceOf(Refusal.NotAllowed.class);
        assertThatThrownBy(() -> InvoiceNumber.next(Optional.of(first), "C", 2026))
                .isInstanceOf(Refusal.NotAllowed.class);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "I-2026-1",
                "I-26-0001",
                "i-2026-0001",
                "I-2026-00001",
                "I-2026-0001 ",
                "I-0999-0001",
                "I-2026-0000"
            })
    void otherNumbersAreRefused(String text) {
        assertThatThrownBy(() -> InvoiceNumber.parse(text)).isInstanceOf(Refusal.class);
    }

    @Test
    void aSeriesIsNamedByCapitals() {
        assertThatThrownBy(() -> new InvoiceNumber("x", 2026, 1)).isInstanceOf(Refusal.Malformed.class);
        assertThatThrownBy(() -> new InvoiceNumber("I", 26, 1)).isInstanceOf(Refusal.OutOfRange.class);
        assertThatThrownBy(() -> new InvoiceNumber("I", 10_000, 1)).isInstanceOf(Refusal.OutOfRange.class);
    }
}

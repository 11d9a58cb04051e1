package fairflame.invoice.account;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fairflame.Refusal;
import fairflame.invoice.Invoice;
import fairflame.invoice.RandomInvoices;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CustomerAccountTest {
    private static final CurrencyUnit USD = CurrencyUnit.USD;
    private static final LocalDate MARCH = LocalDate.of(2026, 3, 2);
    private final RandomInvoices random = new RandomInvoices(new Random(17));
    private final Invoice first = random.full(1, "Q-2026-0001", MARCH);
    private final Invoice second = random.full(2, "Q-2026-0001", MARCH.plusDays(10));

    private static Movement payment(String id, LocalDate on, Money amount, String invoice) {
        var named = invoice.isEmpty() ? Optional.<String>empty() : Optional.of(invoice);
        return new Movement(id, Movement.Kind.PAYMENT, on, "Q-2026-0001", named, amount, "card", false, "");
    }

    private CustomerAccount account(Movement... movements) {
        return new CustomerAccount(USD, List.of(second, first), List.of(movements));
    }

    private static Money total(Invoice invoice) {
        return invoice.totals().total();
    }

    private static Money cent() {
        return Money.ofMinor(USD, 1);
    }

    @Test
    void aPaymentWithoutAnInvoiceSettlesTheOldestFirst() {
        var account = account(payment("P1", MARCH, total(first).plus(cent()), ""));
        assertThat(account.items().get(0).open()).isEqualTo(Money.zero(USD));
        assertThat(account.items().get(1).open()).isEqualTo(total(second).minus(cent()));
        assertThat(account.oldestDue()).contains(MARCH.plusDays(40));
    }

    @Test
    void aPaymentSettlesTheInvoiceItNames() {
        var account = account(payment("P1", MARCH, total(second), second.number()));
        assertThat(account.items().get(0).open()).isEqualTo(total(first));
        assertThat(account.items().get(1).open()).isEqualTo(Money.zero(USD));
    }

    @Test
    void aCreditAfterPaymentBecomesTheCustomersOwnMoneyAndCanBeRefunded() {
        var note = random.credit(first, "C-2026-0001", MARCH.plusDays(2));
        var account = new CustomerAccount(
                USD, List.of(first, note), List.of(payment("P1", MARCH, total(first), first.number())));
        assertThat(account.spare()).isEqualTo(total(first));
        assertThat(account.balance()).isEqualTo(total(first).negated());
        account.refuseRefundOf(total(first));
        assertThatThrownBy(() -> account.refuseRefundOf(total(first).plus(cent())))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("at most " + total(first));
    }

    @Test
    void aWriteOffIsRefusedAboveWhatIsOpen() {
        var account = account(payment("P1", MARCH, total(first), first.number()));
        account.refuseWriteOffOf(second.number(), total(second));
        assertThatThrownBy(() -> account.refuseWriteOffOf(first.number(), cent()))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("USD 0.00");
    }

    @Test
    void aRefundOrWriteOffNeedsAReason() {
        assertThatThrownBy(() -> new Movement(
                        "R1", Movement.Kind.WRITE_OFF, MARCH, "Q-2026-0001", Optional.empty(), cent(), "", false, " "))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("reason");
    }

    @ParameterizedTest(name = "{0} days after the due day: {1}")
    @CsvSource({
        "-5, NOT_DUE, 0",
        "0, NOT_DUE, 0",
        "1, TO_30, 1",
        "30, TO_30, 30",
        "31, TO_60, 31",
        "60, TO_60, 60",
        "61, TO_90, 61",
        "90, TO_90, 90",
        "91, OVER_90, 91"
    })
    void anInvoiceAgesFromItsDueDay(int days, Ageing.Step step, long late) {
        var account = new CustomerAccount(USD, List.of(first), List.of());
        var ageing = Ageing.of(first.due().plusDays(days), USD, List.of(account));
        assertThat(ageing.rows()).singleElement().satisfies(row -> {
            assertThat(row.step()).isEqualTo(step);
            assertThat(row.daysLate()).isEqualTo(late);
        });
        assertThat(ageing.sum(step)).isEqualTo(total(first)).isEqualTo(ageing.total());
    }

    @Test
    void aStatementOpensWithWhatWasOwedAndClosesWithWhatIs() {
        var account = account(payment("P1", MARCH.plusDays(5), total(first), ""));
        var span = new Statement.Span(MARCH.plusDays(1), MARCH.plusDays(20));
        var statement = Statement.of(first.customer(), USD, List.of(account), span);
        assertThat(statement.opening()).isEqualTo(total(first));
        assertThat(statement.rows()).extracting(StatementRow::document).containsExactly("P1", second.number());
        assertThat(statement.balances()).containsExactly(Money.zero(USD), total(second));
        assertThat(statement.closing()).isEqualTo(account.balance());
    }

    @Test
    void whatIsOpenLessWhatIsSpareIsTheBalanceWhateverHappened() {
        var seed = 20260318L;
        var dice = new Random(seed);
        for (int round = 0; round < 200; round++) {
            var invoices = new RandomInvoices(dice);
            var one = invoices.full(1, "Q-2026-0001", MARCH);
            var two = invoices.full(2, "Q-2026-0001", MARCH.plusDays(dice.nextInt(30)));
            var papers = new java.util.ArrayList<>(List.of(one, two));
            if (dice.nextBoolean()) {
                papers.add(invoices.credit(dice.nextBoolean() ? one : two, "C-2026-0001", MARCH.plusDays(40)));
            }
            var movements = new java.util.ArrayList<Movement>();
            for (int i = 0; i < dice.nextInt(5); i++) {
                var named = dice.nextInt(3) == 0 ? "" : dice.nextBoolean() ? one.number() : two.number();
                var most = total(one).plus(total(two)).getAmountMinorInt();
                movements.add(payment("P" + i, MARCH.plusDays(i), Money.ofMinor(USD, 1 + dice.nextInt(most)), named));
            }
            var account = new CustomerAccount(USD, papers, movements);
            var open = account.items().stream().map(OpenItem::open).reduce(Money.zero(USD), Money::plus);
            assertThat(open.minus(account.spare()))
                    .as("seed %d round %d", seed, round)
                    .isEqualTo(account.balance());
            assertThat(account.items())
                    .as("seed %d round %d", seed, round)
                    .noneMatch(item -> item.open().isNegative());
            if (account.spare().isPositive()) {
                assertThat(open).as("seed %d round %d", seed, round).isEqualTo(Money.zero(USD));
            }
        }
    }
}

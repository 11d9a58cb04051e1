package fairflame.invoice.books;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fairflame.Refusal;
import fairflame.invoice.Invoice;
import fairflame.invoice.RandomInvoices;
import fairflame.invoice.account.CustomerAccount;
import fairflame.invoice.account.Movement;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;

class BooksTest {
    private static final CurrencyUnit USD = CurrencyUnit.USD;
    private static final LocalDate DAY = LocalDate.of(2026, 3, 2);
    private static final Chart CHART = chart();

    private static Chart chart() {
        try {
            return Chart.parse(Files.readString(Path.of("catalog-sample/accounts.csv")));
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }

    private static Movement movement(String id, Movement.Kind kind, int day, String amount, boolean deposit) {
        return new Movement(
                id,
                kind,
                DAY.plusDays(day),
                "Q-2026-0001",
                Optional.empty(),
                Money.parse("USD " + amount),
                kind == Movement.Kind.WRITE_OFF ? "" : "transfer",
                deposit,
                kind == Movement.Kind.PAYMENT ? "" : "agreed by telephone");
    }

    private static Money on(List<Entry> journal, String number) {
        return journal.stream()
                .flatMap(entry -> entry.postings().stream())
                .filter(posting -> posting.account().number().equals(number))
                .map(Posting::amount)
                .reduce(Money.zero(USD), Money::plus);
    }

    @Test
    void aDepositIsALiabilityUntilTheInvoiceUsesItUp() {
        var deposit = movement("P-1", Movement.Kind.PAYMENT, 0, "10.00", true);
        var before = Books.journal(CHART, List.of(), List.of(deposit));
        assertThat(on(before, "2300")).isEqualTo(Money.parse("USD -10.00"));
        assertThat(on(before, "1010")).isEqualTo(Money.parse("USD 10.00"));
        assertThat(on(before, "1200")).isEqualTo(Money.zero(USD));

        var invoice = bigInvoice();
        var after = Books.journal(CHART, List.of(invoice), List.of(deposit));
        assertThat(on(after, "2300")).isEqualTo(Money.zero(USD));
        assertThat(on(after, "1200")).isEqualTo(invoice.totals().total().minus(Money.parse("USD 10.00")));
    }

    private static Invoice bigInvoice() {
        var random = new RandomInvoices(new Random(4));
        while (true) {
            var invoice = random.full(1, "Q-2026-0001", DAY.plusDays(1));
            if (invoice.totals().total().isGreaterThan(Money.parse("USD 100.00"))) {
                return invoice;
            }
        }
    }

    @Test
    void aCreditNoteOfAllOfItLeavesNothingButTheCustomersMoney() {
        var random = new RandomInvoices(new Random(9));
        var invoice = random.full(1, "Q-2026-0001", DAY);
        var note = random.credit(invoice, "C-2026-0001", DAY.plusDays(3));
        var journal = Books.journal(CHART, List.of(note, invoice), List.of());
        for (var number : List.of("1200", "2400", "4000", "4010", "4020", "4100", "4200", "4900")) {
            assertThat(on(journal, number)).as(number).isEqualTo(Money.zero(USD));
        }
    }

    @Test
    void aWriteOffIsAnExpense() {
        var invoice = bigInvoice();
        var given = movement("W-1", Movement.Kind.WRITE_OFF, 60, "58.49", false);
        var journal = Books.journal(CHART, List.of(invoice), List.of(given));
        assertThat(on(journal, "6900")).isEqualTo(Money.parse("USD 58.49"));
        assertThat(on(journal, "1200")).isEqualTo(invoice.totals().total().minus(given.amount()));
    }

    @Test
    void theBooksBalanceAndAgreeWithTheAccountsWhateverHappened() {
        var seed = 20260317L;
        var dice = new Random(seed);
        for (int round = 0; round < 200; round++) {
            var papers = new ArrayList<Invoice>();
            var movements = new ArrayList<Movement>();
            var random = new RandomInvoices(dice);
            for (int i = 1; i <= 1 + dice.nextInt(3); i++) {
                var invoice = random.full(i, "Q-2026-0001", DAY.plusDays(dice.nextInt(20)));
                papers.add(invoice);
                if (dice.nextInt(3) == 0) {
                    papers.add(random.credit(
                            invoice, "C-2026-000" + i, invoice.issued().plusDays(dice.nextInt(9))));
                }
            }
            for (int i = 1; i <= dice.nextInt(6); i++) {
                var kind = Movement.Kind.values()[dice.nextInt(3)];
                var cents = String.format("%d.%02d", dice.nextInt(900), 1 + dice.nextInt(99));
                movements.add(movement("M-" + i, kind, dice.nextInt(40), cents, dice.nextBoolean()));
            }
            var journal = Books.journal(CHART, papers, movements);
            var sum = journal.stream()
                    .flatMap(entry -> entry.postings().stream())
                    .map(Posting::amount)
                    .reduce(Money.zero(USD), Money::plus);
            assertThat(sum).as("seed %d round %d", seed, round).isEqualTo(Money.zero(USD));
            var account = new CustomerAccount(USD, papers, movements);
            assertThat(on(journal, "1200").plus(on(journal, "2300")))
                    .as("seed %d round %d: receivable and deposits together are the balance", seed, round)
                    .isEqualTo(account.balance());
            assertThat(on(journal, "2300").isPositive())
                    .as("seed %d round %d: no more deposit is used than there was", seed, round)
                    .isFalse();
        }
    }

    @Test
    void anEntryThatDoesNotBalanceCannotBeMade() {
        var account = CHART.of("bank");
        assertThatThrownBy(() -> new Entry(DAY, "X", "x", List.of(new Posting(account, Money.parse("USD 0.01")))))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void refusesAChartWithoutARoleOrWithADepositThatIsNoLiability() {
        var head = "role,number,name,type,source\n";
        assertThatThrownBy(() -> Chart.parse(head + "bank,1,Bank,asset,x\n"))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("accounts.csv");
        assertThatThrownBy(() -> Chart.parse(head + "tips,1,Bank,asset,x\n"))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("accounts.csv row 2")
                .hasMessageContaining("tips");
        var whole = """
                bank,1,a,asset,x
                receivable,2,a,asset,x
                deposits,3,a,income,x
                sales-tax,4,a,liability,x
                revenue,5,a,income,x
                discounts,6,a,income,x
                bad-debt,7,a,expense,x
                """;
        assertThatThrownBy(() -> Chart.parse(head + whole))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("deposits")
                .hasMessageContaining("liability");
    }

    @Test
    void theSampleChartSendsCardPaymentsAndPartsToAccountsOfTheirOwn() {
        assertThat(CHART.of("bank", "card").number()).isEqualTo("1020");
        assertThat(CHART.of("bank", "transfer").number()).isEqualTo("1010");
        assertThat(CHART.of("revenue", "trip").number()).isEqualTo("4000");
    }
}

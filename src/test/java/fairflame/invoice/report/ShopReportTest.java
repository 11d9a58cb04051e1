package fairflame.invoice.report;

import static org.assertj.core.api.Assertions.assertThat;

import fairflame.agreement.DemoAgreements;
import fairflame.invoice.RandomInvoices;
import fairflame.quote.Work;
import java.time.LocalDate;
import java.util.List;
import java.util.Random;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;

class ShopReportTest {
    private static final LocalDate DAY = LocalDate.of(2026, 3, 2);

    @Test
    void aSignedQuoteCountsOnceForEachOfItsCauses() {
        var signed = DemoAgreements.BOTH;
        var quote = signed.quote();
        var won = ShopReport.wins(List.of(quote), List.of(signed));
        assertThat(won).isNotEmpty().allSatisfy(rate -> {
            assertThat(rate.quoted()).isEqualTo(1);
            assertThat(rate.signed()).isEqualTo(1);
            assertThat(rate.perMille()).isEqualTo(1000);
        });
        assertThat(won).extracting(ShopReport.WinRate::cause).doesNotHaveDuplicates();
        assertThat(ShopReport.wins(List.of(quote), List.of()))
                .allSatisfy(rate -> assertThat(rate.signed()).isZero());
    }

    @Test
    void creditNotesAreTakenOutOfTheRevenueOfTheirWork() {
        var signed = DemoAgreements.BOTH;
        var random = new RandomInvoices(new Random(31));
        var number = signed.quote().number();
        var one = random.full(1, number, DAY);
        var two = random.full(2, "Q-2026-0099", DAY);
        var note = random.credit(one, "C-2026-0001", DAY);
        var rows = ShopReport.revenue(List.of(one, two, note), List.of(signed), CurrencyUnit.USD);
        var tasks = signed.taken().work().stream()
                .map(Work::task)
                .distinct()
                .sorted()
                .toList();
        assertThat(rows).extracting(ShopReport.Revenue::work).containsExactly("other work", String.join(" + ", tasks));
        assertThat(rows.get(0).amount()).isEqualTo(two.totals().beforeTax());
        assertThat(rows.get(1).amount()).isEqualTo(Money.zero(CurrencyUnit.USD));
        assertThat(rows.get(1).jobs()).isEqualTo(1);
    }
}

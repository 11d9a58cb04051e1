package fairflame.quote;

import static fairflame.quote.DemoQuotes.SWITCHES;
import static fairflame.quote.DemoShop.pct;
import static fairflame.quote.DemoShop.usd;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fairflame.Refusal;
import java.util.ArrayList;
import java.util.List;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;

/** Rules on document totals of EN 16931, as the records hold them. */
class TotalsTest {
    private static Totals totals(String subtotal, String discount, String layer, String tax, String total) {
        return new Totals(
                usd(subtotal),
                usd(discount),
                List.of(new TaxAmount("State", pct("10"), usd(subtotal), usd(layer))),
                usd(tax),
                usd(total));
    }

    private static Choice choice(List<Line> lines, Totals totals, Money deposit) {
        var like = SWITCHES.choice("one");
        return new Choice(
                "x",
                "x",
                "x",
                true,
                "",
                List.of(),
                Duties.NONE,
                like.hours(),
                lines,
                totals,
                deposit,
                List.of(),
                List.of(),
                List.of());
    }

    private static void refused(String rule, org.assertj.core.api.ThrowableAssert.ThrowingCallable call) {
        assertThatThrownBy(call).isInstanceOf(Refusal.class).hasMessageContaining(rule);
    }

    @Test
    void taxIsTheSumOfItsLayersAndTheTotalFollows() {
        assertThat(totals("100.00", "10.00", "9.00", "9.00", "99.00").beforeTax())
                .isEqualTo(usd("90.00"));
        refused("BR-CO-14", () -> totals("100.00", "10.00", "9.00", "9.01", "99.01"));
        refused("BR-CO-15", () -> totals("100.00", "10.00", "9.00", "9.00", "99.01"));
    }

    @Test
    void aChoiceAddsUpFromItsLines() {
        var like = SWITCHES.choice("one");
        var fewer = new ArrayList<>(like.lines());
        fewer.remove(0);
        refused("BR-CO-10", () -> choice(fewer, like.totals(), like.deposit()));
        var discounted = new Totals(
                like.totals().subtotal(),
                usd("1.00"),
                like.totals().taxes(),
                like.totals().tax(),
                like.totals().total().minus(usd("1.00")));
        refused("BR-CO-11", () -> choice(like.lines(), discounted, usd("0.00")));
    }

    @Test
    void noChoiceCostsLessThanNothingAndNoDepositMoreThanAll() {
        var like = SWITCHES.choice("one");
        refused("deposit 'USD 293.81'", () -> choice(like.lines(), like.totals(), usd("293.81")));
        refused("deposit 'USD -0.01'", () -> choice(like.lines(), like.totals(), usd("-0.01")));
        assertThat(choice(like.lines(), like.totals(), usd("293.80")).deposit()).isEqualTo(usd("293.80"));
        var line = like.lines().get(0);
        var back = new Line(
                "L1",
                LineKind.TRIP,
                "",
                "x",
                line.quantity(),
                "each",
                usd("-5.00"),
                usd("-5.00"),
                usd("0.00"),
                false,
                false,
                List.of());
        var below = new Totals(usd("-5.00"), usd("0.00"), List.of(), usd("0.00"), usd("-5.00"));
        refused("total of a choice", () -> choice(List.of(back), below, usd("0.00")));
    }
}

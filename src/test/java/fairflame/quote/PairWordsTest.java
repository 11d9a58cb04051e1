package fairflame.quote;

import static fairflame.quote.DemoShop.usd;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.Set;
import org.junit.jupiter.api.Test;

/**
 * The break-even p* = (both - one) / later, worked by hand: (291.75 - 200.25) / (89.00 + 152.25 + 48.00) = 91.50 / 289.25
 * = 0.316. Prices are invented for the demo.
 */
class PairWordsTest {
    private final Quote switches = DemoQuotes.switches();

    @Test
    void theBreakEvenComesFromTheQuotedLines() {
        var arithmetic = PairWords.arithmetic(switches.choice("one"), switches.choice("both"), usd("89.00"));
        assertThat(arithmetic.one()).isEqualTo(usd("200.25"));
        assertThat(arithmetic.both()).isEqualTo(usd("291.75"));
        assertThat(arithmetic.later()).isEqualTo(usd("289.25"));
        assertThat(arithmetic.breakEven()).isEqualByComparingTo("0.316");
    }

    @Test
    void itIsPrintedBesideOneAndBoth() {
        for (var choice : switches.choices()) {
            assertThat(String.join(" ", choice.arithmetic())).as(choice.id()).contains("0.316");
        }
    }

    @Test
    void itIsPrintedOnlyWhereThereIsAPair() {
        var alone =
                DemoQuotes.quoting(DemoQuotes.request()).repair(DemoQuotes.SETTLED, DemoQuotes.plan(DemoScopes.BOTH));
        assertThat(alone.choices().get(0).arithmetic()).isEmpty();
        var single = DemoScopes.scope("one", true, "", DemoScopes.ONE.tasks(), Set.of(PairWords.SINGLE));
        var only = DemoQuotes.quoting(DemoQuotes.request()).repair(DemoQuotes.SETTLED, DemoQuotes.plan(single));
        assertThat(only.choices().get(0).arithmetic()).isEmpty();
        var clean = DemoScopes.scope("clean", false, "", DemoScopes.CLEAN_SENSOR.tasks(), Set.of());
        var three = DemoQuotes.quoting(DemoQuotes.request())
                .repair(DemoQuotes.SETTLED, DemoQuotes.plan(DemoScopes.BOTH, DemoScopes.ONE, clean));
        assertThat(three.choice("clean").arithmetic()).isEmpty();
        assertThat(three.choice("both").arithmetic()).isNotEmpty();
    }
}

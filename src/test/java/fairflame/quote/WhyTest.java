package fairflame.quote;

import static fairflame.quote.DemoShop.usd;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fairflame.Refusal;
import java.util.List;
import org.junit.jupiter.api.Test;

class WhyTest {
    private final Quote switches = DemoQuotes.switches();

    @Test
    void aPartLeadsFromTheReadingToTheTaxRule() {
        assertThat(Why.chain(switches, "both", "L1"))
                .containsExactly(
                        "L1, high limit switch: USD 48.00",
                        "reading: High limit reads 22 kilohm to its body. [rule leak-high; OHM]",
                        "reading: Valve voltage fell to 15.7 V before the flame. [rule hold-in; M-13]",
                        "finding: title of LD01, settled by the lifted-lead test [cause LD01]",
                        "task: R03, task R03: reason of R03 [invented for the demo]",
                        "quantity: 1 each: needed for it [invented for the demo]",
                        "catalog row: SW-100, high limit switch, per each [demo catalog 2026-11-01; invented for the demo]",
                        "price ladder: price ladder from USD 20.00: markup 50 % on cost, rounded once to USD 48.00 "
                                + "[invented for the demo]",
                        "arithmetic: 1 each x USD 48.00 = USD 48.00 [computed]",
                        "tax rule: part is taxed in Demo City: State 6 %, County 1.25 %, added up, on the document, "
                                + "rounded nearest, on consumable, part [invented for the demo]");
    }

    @Test
    void hoursNameEveryStandardTime() {
        assertThat(Why.chain(switches, "both", "hours"))
                .startsWith(
                        "Hours: 1.35 h",
                        "standard time: R03, task R03: 0.30 h x 2 pieces = 0.60 h [invented for the demo]")
                .contains("access step: AX-DRAIN, step AX-DRAIN: 0.25 h, once for R03 [invented for the demo]")
                .hasSize(7)
                .endsWith("rounding: 1.35 h in all, rounded up once to 1.35 h [invented for the demo]");
    }

    @Test
    void totalsShowTheirArithmetic() {
        assertThat(Why.chain(switches, "both", "subtotal"))
                .containsExactly(
                        "Subtotal USD 382.75: sum of the lines, L1 48.00 + L2 48.00 + L3 2.00 + L4 195.75 + L5 89.00");
        assertThat(Why.chain(switches, "both", "discount")).containsExactly("Discount USD 0.00: none on the document");
        assertThat(Why.chain(switches, "both", "tax"))
                .containsExactly(
                        "Tax USD 7.11: State 6 %, County 1.25 %, added up, on the document, rounded nearest, on "
                                + "consumable, part [invented for the demo]",
                        "Taxed after discount: L1 48.00 + L2 48.00 + L3 2.00",
                        "State 6 % + County 1.25 %: USD 98.00 x 7.25 % = 7.105, rounded once to USD 7.11");
        assertThat(Why.chain(switches, "both", "total"))
                .startsWith("Total USD 389.86: 382.75 - 0.00 + 7.11")
                .hasSize(6);
        assertThat(Why.chain(switches, "both", "deposit"))
                .containsExactly(
                        "Deposit USD 38.98: the shop asks 10 % of the total, the place allows at most 10 %, the place "
                                + "allows at most USD 1000.00; the least counts, rounded down [invented for the demo]");
    }

    @Test
    void aDiscountShowsItsShares() {
        var inputs = PricingInputs.inZone("near").less(Discount.ofAmount("offer", usd("25.00")));
        var quote = DemoQuotes.quoting(DemoQuotes.request(DemoShop.STRICT, inputs))
                .repair(DemoQuotes.SETTLED, DemoQuotes.plan(DemoScopes.CLEAN_SENSOR));
        assertThat(Why.chain(quote, "clean", "discount"))
                .singleElement()
                .asString()
                .startsWith("Discount USD 25.00: shared to the cent")
                .endsWith("L1 10.07 + L2 5.42 + L3 9.51");
        assertThat(Why.chain(quote, "clean", "tax")).anyMatch(words -> words.contains("rounded on each line"));
        assertThat(Why.chain(quote, "clean", "L1"))
                .contains("discount: its share of the document discount is USD 10.07 [computed]");
    }

    @Test
    void anUntaxedChoiceHasNoTaxedLines() {
        var quote = DemoQuotes.quoting(DemoQuotes.request())
                .repair(DemoQuotes.SETTLED, DemoQuotes.plan(DemoScopes.CLEAN_SENSOR));
        assertThat(Why.chain(quote, "clean", "tax")).noneMatch(words -> words.startsWith("Taxed after"));
    }

    @Test
    void everyQuestionHasAnAnswerAndNoOtherHas() {
        for (var choice : switches.choices()) {
            for (var question : Why.questions(choice)) {
                assertThat(Why.chain(switches, choice.id(), question))
                        .as(question)
                        .isNotEmpty();
            }
        }
        assertThat(Why.questions(switches.choice("one")))
                .isEqualTo(List.of("L1", "L2", "L3", "L4", "hours", "subtotal", "discount", "tax", "total", "deposit"));
        assertThatThrownBy(() -> Why.chain(switches, "one", "L9"))
                .isInstanceOf(Refusal.Unknown.class)
                .hasMessageContaining("line or total 'L9'")
                .hasMessageContaining("L1, L2, L3, L4, hours");
    }
}

package fairflame.quote;

import static fairflame.quote.DemoShop.USD;
import static fairflame.quote.DemoShop.dec;
import static fairflame.quote.DemoShop.pct;
import static fairflame.quote.DemoShop.tax;
import static fairflame.quote.DemoShop.usd;
import static org.assertj.core.api.Assertions.assertThat;

import fairflame.catalog.TaxRule;
import fairflame.money.Rounding;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.IntStream;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;

/**
 * Sums worked by hand to the cent. Rounding by the Streamlined Sales and Use Tax Agreement, section 324 (to the third
 * decimal, up when it is above 4; per item or per invoice; layers may be combined), and UK VAT, internal manual
 * VATREC12010 (total on the document rounded down, or each line to the nearest penny).
 */
class TaxationTest {
    private static Line line(String net, boolean taxable) {
        return line(net, "0.00", taxable);
    }

    private static Line line(String net, String discount, boolean taxable) {
        var price = usd(net);
        var kind = taxable ? LineKind.PART : LineKind.LABOUR;
        return new Line(
                "L", kind, "", "x", BigDecimal.ONE, "each", price, price, usd(discount), taxable, false, List.of());
    }

    private static Totals total(TaxRule rule, Line... lines) {
        return Taxation.of(List.of(lines), rule, USD);
    }

    @Test
    void perItemAndPerInvoiceDifferByACent() {
        var lines = new Line[] {line("48.35", true), line("48.35", true), line("12.49", true)};
        // 3.505375 -> 3.51, 3.51, 0.905525 -> 0.91
        assertThat(total(tax(true, true, "7.25"), lines).tax()).isEqualTo(usd("7.93"));
        // 109.19 x 7.25 % = 7.916275
        assertThat(total(tax(true, false, "7.25"), lines).tax()).isEqualTo(usd("7.92"));
    }

    @Test
    void aDiscountLeavesTheBaseBeforeTax() {
        var totals = total(tax(true, false, "7.25"), line("109.19", "8.95", true), line("195.75", "16.05", false));
        assertThat(totals.taxes()).singleElement().satisfies(tax -> {
            assertThat(tax.base()).isEqualTo(usd("100.24"));
            assertThat(tax.amount()).isEqualTo(usd("7.27"));
        });
        assertThat(totals.subtotal()).isEqualTo(usd("304.94"));
        assertThat(totals.discount()).isEqualTo(usd("25.00"));
        assertThat(totals.beforeTax()).isEqualTo(usd("279.94"));
        assertThat(totals.total()).isEqualTo(usd("287.21"));
    }

    @Test
    void oneRateOnAllLines() {
        var totals = total(tax(true, false, "20"), line("96.70", true), line("12.49", true), line("195.75", true));
        assertThat(totals.tax()).isEqualTo(usd("60.99"));
        assertThat(totals.total()).isEqualTo(usd("365.93"));
        assertThat(totals.total().minus(usd("100.00"))).isEqualTo(usd("265.93"));
    }

    @Test
    void aTotalMayBeRoundedDownWhereThePlaceAllowsIt() {
        var lines = new Line[] {line("17.43", true), line("9.99", true), line("5.51", true)};
        var layers = List.of(new TaxRule.Layer("VAT", pct("20")));
        var down = new TaxRule(layers, Set.of("part"), true, false, Rounding.DOWN, "VATREC12010");
        assertThat(total(down, lines).tax()).isEqualTo(usd("6.58"));
        var perLine = new TaxRule(layers, Set.of("part"), true, true, Rounding.NEAREST, "VATREC12010");
        assertThat(total(perLine, lines).tax()).isEqualTo(usd("6.59"));
    }

    @Test
    void layersRoundedApartOrTogether() {
        var apart = total(tax(false, false, "6", "1.25"), line("100.24", true));
        assertThat(apart.taxes()).extracting(TaxAmount::amount).containsExactly(usd("6.01"), usd("1.25"));
        assertThat(apart.taxes()).extracting(TaxAmount::name).containsExactly("State", "County");
        assertThat(apart.tax()).isEqualTo(usd("7.26"));
        var together = total(tax(true, false, "6", "1.25"), line("100.24", true));
        assertThat(together.taxes()).singleElement().satisfies(tax -> {
            assertThat(tax.name()).isEqualTo("State 6 % + County 1.25 %");
            assertThat(tax.rate()).isEqualTo(pct("7.25"));
            assertThat(tax.amount()).isEqualTo(usd("7.27"));
        });
    }

    @Test
    void threeLayersOnEachLine() {
        // 10.10 x 4 % = 0.404, x 0.5 % = 0.0505, x 0.25 % = 0.02525; twice
        var totals = total(tax(false, true, "4", "0.5", "0.25"), line("10.10", true), line("10.10", true));
        assertThat(totals.taxes()).extracting(TaxAmount::amount).containsExactly(usd("0.80"), usd("0.10"), usd("0.06"));
    }

    @Test
    void neverRoundsTwice() {
        assertThat(total(tax(true, false, "7.25"), line("20.62", true)).tax()).isEqualTo(usd("1.49"));
    }

    @Test
    void aPlaceWithoutTaxSaysSo() {
        var totals = total(tax(true, false), line("10.00", true));
        assertThat(totals.taxes()).isEmpty();
        assertThat(totals.total()).isEqualTo(usd("10.00"));
        assertThat(Taxation.words(tax(true, false))).isEqualTo("the place charges no sales tax");
    }

    @Test
    void thePlaceSaysWhatIsTaxed() {
        assertThat(Taxation.taxable(LineKind.PART, DemoShop.CITY)).isTrue();
        assertThat(Taxation.taxable(LineKind.LABOUR, DemoShop.CITY)).isFalse();
        assertThat(Taxation.taxable(LineKind.LABOUR, DemoShop.STRICT)).isTrue();
        assertThat(Taxation.taxable(LineKind.PERMIT_FEE, DemoShop.CITY)).isFalse();
        assertThat(Taxation.taxable(LineKind.PERMIT_FEE, DemoShop.STRICT)).isTrue();
    }

    @Test
    void theRuleIsToldInOneSentence() {
        assertThat(Taxation.words(DemoShop.PARTS_725))
                .isEqualTo("State 6 %, County 1.25 %, added up, on the document, rounded nearest, on consumable, part");
        assertThat(Taxation.words(DemoShop.STRICT.tax()))
                .isEqualTo("State 8 %, on each line, rounded nearest, on consumable, diagnosis, labour, part, trip");
        assertThat(Taxation.words(tax(false, false, "6", "1"))).contains("State 6 %, County 1 %, each rounded, on the");
    }

    @Test
    void theOrderOfLinesNeverMattersAndAReversalLeavesNothing() {
        var seed = 7_25L;
        var random = new Random(seed);
        for (int i = 0; i < 2_000; i++) {
            var rule = tax(
                    random.nextBoolean(),
                    random.nextBoolean(),
                    "6",
                    dec("0.01").multiply(dec("" + random.nextInt(300))).toString());
            var lines = new ArrayList<>(IntStream.rangeClosed(0, random.nextInt(8))
                    .mapToObj(any -> line(
                            dec("0.01")
                                    .multiply(dec("" + (random.nextInt(100_000) - 20_000)))
                                    .toString(),
                            random.nextBoolean()))
                    .toList());
            var at = "seed " + seed + " case " + i + ": " + rule + " on " + lines;
            var straight = Taxation.of(lines, rule, USD);
            Collections.shuffle(lines, random);
            assertThat(Taxation.of(lines, rule, USD)).as(at).isEqualTo(straight);
            var back = Taxation.of(lines.stream().map(TaxationTest::reversed).toList(), rule, USD);
            assertThat(back.total().plus(straight.total()).isZero()).as(at).isTrue();
            assertThat(back.tax().plus(straight.tax()).isZero()).as(at).isTrue();
        }
    }

    private static Line reversed(Line line) {
        Money net = line.net().negated();
        return new Line(
                line.id(),
                line.kind(),
                "",
                "x",
                BigDecimal.ONE,
                "each",
                net,
                net,
                line.discount(),
                line.taxable(),
                false,
                List.of());
    }
}

package fairflame.quote;

import static fairflame.quote.DemoScopes.job;
import static fairflame.quote.DemoScopes.part;
import static fairflame.quote.DemoScopes.pieces;
import static fairflame.quote.DemoScopes.scope;
import static fairflame.quote.DemoShop.dec;
import static fairflame.quote.DemoShop.pct;
import static fairflame.quote.DemoShop.usd;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fairflame.Refusal;
import fairflame.catalog.Jurisdiction;
import fairflame.catalog.Part;
import fairflame.catalog.PermitNeed;
import fairflame.catalog.Shop;
import fairflame.catalog.Trade;
import fairflame.money.Amounts;
import fairflame.repair.Scope;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;

/** Prices are invented for the demo; every sum was worked by hand from them. */
class PricingTest {
    private static final LocalDate DAY = LocalDate.of(2026, 11, 20);
    private static final PricingInputs NEAR = PricingInputs.inZone("near");

    private static Priced price(Scope scope, PricingInputs inputs) {
        return price(DemoShop.SHOP, DemoShop.CITY, scope, inputs);
    }

    private static Priced price(Shop shop, Jurisdiction place, Scope scope, PricingInputs inputs) {
        return new Pricing(shop, place, inputs, DAY).repair(scope, List.of());
    }

    private static Line only(Priced priced, LineKind kind) {
        var lines = priced.lines().stream().filter(line -> line.kind() == kind).toList();
        assertThat(lines).hasSize(1);
        return lines.get(0);
    }

    @Test
    void bothSwitchesOfTheFirstVisit() {
        // 195.75 + 96.00 + 2.00 + 89.00; tax 98.00 x 7.25 % = 7.105 -> 7.11
        var priced = price(DemoScopes.BOTH, NEAR);
        assertThat(priced.hours()).isEqualByComparingTo("1.35");
        assertThat(only(priced, LineKind.LABOUR).net()).isEqualTo(usd("195.75"));
        assertThat(priced.totals().subtotal()).isEqualTo(usd("382.75"));
        assertThat(priced.totals().tax()).isEqualTo(usd("7.11"));
        assertThat(priced.totals().total()).isEqualTo(usd("389.86"));
        assertThat(priced.lines()).extracting(Line::id).containsExactly("L1", "L2", "L3", "L4", "L5");
        assertThat(priced.lines())
                .extracting(Line::kind)
                .containsExactly(LineKind.PART, LineKind.PART, LineKind.CONSUMABLE, LineKind.LABOUR, LineKind.TRIP);
        assertThat(priced.duties()).isEqualTo(Duties.NONE);
        assertThat(priced.deposit()).isEqualTo(usd("38.98"));
    }

    @Test
    void oneSwitchOfTheSixthCase() {
        // 152.25 + 48.00 + 1.00 + 89.00; tax 49.00 x 7.25 % = 3.5525 -> 3.55
        var priced = price(DemoScopes.ONE, NEAR);
        assertThat(priced.hours()).isEqualByComparingTo("1.05");
        assertThat(priced.totals().total()).isEqualTo(usd("293.80"));
    }

    @Test
    void aCleanedSensorMeetsTheMinimumCharge() {
        // 0.65 h x 145 = 94.25; 145.00 - 94.25 = 50.75 apart; 89.00; no tax
        var priced = price(DemoScopes.CLEAN_SENSOR, NEAR);
        assertThat(priced.hours()).isEqualByComparingTo("0.65");
        assertThat(priced.lines()).extracting(Line::net).containsExactly(usd("94.25"), usd("50.75"), usd("89.00"));
        assertThat(priced.totals().total()).isEqualTo(usd("234.00"));
        assertThat(priced.lines().get(1).basis().get(0).words())
                .isEqualTo("labour of a visit is at least 1 h x USD 145.00 = USD 145.00; hours come to USD 94.25");
    }

    @Test
    void theLargerLineOfTheSecondVisit() {
        var priced = price(DemoScopes.LARGER_LINE, NEAR);
        assertThat(priced.hours()).isEqualByComparingTo("13.70");
        assertThat(only(priced, LineKind.LABOUR).net()).isEqualTo(usd("1986.50"));
        assertThat(only(priced, LineKind.PERMIT_FEE).net()).isEqualTo(usd("120.00"));
        assertThat(only(priced, LineKind.PERMIT_FEE).taxable()).isFalse();
        assertThat(priced.duties()).isEqualTo(new Duties(true, PermitNeed.YES, true));
        // Pipe 4.10 + 100 % = 8.20 x 84; compound 14.70 x 2
        assertThat(only(priced, LineKind.PART).net()).isEqualTo(usd("688.80"));
        assertThat(only(priced, LineKind.CONSUMABLE).net()).isEqualTo(usd("29.40"));
    }

    @Test
    void theMinimumIsNotAddedWhenTheHoursReachIt() {
        var at =
                DemoShop.shop(DemoShop.rates(Map.of(Trade.TECHNICIAN, usd("100.00"), Trade.GAS_FITTER, usd("250.00"))));
        // 0.80 + 0.25 + 0.25 at 250 is above the technician's minimum of 100.00
        assertThat(price(at, DemoShop.CITY, scope("v", true, "", List.of(job(DemoShop.R10)), Set.of()), NEAR)
                        .lines())
                .extracting(Line::description)
                .noneMatch(words -> words.startsWith("Minimum"));
    }

    @Test
    void labourLinesNameWhoWorks() {
        var shop =
                DemoShop.shop(DemoShop.rates(Map.of(Trade.TECHNICIAN, usd("145.00"), Trade.GAS_FITTER, usd("165.00"))));
        var scope = scope("v", true, "", List.of(job(DemoShop.R06), job(DemoShop.R10)), Set.of());
        var priced = price(shop, DemoShop.STRICT, scope, NEAR);
        assertThat(priced.lines().subList(0, 2))
                .extracting(Line::description)
                .containsExactly("Labour, service technician", "Labour, master gas installer");
        assertThat(priced.lines().get(1).net()).isEqualTo(usd("214.50"));
        assertThat(priced.hours()).isEqualByComparingTo("1.95");
    }

    @Test
    void samePartsOfSeveralTasksStandOnOneLine() {
        var scope = scope(
                "v",
                true,
                "",
                List.of(
                        job(DemoShop.R06, part(DemoShop.TAPE, "1")),
                        pieces(DemoShop.R03, "1", part(DemoShop.TAPE, "2"))),
                Set.of());
        var tape = only(price(scope, NEAR), LineKind.CONSUMABLE);
        assertThat(tape.quantity()).isEqualByComparingTo("3");
        assertThat(tape.net()).isEqualTo(usd("3.00"));
        assertThat(tape.item()).isEqualTo("TS-010");
    }

    @Test
    void aPriceComesFromTheListOrTheLadderAndIsRoundedOnce() {
        assertThat(UnitPrice.of(DemoShop.LIMIT, DemoShop.SHOP).price()).isEqualTo(usd("48.00"));
        assertThat(UnitPrice.of(DemoShop.TAPE, DemoShop.SHOP).price()).isEqualTo(usd("1.00"));
        assertThat(UnitPrice.of(costing("19.99"), DemoShop.SHOP).price()).isEqualTo(usd("39.98"));
        assertThat(UnitPrice.of(costing("20.00"), DemoShop.SHOP).price()).isEqualTo(usd("30.00"));
        assertThat(UnitPrice.of(costing("20.01"), DemoShop.SHOP).price()).isEqualTo(usd("30.02"));
        assertThat(UnitPrice.of(costing("200.00"), DemoShop.SHOP).price()).isEqualTo(usd("260.00"));
        assertThat(UnitPrice.of(costing("20.01"), DemoShop.SHOP).basis())
                .extracting(Basis::words)
                .contains("price ladder from USD 20.00: markup 50 % on cost, rounded once to USD 30.02");
    }

    private static Part costing(String cost) {
        var part = DemoShop.LIMIT;
        return new Part(
                "X",
                part.role(),
                "",
                "x",
                false,
                "each",
                usd(cost),
                Optional.empty(),
                "S1",
                0,
                "invented for the demo");
    }

    @Test
    void theDocumentDiscountLeavesPassedThroughFeesAlone() {
        var priced = price(DemoScopes.LARGER_LINE, NEAR.less(Discount.ofPercent("first visit", pct("10"))));
        // 688.80 + 29.40 + 1986.50 + 89.00 = 2793.70, not the fee of 120.00
        assertThat(priced.totals().discount()).isEqualTo(usd("279.37"));
        assertThat(only(priced, LineKind.PERMIT_FEE).discount()).isEqualTo(usd("0.00"));
        // taxed 718.20, its share 71.82; 646.38 x 7.25 % = 46.86255
        assertThat(priced.totals().taxes().get(0).base()).isEqualTo(usd("646.38"));
        assertThat(priced.totals().tax()).isEqualTo(usd("46.86"));
    }

    @Test
    void aLineDiscountComesFirstAsALineOfItsOwn() {
        var priced = price(
                DemoScopes.BOTH,
                NEAR.less(List.of(new LineDiscount("SW-100", Discount.ofPercent("shop's fault", pct("50")))))
                        .less(Discount.ofPercent("neighbour", pct("10"))));
        assertThat(priced.lines().get(1).description()).isEqualTo("Discount 50 %, shop's fault");
        assertThat(priced.lines().get(1).net()).isEqualTo(usd("-24.00"));
        assertThat(priced.lines().get(1).taxable()).isTrue();
        // (382.75 - 24.00) x 10 % = 35.875 -> 35.88; taxed 74.00 of 358.75: 7.4010 -> 7.40; 66.60 x 7.25 % = 4.8285
        assertThat(priced.totals().discount()).isEqualTo(usd("35.88"));
        assertThat(priced.totals().taxes().get(0).base()).isEqualTo(usd("66.60"));
        assertThat(priced.totals().tax()).isEqualTo(usd("4.83"));
        assertThat(priced.totals().total()).isEqualTo(usd("327.70"));
    }

    @Test
    void twoDiscountsOnALineNeverTakeMoreThanTheLine() {
        var priced = price(
                DemoScopes.ONE,
                NEAR.less(List.of(
                        new LineDiscount("SW-100", Discount.ofAmount("a", usd("40.00"))),
                        new LineDiscount("part", Discount.ofPercent("b", pct("50"))))));
        assertThat(priced.lines().subList(1, 3)).extracting(Line::net).containsExactly(usd("-40.00"), usd("-4.00"));
        assertThatThrownBy(() -> price(
                        DemoScopes.ONE,
                        NEAR.less(List.of(new LineDiscount("SW-100", Discount.ofAmount("a", usd("48.01")))))))
                .isInstanceOf(Refusal.OutOfRange.class)
                .hasMessageContaining("at most USD 48.00");
    }

    @Test
    void aFeePassedThroughIsNeverDiscounted() {
        assertThatThrownBy(() -> price(
                        DemoScopes.LARGER_LINE,
                        NEAR.less(List.of(new LineDiscount("permit-fee", Discount.ofPercent("a", pct("5")))))))
                .isInstanceOf(Refusal.NotAllowed.class)
                .hasMessageContaining("Permit fee, passed through");
    }

    @Test
    void aDiscountHasAReasonAndABound() {
        assertThatThrownBy(() -> Discount.ofPercent(" ", pct("5"))).hasMessageContaining("reason of a discount");
        assertThatThrownBy(() -> Discount.ofPercent("a", pct("100.01"))).isInstanceOf(Refusal.OutOfRange.class);
        assertThatThrownBy(() -> Discount.ofPercent("a", pct("-1"))).isInstanceOf(Refusal.OutOfRange.class);
        assertThatThrownBy(() -> Discount.ofAmount("a", usd("-0.01"))).isInstanceOf(Refusal.OutOfRange.class);
        assertThatThrownBy(() -> new Discount("a", pct("1"), Optional.of(usd("1.00"))))
                .isInstanceOf(Refusal.NotAllowed.class);
        assertThat(price(DemoScopes.ONE, NEAR.less(Discount.ofPercent("gift", pct("100"))))
                        .totals()
                        .total())
                .isEqualTo(usd("0.00"));
        assertThat(price(DemoScopes.ONE, NEAR.less(Discount.ofPercent("none", pct("0"))))
                        .totals()
                        .total())
                .isEqualTo(usd("293.80"));
    }

    @Test
    void thePaidDiagnosisIsCreditedWithinItsDays() {
        var inTime = price(DemoScopes.ONE, NEAR.credited(new PaidDiagnosis(usd("120.00"), DAY.minusDays(30), false)));
        var credit = only(inTime, LineKind.DIAGNOSIS);
        assertThat(credit.net()).isEqualTo(usd("-120.00"));
        assertThat(credit.id()).isEqualTo("L5");
        assertThat(credit.taxable()).isFalse();
        assertThat(inTime.totals().total()).isEqualTo(usd("173.80"));
        var late = price(DemoScopes.ONE, NEAR.credited(new PaidDiagnosis(usd("120.00"), DAY.minusDays(31), false)));
        assertThat(late.totals().total()).isEqualTo(usd("293.80"));
        assertThatThrownBy(() ->
                        price(DemoScopes.ONE, NEAR.credited(new PaidDiagnosis(usd("120.00"), DAY.plusDays(1), false))))
                .isInstanceOf(Refusal.OutOfRange.class);
        assertThatThrownBy(() -> price(DemoScopes.ONE, NEAR.credited(new PaidDiagnosis(usd("0.00"), DAY, false))))
                .isInstanceOf(Refusal.OutOfRange.class);
    }

    @Test
    void theCreditCarriesTheTaxOfTheFeeItReverses() {
        // Upper Lake taxes the diagnosis: 8 % on each line
        var plain = price(DemoShop.SHOP, DemoShop.STRICT, DemoScopes.ONE, NEAR);
        var credited = price(
                DemoShop.SHOP,
                DemoShop.STRICT,
                DemoScopes.ONE,
                NEAR.credited(new PaidDiagnosis(usd("120.00"), DAY, false)));
        assertThat(plain.totals().total().minus(credited.totals().total())).isEqualTo(usd("129.60"));
    }

    @Test
    void aCreditNeverTakesTheTotalBelowZero() {
        var free = price(DemoScopes.ONE, NEAR.credited(new PaidDiagnosis(usd("5000.00"), DAY, false)));
        assertThat(free.totals().beforeTax()).isEqualTo(usd("0.00"));
        assertThat(free.totals().total()).isEqualTo(usd("3.55"));
        // The fee was taxed, the repair (labour alone, with nothing taxed but the diagnosis) is not.
        var strict = DemoShop.STRICT;
        var taxedFee = new Jurisdiction(
                strict.id(),
                strict.name(),
                strict.codes(),
                strict.permits(),
                strict.permitFee(),
                strict.permitFeeTaxed(),
                strict.testTap(),
                strict.gasLicence(),
                "",
                strict.gasTest(),
                new fairflame.catalog.TaxRule(
                        strict.tax().layers(),
                        Set.of("diagnosis"),
                        true,
                        false,
                        strict.tax().rounding(),
                        "demo"),
                strict.deposit(),
                14,
                5,
                false,
                Map.of(),
                Map.of(),
                Set.of(),
                "demo");
        var priced = price(
                DemoShop.SHOP,
                taxedFee,
                DemoScopes.CLEAN_SENSOR,
                NEAR.credited(new PaidDiagnosis(usd("5000.00"), DAY, false)));
        assertThat(priced.totals().total()).isBetween(usd("0.00"), usd("2.00"));
        var gift = price(
                DemoScopes.CLEAN_SENSOR,
                NEAR.less(Discount.ofPercent("gift", pct("100")))
                        .credited(new PaidDiagnosis(usd("120.00"), DAY, false)));
        assertThat(gift.lines()).extracting(Line::kind).doesNotContain(LineKind.DIAGNOSIS);
    }

    @Test
    void oneTripIsNeverChargedTwice() {
        var same = price(DemoScopes.ONE, NEAR.credited(new PaidDiagnosis(usd("120.00"), DAY, true)));
        assertThat(same.lines()).extracting(Line::kind).doesNotContain(LineKind.TRIP);
        assertThatThrownBy(() -> price(DemoScopes.ONE, PricingInputs.inZone("moon")))
                .isInstanceOf(Refusal.Unknown.class)
                .hasMessage("trip zone 'moon' is refused; allowed: far, near");
    }

    @Test
    void aDiagnosisIsFeeAndTripOnly() {
        var priced = new Pricing(DemoShop.SHOP, DemoShop.CITY, NEAR, DAY).diagnosis();
        assertThat(priced.lines()).extracting(Line::net).containsExactly(usd("120.00"), usd("89.00"));
        assertThat(priced.hours()).isZero();
        assertThat(priced.totals().total()).isEqualTo(usd("209.00"));
    }

    @Test
    void otherLinesAreAddedToTheirChoice() {
        var haul = new ExtraLine(
                "", LineKind.DISPOSAL, "Haul away", dec("1"), "each", usd("35.00"), false, "old part", "demo");
        var crane = new ExtraLine(
                "larger-line", LineKind.SUBCONTRACT, "Trench", dec("2"), "h", usd("80.00"), true, "buried", "demo");
        var priced = price(DemoScopes.ONE, NEAR.with(List.of(haul, crane)));
        assertThat(only(priced, LineKind.DISPOSAL).net()).isEqualTo(usd("35.00"));
        assertThat(priced.lines()).extracting(Line::kind).doesNotContain(LineKind.SUBCONTRACT);
        var line =
                price(DemoScopes.LARGER_LINE, NEAR.with(List.of(haul, crane)).less(Discount.ofPercent("x", pct("50"))));
        assertThat(only(line, LineKind.SUBCONTRACT).discount()).isEqualTo(usd("0.00"));
        assertThat(only(line, LineKind.DISPOSAL).discount()).isEqualTo(usd("17.50"));
        var negative =
                new ExtraLine("", LineKind.DISPOSAL, "Haul away", dec("1"), "each", usd("-35.00"), false, "x", "demo");
        assertThatThrownBy(() -> price(DemoScopes.ONE, NEAR.with(List.of(negative))))
                .isInstanceOf(Refusal.OutOfRange.class);
        var none = new ExtraLine("", LineKind.DISPOSAL, "Haul", dec("0"), "each", usd("1.00"), false, "x", "demo");
        assertThatThrownBy(() -> price(DemoScopes.ONE, NEAR.with(List.of(none))))
                .isInstanceOf(Refusal.OutOfRange.class);
    }

    @Test
    void anotherCurrencyAndEmptyQuantitiesAreRefused() {
        var euro = new Part(
                "EU", "r", "", "x", false, "each", Money.of(CurrencyUnit.EUR, 5), Optional.empty(), "S1", 0, "demo");
        assertThatThrownBy(() ->
                        price(scope("v", true, "", List.of(job(DemoShop.R06, part(euro, "1"))), Set.of()), NEAR))
                .isInstanceOf(Refusal.NotAllowed.class)
                .hasMessageContaining("EUR");
        assertThatThrownBy(() -> price(
                        scope("v", true, "", List.of(job(DemoShop.R06, part(DemoShop.TAPE, "0"))), Set.of()), NEAR))
                .isInstanceOf(Refusal.OutOfRange.class)
                .hasMessageContaining("TS-010");
    }

    @Test
    void theOrderOfTasksAndPartsNeverChangesTheTotal() {
        var seed = 41L;
        var random = new Random(seed);
        var pool = List.of(DemoShop.LIMIT, DemoShop.OUTLET, DemoShop.TAPE, DemoShop.PIPE, DemoShop.DOPE);
        for (int i = 0; i < 300; i++) {
            var parts = new ArrayList<fairflame.repair.ScopedPart>();
            pool.forEach(part -> parts.add(part(part, "" + (1 + random.nextInt(5)))));
            var place = random.nextBoolean() ? DemoShop.CITY : DemoShop.STRICT;
            var off = Discount.ofAmount("offer", Money.ofMinor(DemoShop.USD, random.nextInt(9_000)));
            var straight = price(DemoShop.SHOP, place, switches(parts), NEAR.less(off));
            Collections.shuffle(parts, random);
            var shuffled = price(DemoShop.SHOP, place, switches(parts), NEAR.less(off));
            var at = "seed " + seed + " case " + i + ": " + off + " " + parts;
            assertThat(shuffled.totals()).as(at).isEqualTo(straight.totals());
            assertThat(Amounts.sum(
                            DemoShop.USD,
                            shuffled.lines().stream().map(Line::discount).toList()))
                    .as(at)
                    .isEqualTo(off.amount().orElseThrow());
        }
    }

    private static Scope switches(List<fairflame.repair.ScopedPart> parts) {
        return scope(
                "v",
                true,
                "",
                List.of(
                        pieces(DemoShop.R03, "2", parts.toArray(fairflame.repair.ScopedPart[]::new)),
                        job(DemoShop.R06)),
                Set.of());
    }

    @Test
    void everyLineSaysWhatItRestsOn() {
        for (var line : price(DemoScopes.BOTH, NEAR).lines()) {
            assertThat(line.basis()).extracting(Basis::what).contains("arithmetic", "tax rule");
        }
        assertThat(price(DemoScopes.BOTH, NEAR).lines().get(0).basis())
                .extracting(Basis::what)
                .containsExactly("task", "quantity", "catalog row", "price ladder", "arithmetic", "tax rule");
    }

    @Test
    void aLabourLineNamesTheTasksItRestsOn() {
        var labour = only(price(DemoScopes.BOTH, NEAR), LineKind.LABOUR);
        assertThat(labour.basis())
                .extracting(Basis::what)
                .containsExactly(
                        "task",
                        "standard time",
                        "access step",
                        "access step",
                        "access step",
                        "access step",
                        "rounding",
                        "rate",
                        "arithmetic",
                        "tax rule");
        assertThat(labour.quantity()).isEqualTo(dec("1.35"));
        assertThat(only(price(DemoScopes.LARGER_LINE, NEAR), LineKind.LABOUR).quantity())
                .isEqualTo(dec("13.70"));
    }
}

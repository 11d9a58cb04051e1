package fairflame.gas;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assertions.assertEquals;

import fairflame.Refusal;
import fairflame.gas.Reconciliation.Verdict;
import fairflame.quantity.GasFlow;
import fairflame.quantity.HeatingValue;
import fairflame.quantity.Length;
import fairflame.quantity.Pressure;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class ReconciliationTest {
    private static Sites heaterLine(String size) {
        return Sites.site()
                .from(Sites.meter("10.2inwc"))
                .of(Gas.of(Fuel.NATURAL, Optional.of(0.6), Optional.of(HeatingValue.ofBtuPerCubicFoot(1030))))
                .pipe("line", "m", "pad", Sites.steel(size), 84, Fittings.estimated(Length.ofFeet(26)))
                .appliance("heater", "pad", 400_000, "6inwc");
    }

    private static Measured measured(double still, double firing, double meter, double cfh) {
        return new Measured(
                Pressure.ofInchesWater(still),
                Pressure.ofInchesWater(firing),
                meter > 0 ? Optional.of(Pressure.ofInchesWater(meter)) : Optional.empty(),
                cfh > 0 ? Optional.of(GasFlow.ofCubicFeetPerHour(cfh)) : Optional.empty());
    }

    private static Reconciliation judged(Sites site, Measured measured) {
        return Reconciliation.of(Sites.TABLES, site.build(), "heater", measured);
    }

    /** Acceptance case 2: 110 ft of 3/4 in at 374 cfh predicts 5.8; meter 9.8 less heater 3.9 is 5.9. */
    @Test
    void pipeThatIsTooSmallExplainsTheDip() {
        var answer = judged(heaterLine("3/4"), measured(10.2, 3.9, 9.8, 374));
        assertEquals(Verdict.EXPLAINS, answer.verdict());
        assertThat(answer.predicted().inchesWater()).isCloseTo(5.84, within(0.01));
        assertThat(answer.measured().inchesWater()).isCloseTo(5.9, within(1e-9));
        assertThat(answer.lookAt()).isEmpty();
        assertThat(answer.words())
                .isEqualTo(
                        "Measured loss 5.9 in w.c. (meter 9.8, appliance 3.9); the pipe by itself loses 5.8 at"
                                + " 374 ft\u00B3/h (4.1 to 7.9 as lengths, flow and gauges are uncertain): pipe size explains it.");
    }

    /** The same readings on 1-1/4 in pipe, which must lose 0.5 only: nothing is sold. */
    @Test
    void wideEnoughPipeDoesNotExplainTheSameDip() {
        var layout = Sites.site()
                .from(Sites.meter("10.2inwc"))
                .pipe("line", "m", "pad", "1-1/4", 110)
                .appliance("heater", "pad", 400_000, "6inwc");
        var answer = judged(layout, measured(10.2, 3.9, 9.8, 374));
        assertEquals(Verdict.DOES_NOT_EXPLAIN, answer.verdict());
        assertThat(answer.predicted().inchesWater()).isCloseTo(0.48, within(0.01));
        assertThat(answer.lookAt().get(0)).startsWith("every valve");
        assertThat(answer.lookAt()).anyMatch(look -> look.contains("flexible connector"));
        assertThat(answer.words()).endsWith("pipe size does not explain it.");
    }

    @Test
    void withoutTheMetersReadingTheWholeDipIsHeldAgainstThePipe() {
        var answer = judged(heaterLine("3/4"), measured(10.2, 3.9, 0, 374));
        assertEquals(Verdict.EXPLAINS, answer.verdict());
        assertThat(answer.measured().inchesWater()).isCloseTo(6.3, within(1e-9));
        assertThat(answer.words()).contains("still 10.2, firing 3.9").contains("read the pressure at the meter");
        var wide = judged(heaterLine("1-1/4"), measured(10.2, 3.9, 0, 374));
        assertEquals(Verdict.DOES_NOT_EXPLAIN, wide.verdict());
        assertThat(wide.lookAt().get(0)).startsWith("pressure at the meter while firing");
        assertThat(wide.lookAt()).hasSize(7);
    }

    /** Acceptance case 9: the loss is at the meter, which is too small; no pipe is sold. */
    @Test
    void aDipThatTheMeterMakesIsNotThePipes() {
        var site = Sites.site().pipe("line", "m", "pad", "2", 60).appliance("heater", "pad", 400_000, "4inwc");
        var answer = judged(site, measured(7.0, 4.2, 4.3, 292));
        assertEquals(Verdict.DOES_NOT_EXPLAIN, answer.verdict());
        assertThat(answer.lookAt().get(0)).startsWith("the meter: its rating");
        assertThat(answer.lookAt()).anyMatch(look -> look.contains("call the supplier"));
        assertThat(answer.words()).contains("before the pipe begins");
    }

    @Test
    void aDipSharedByMeterAndPipeIsExplainedInPart() {
        // The pipe loses its 5.8; the meter 2.0 more: 74 % of the dip is the pipe's.
        var answer = judged(heaterLine("3/4"), measured(10.2, 2.4, 8.2, 374));
        assertEquals(Verdict.EXPLAINS_PART, answer.verdict());
        assertThat(answer.lookAt().get(0)).startsWith("the meter");
    }

    @Test
    void aRestrictionBesidesSmallPipeIsExplainedInPart() {
        // 1 in pipe of 110 ft must lose 1.9; 3.5 was measured.
        var site = Sites.site().pipe("line", "m", "pad", "1", 110).appliance("heater", "pad", 400_000, "4inwc");
        var answer = judged(site, measured(7.0, 3.4, 6.9, 388));
        assertEquals(Verdict.EXPLAINS_PART, answer.verdict());
        assertThat(answer.words()).contains("explains part");
        assertThat(answer.lookAt().get(0)).startsWith("every valve");
    }

    @Test
    void aDipSmallerThanThePipeMustLoseIsAReadingToRepeat() {
        var answer = judged(heaterLine("3/4"), measured(10.2, 9.2, 0, 0));
        assertEquals(Verdict.DOES_NOT_EXPLAIN, answer.verdict());
        assertThat(answer.lookAt().get(0)).startsWith("the gauge");
        assertThat(answer.lookAt().get(1)).startsWith("the flow: clock the meter");
        assertThat(answer.lookAt()).hasSize(3);
        assertThat(judged(heaterLine("3/4"), measured(10.2, 9.2, 0, 374)).lookAt())
                .hasSize(2);
    }

    @Test
    void otherAppliancesThatFireCountInTheSharedPipe() {
        var layout = Sites.site()
                .pipe("trunk", "m", "x", "1", 60)
                .pipe("pool", "x", "pad", "1", 30)
                .pipe("house", "x", "closet", "3/4", 20)
                .appliance("heater", "pad", 250_000, "4inwc")
                .appliance("furnace", "closet", 100_000, "4inwc")
                .build();
        var readings = measured(7, 5.5, 0, 0);
        var alone = Reconciliation.of(Sites.TABLES, layout, "heater", readings);
        var all = Reconciliation.of(Sites.TABLES, layout, "heater", Firing.all(layout), readings, Tolerance.usual());
        assertThat(all.predicted()).isGreaterThan(alone.predicted());
        // Profile and reconciliation are one computation.
        var profile = PressureProfile.of(Sites.TABLES, layout, Firing.all(layout));
        assertThat(all.predicted().inchesWater())
                .isCloseTo(profile.appliance("heater").drop().inchesWater(), within(1e-9));
        // 90 ft at 20 % and 350/250 cfh at 15 %: factor 1.2 x 1.15^(0.381/0.206), plus 0.2 for the gauges
        assertThat(all.highest().inchesWater())
                .isCloseTo(all.predicted().inchesWater() * 1.2 * Math.pow(1.15, 0.381 / 0.206) + 0.2, within(1e-9));
        assertThat(all.lowest().inchesWater())
                .isCloseTo(all.predicted().inchesWater() * 0.8 * Math.pow(0.85, 0.381 / 0.206) - 0.2, within(1e-9));
    }

    @Test
    void aClockedFlowNarrowsTheBand() {
        var clocked = judged(heaterLine("3/4"), measured(10.2, 3.9, 9.8, 388.35));
        var plate = judged(heaterLine("3/4"), measured(10.2, 3.9, 9.8, 0));
        assertThat(clocked.predicted().inchesWater())
                .isCloseTo(plate.predicted().inchesWater(), within(0.01));
        assertThat(clocked.highest()).isLessThan(plate.highest());
        assertThat(clocked.lowest()).isGreaterThan(plate.lowest());
    }

    @Test
    void behindALineRegulatorOnlyThePipeOfItsZoneCounts() {
        var site = Sites.site()
                .from(Sites.meter("2psi"))
                .pipe("street", "m", "x", "3/4", 80)
                .pipe("stub", "x", "pad", "1", 20)
                .regulator("R", "stub", "8inwc", "500cfh")
                .appliance("heater", "pad", 400_000, "4inwc");
        var answer = judged(site, measured(8, 7.3, 0, 0));
        var expected = 0.6094 * 20 * Math.pow(Math.pow(400, 0.381) / (19.17 * 1.049), 1 / 0.206);
        assertThat(answer.predicted().inchesWater()).isCloseTo(expected, within(1e-9));
        var atHeater = Sites.site()
                .from(Sites.meter("2psi"))
                .pipe("street", "m", "pad", "3/4", 80)
                .regulator("R", "heater", "8inwc", "500cfh")
                .appliance("heater", "pad", 400_000, "4inwc");
        assertEquals(0, judged(atHeater, measured(8, 7.3, 0, 0)).predicted().inchesWater());
    }

    @Test
    void anAbsurdlyNarrowPipeStillGivesAnAnswer() {
        var site = Sites.site().pipe("line", "m", "pad", "1/2", 400).appliance("heater", "pad", 4_000_000, "4inwc");
        assertEquals(
                Verdict.DOES_NOT_EXPLAIN, judged(site, measured(7, 6, 0, 0)).verdict());
    }

    @Test
    void contradictoryReadingsAreRefused() {
        assertThatThrownBy(() -> measured(7, 7.5, 0, 0))
                .isInstanceOf(Refusal.OutOfRange.class)
                .hasMessageContaining("up to the still pressure of 7 in w.c.");
        assertThatThrownBy(() -> measured(7, 6, 5.6, 0)).hasMessageContaining("pressure at the meter while firing");
        // Two gauges may differ by 0.3.
        assertEquals(0, measured(7, 6, 5.8, 0).pipeDip().inchesWater());
        assertThatThrownBy(() -> new Tolerance(0.6, 0, 0, Pressure.ofInchesWater(0)))
                .isInstanceOf(Refusal.OutOfRange.class);
    }

    /** Source: arithmetic; rows 1 and 2 also printed on two trade pages about clocking a meter. */
    @Test
    void theMetersDialGivesTheFiringRate() {
        var rows = Map.of(
                "0.5ft3 29s 1000", 62_069.0,
                "0.5ft3 22s 1000", 81_818.2,
                "1ft3 36s 1050", 105_000.0,
                "2ft3 18s 1037", 414_800.0,
                "2ft3 20s 1030", 370_800.0);
        rows.forEach((row, btu) -> {
            var words = row.split(" ");
            var heat = MeterClocking.parse(words[0], words[1])
                    .heat(HeatingValue.ofBtuPerCubicFoot(Double.parseDouble(words[2])));
            assertEquals(btu, heat.btuPerHour(), 0.05, row);
        });
        assertEquals(
                360 * 16.4 / 14.65,
                MeterClocking.parse("2ft3", "20s").flowAt(Pressure.ofPsi(2)).cubicFeetPerHour(),
                1e-9);
    }

    @Test
    void clockingOutsideOfItsRangeIsRefused() {
        for (var row : new String[] {"0.2ft3 20s", "101ft3 20s", "2ft3 2s", "2ft3 31min"}) {
            var words = row.split(" ");
            assertThatThrownBy(() -> MeterClocking.parse(words[0], words[1]))
                    .as(row)
                    .isInstanceOf(Refusal.OutOfRange.class);
        }
        assertEquals(
                3600 * 0.25 / 1800,
                MeterClocking.parse("0.25ft3", "1800s").flow().cubicFeetPerHour());
        assertEquals(
                3600 * 100 / 3.0, MeterClocking.parse("100ft3", "3s").flow().cubicFeetPerHour());
    }

    @Test
    void waterFlowAndRiseGiveTheHeat() {
        // 500.4 Btu/h for each gpm and degree: 8.34 lb/gal x 60 min
        var heat = WaterHeat.parse("65gpm", "10f");
        assertEquals(500.4 * 650, heat.output().btuPerHour(), 1e-6);
        assertEquals(500.4 * 650 / 0.82, heat.input(0.82).btuPerHour(), 1e-6);
        assertEquals(65, WaterHeat.flowFor(heat.output(), heat.rise()).gallonsPerMinute(), 1e-9);
        assertThatThrownBy(() -> WaterHeat.parse("65gpm", "0f")).isInstanceOf(Refusal.OutOfRange.class);
        assertThatThrownBy(() -> WaterHeat.parse("65gpm", "151f")).isInstanceOf(Refusal.OutOfRange.class);
        assertThatThrownBy(() -> heat.input(0.29)).isInstanceOf(Refusal.OutOfRange.class);
        assertThatThrownBy(() -> heat.input(1.01)).isInstanceOf(Refusal.OutOfRange.class);
    }
}

package fairflame.repair;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import fairflame.Refusal;
import fairflame.money.Percent;
import fairflame.quantity.Dimension;
import fairflame.quantity.HeatRate;
import fairflame.quantity.Length;
import fairflame.quantity.Measure;
import fairflame.quantity.Unit;
import java.math.BigDecimal;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Heat-up, running cost and underfiring: figures worked by hand from 8.34 lb to the gallon; inputs invented. */
class WarmUpCostTest {
    private static final FuelPrice GAS = FuelPrice.perTherm(usd("1.50"));

    @ParameterizedTest(name = "{0} by {1} F take {2} Btu, {3} h at the plate and {4} h at 70 %")
    @CsvSource({"15000gal, 10, 1251000, 3.81, 5.45", "600gal, 30, 150120, 0.46, 0.65"})
    void energyAndHoursFollowTheGallons(String water, String rise, double btu, double hours, double slow) {
        var warmUp = warmUp(water, rise, "0");

        assertThat(warmUp.output().btuPerHour()).isEqualTo(328_000, within(0.001));
        assertThat(warmUp.energy().in(Unit.BTU)).isEqualTo(btu, within(0.01));
        assertThat(hours(warmUp)).isEqualTo(hours, within(0.005));
        var measured = new Underfiring(warmUp, Percent.parse("70"), HeatRate.ofBtuPerHour(0), GAS).asMeasured();
        assertThat(measured.output().btuPerHour()).isEqualTo(229_600, within(0.001));
        assertThat(hours(measured)).isEqualTo(slow, within(0.005));
    }

    @Test
    void aSpaIsWarmInTwentySevenAndAHalfMinutes() {
        var time = warmUp("600gal", "30", "0").time().orElseThrow();

        assertThat(time.in(Unit.MINUTE)).isEqualTo(27.5, within(0.05));
        assertThat(warmUp("600gal", "30", "0").sentences().get(0)).contains("27 minutes");
        assertThat(warmUp("15000gal", "10", "0").sentences().get(0)).contains("15,000 gal", "3.8 hours");
    }

    @Test
    void waterThatLosesMoreThanItGetsIsNeverWarm() {
        var never = warmUp("15000gal", "10", "328000");

        assertThat(never.time()).isEmpty();
        assertThat(never.sentences().get(0)).contains("never reached");
    }

    @Test
    void litresAndCelsiusGiveTheSameAsGallonsAndFahrenheit() {
        var metric = HeatUp.withoutLosses(
                Measure.parse(Dimension.WATER_VOLUME, "56781.17676 l"),
                Measure.parse(Dimension.TEMPERATURE_RISE, "5.555555556 c"),
                HeatRate.ofBtuPerHour(400_000),
                Percent.parse("82"));

        assertThat(metric.energy().in(Unit.BTU)).isEqualTo(1_251_000, within(0.1));
    }

    @Test
    void aPoolWarmUpTakesFifteenTherms() {
        var pool = RunningCost.of(warmUp("15000gal", "10", "0"), GAS);
        var spa = RunningCost.of(warmUp("600gal", "30", "0"), GAS);

        assertThat(pool.units()).isEqualTo("15.26");
        assertThat(pool.cost()).isEqualTo(usd("22.88"));
        assertThat(spa.units()).isEqualTo("1.83");
        assertThat(spa.cost()).isEqualTo(usd("2.75"));
        assertThat(pool.sentences().get(0)).contains("15.26 therm", "22.88 USD");
    }

    @Test
    void propaneIsCountedByTheGallonOfNinetyOneThousandFiveHundredBtu() {
        var heat = Measure.parse(Dimension.ENERGY, "75030 btu");
        var cost = new RunningCost(heat, Percent.parse("82"), FuelPrice.perPropaneGallon(usd("3.00")));

        assertThat(cost.units()).isEqualTo("1.00");
        assertThat(cost.cost()).isEqualTo(usd("3.00"));
    }

    @Test
    void underfiringCostsTimeAndHardlyAnyGas() {
        var poor =
                new Underfiring(warmUp("15000gal", "10", "0"), Percent.parse("70"), HeatRate.ofBtuPerHour(40_000), GAS);

        // 1.6346 h x 40,000 = 65,383 Btu (65,600 with the hours rounded first); / 0.82 = 0.80 therm; 1.20.
        assertThat(poor.longer().orElseThrow().in(Unit.HOUR)).isEqualTo(1.6346, within(0.0001));
        assertThat(poor.extraLoss().orElseThrow().in(Unit.BTU)).isEqualTo(65_383, within(1.0));
        assertThat(new RunningCost(poor.extraLoss().orElseThrow(), Percent.parse("82"), GAS).units())
                .isEqualTo("0.80");
        assertThat(poor.extraCost()).contains(usd("1.20"));
        assertThat(poor.sentences().get(0)).contains("1.6 hours longer");
        assertThat(poor.sentences().get(1)).contains("rarely pays");
    }

    @Test
    void aHeaterThatNeverGetsThereHasNoExtraCost() {
        var poor = new Underfiring(
                warmUp("15000gal", "10", "250000"), Percent.parse("70"), HeatRate.ofBtuPerHour(40_000), GAS);

        assertThat(poor.longer()).isEmpty();
        assertThat(poor.extraCost()).isEmpty();
        assertThat(poor.sentences()).hasSize(2).first().asString().contains("never gets there");
    }

    @Test
    void waitingAddsUpWarmUpsAndMonths() {
        var waiting = new WaitingCost(usd("1.20"), 8, 5);

        assertThat(waiting.total()).isEqualTo(usd("48.00"));
        assertThat(waiting.sentences().get(0)).contains("48.00 USD");
        assertThat(waiting.sentences().get(1)).contains("8 warm-ups a month");
    }

    @Test
    void aSurfaceAsksForTwelveBtuAnHourForEachFootAndDegree() {
        var size =
                new HeaterSize(Length.ofFeet(20), Length.ofFeet(20), Measure.parse(Dimension.TEMPERATURE_RISE, "20 f"));

        assertThat(size.output().btuPerHour()).isEqualTo(96_000, within(0.001));
        assertThat(size.input().btuPerHour() * 0.80).isEqualTo(size.output().btuPerHour(), within(0.001));
        assertThat(size.sentences().get(0)).contains("96,000 Btu/h");
    }

    @Test
    void aCoverSavesMostOfTheHeatInThePublishedFigures() {
        // 2608 to 317, 3312 to 483, 4236 to 703.
        assertThat(CoverSaving.percents())
                .containsExactly(BigDecimal.valueOf(88), BigDecimal.valueOf(85), BigDecimal.valueOf(83));
        assertThat(CoverSaving.sentence()).contains("83 to 88 percent");
    }

    @Test
    void impossibleInputIsRefused() {
        assertThatThrownBy(() -> warmUp("0gal", "10", "0")).isInstanceOf(Refusal.OutOfRange.class);
        assertThatThrownBy(() -> warmUp("15000gal", "101", "0")).isInstanceOf(Refusal.OutOfRange.class);
        var water = Measure.parse(Dimension.WATER_VOLUME, "600gal");
        var rise = Measure.parse(Dimension.TEMPERATURE_RISE, "30f");
        var input = HeatRate.ofBtuPerHour(400_000);
        assertThatThrownBy(() -> HeatUp.withoutLosses(rise, rise, input, Percent.parse("82")))
                .isInstanceOf(Refusal.NotAllowed.class)
                .hasMessageContaining("unit of volume");
        assertThatThrownBy(() -> HeatUp.withoutLosses(water, rise, input, Percent.parse("101")))
                .isInstanceOf(Refusal.OutOfRange.class);
        assertThatThrownBy(
                        () -> new Underfiring(warmUp("600gal", "30", "0"), Percent.ZERO, HeatRate.ofBtuPerHour(0), GAS))
                .isInstanceOf(Refusal.OutOfRange.class);
        assertThatThrownBy(() -> new RunningCost(water, Percent.parse("82"), GAS))
                .isInstanceOf(Refusal.NotAllowed.class);
        assertThatThrownBy(() -> new RunningCost(Measure.of(1, Unit.BTU), Percent.ZERO, GAS))
                .isInstanceOf(Refusal.OutOfRange.class);
        assertThatThrownBy(() -> new FuelPrice("stere", BigDecimal.ZERO, usd("1.00")))
                .isInstanceOf(Refusal.OutOfRange.class);
        assertThatThrownBy(() -> FuelPrice.perTherm(usd("-1.00"))).isInstanceOf(Refusal.OutOfRange.class);
        assertThatThrownBy(() -> new WaitingCost(usd("1.00"), 101, 1)).isInstanceOf(Refusal.OutOfRange.class);
        assertThatThrownBy(() -> new WaitingCost(usd("1.00"), 1, 121)).isInstanceOf(Refusal.OutOfRange.class);
        assertThatThrownBy(() -> new HeaterSize(
                        Length.ofFeet(20), Length.ofFeet(20), Measure.parse(Dimension.TEMPERATURE_RISE, "-1 f")))
                .isInstanceOf(Refusal.OutOfRange.class);
    }

    private static double hours(HeatUp warmUp) {
        return warmUp.time().orElseThrow().in(Unit.HOUR);
    }

    private static HeatUp warmUp(String water, String rise, String losses) {
        return new HeatUp(
                Measure.parse(Dimension.WATER_VOLUME, water),
                Measure.parse(Dimension.TEMPERATURE_RISE, rise + " f"),
                HeatRate.ofBtuPerHour(400_000),
                Percent.parse("82"),
                HeatRate.ofBtuPerHour(Double.parseDouble(losses)));
    }

    private static Money usd(String amount) {
        return Money.of(CurrencyUnit.USD, new BigDecimal(amount));
    }
}

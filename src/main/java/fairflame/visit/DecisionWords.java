package fairflame.visit;

import fairflame.diagnosis.Reading;
import fairflame.diagnosis.Value;
import fairflame.gas.Fuel;
import fairflame.money.Percent;
import fairflame.quantity.GasFlow;
import fairflame.quantity.HeatRate;
import fairflame.quantity.HeatingValue;
import fairflame.quantity.Measure;
import fairflame.quote.Choice;
import fairflame.repair.FuelPrice;
import fairflame.repair.HeatUp;
import fairflame.repair.RepairOrReplace;
import fairflame.repair.RunningCost;
import fairflame.repair.Underfiring;
import fairflame.repair.WaitingCost;
import fairflame.repair.YearlyCost;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The arithmetic of a decision, from what the customer told and what was measured: heat-up time and its cost, what
 * underfiring and waiting cost, repair or replace. Every result says what was assumed; nothing is shown for which an input
 * is missing.
 */
final class DecisionWords {
    // Within 5 % of the plate is the usual acceptance: from memory, not checked.
    private static final BigDecimal AS_PLATE = BigDecimal.valueOf(95);

    private final Examination examined;

    DecisionWords(Examination examined) {
        this.examined = examined;
    }

    /** Sentences for one choice. */
    List<String> of(Choice choice) {
        var words = new ArrayList<String>();
        var terms = examined.visit().decision();
        terms.warmUp().ifPresent(warm -> words.addAll(warmUp(warm)));
        terms.newHeater().ifPresent(heater -> words.addAll(replace(heater, choice)));
        return words;
    }

    private List<String> warmUp(DecisionTerms.WarmUp warm) {
        var plate = examined.file().plate();
        if (plate.input().isEmpty() || plate.efficiency().isEmpty()) {
            return List.of();
        }
        var asPlate = new HeatUp(
                warm.water(),
                warm.rise(),
                plate.input().get(),
                new Percent(plate.efficiency().get()),
                warm.losses());
        var fuel = plate.fuel() == Fuel.NATURAL
                ? FuelPrice.perTherm(warm.fuelPrice())
                : FuelPrice.perPropaneGallon(warm.fuelPrice());
        var words = new ArrayList<>(asPlate.sentences());
        words.addAll(RunningCost.of(asPlate, fuel).sentences());
        share(plate.input().get())
                .filter(share -> share.value().compareTo(AS_PLATE) < 0)
                .ifPresent(
                        share -> words.addAll(underfired(new Underfiring(asPlate, share, warm.losses(), fuel), warm)));
        return words;
    }

    private static List<String> underfired(Underfiring slow, DecisionTerms.WarmUp warm) {
        var words = new ArrayList<>(slow.sentences());
        if (warm.aMonth() > 0 && warm.months() > 0) {
            slow.extraCost()
                    .ifPresent(extra -> words.addAll(new WaitingCost(extra, warm.aMonth(), warm.months()).sentences()));
        }
        return words;
    }

    private List<String> replace(DecisionTerms.NewHeater heater, Choice choice) {
        return examined.file()
                .plate()
                .efficiency()
                .map(before -> new RepairOrReplace(
                                new YearlyCost(choice.totals().total(), heater.repairYears(), heater.interest()),
                                new YearlyCost(heater.price(), heater.years(), heater.interest()),
                                new RepairOrReplace.GasUse(
                                        heater.yearlyGas(), new Percent(before), heater.efficiency()),
                                heater.furtherRepairs())
                        .sentences())
                .orElse(List.of());
    }

    /** Measured input as a share of the plate's, whole percent, where it was clocked. */
    private Optional<Percent> share(HeatRate plate) {
        return clocked()
                .map(input -> new Percent(BigDecimal.valueOf(100 * input.btuPerHour() / plate.btuPerHour())
                        .setScale(0, RoundingMode.HALF_UP)
                        .min(BigDecimal.valueOf(100))));
    }

    private Optional<HeatRate> clocked() {
        return measured("clocked-input")
                .map(HeatRate::of)
                .or(() -> measured("clocked-flow")
                        .map(GasFlow::of)
                        .flatMap(flow -> measured("heating-value").map(value -> flow.heat(HeatingValue.of(value)))));
    }

    private Optional<Measure> measured(String check) {
        return examined.file().readings().stream()
                .filter(reading -> reading.check().equals(check))
                .map(Reading::value)
                .filter(Value.Measured.class::isInstance)
                .map(value -> ((Value.Measured) value).measure())
                .findFirst();
    }
}

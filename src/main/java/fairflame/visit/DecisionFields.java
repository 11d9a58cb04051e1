package fairflame.visit;

import fairflame.Refusal;
import fairflame.quantity.Dimension;
import fairflame.quantity.HeatRate;
import fairflame.quantity.Measure;
import java.util.Optional;
import java.util.function.Function;
import org.joda.money.Money;

/** Reads what the customer told about the pool and its costs from a visit file. */
record DecisionFields(PriceFields prices) {
    /** The terms in a visit's field {@code decision}; none when there is no such field. */
    DecisionTerms read(Optional<Fields> decision) {
        return decision.map(fields -> fields.only("warmUp", "newHeater"))
                .map(fields -> new DecisionTerms(
                        fields.optionalObject("warmUp").map(this::warmUp),
                        fields.optionalObject("newHeater").map(this::newHeater)))
                .orElse(DecisionTerms.NONE);
    }

    private DecisionTerms.WarmUp warmUp(Fields fields) {
        fields.only("water", "rise", "losses", "fuelPrice", "aMonth", "months");
        return new DecisionTerms.WarmUp(
                read(fields, "water", text -> Measure.parse(Dimension.WATER_VOLUME, text)),
                read(fields, "rise", text -> Measure.parse(Dimension.TEMPERATURE_RISE, text)),
                fields.has("losses") ? read(fields, "losses", HeatRate::parse) : HeatRate.ofBtuPerHour(0),
                money(fields, "fuelPrice"),
                fields.whole("aMonth", 0, 100).orElse(0),
                fields.whole("months", 0, 120).orElse(0));
    }

    private DecisionTerms.NewHeater newHeater(Fields fields) {
        fields.only("price", "years", "efficiency", "repairYears", "interest", "yearlyGas", "furtherRepairs");
        return new DecisionTerms.NewHeater(
                money(fields, "price"),
                whole(fields, "years"),
                percent(fields, "efficiency"),
                whole(fields, "repairYears"),
                percent(fields, "interest"),
                money(fields, "yearlyGas"),
                money(fields, "furtherRepairs"));
    }

    private Money money(Fields fields, String name) {
        return prices.money(fields, name)
                .orElseThrow(() -> Refusal.missing("field " + fields.path(name), "an amount with two decimals"));
    }

    private fairflame.money.Percent percent(Fields fields, String name) {
        return prices.percent(fields, name, 100)
                .orElseThrow(() -> Refusal.missing("field " + fields.path(name), "a percentage"));
    }

    private static int whole(Fields fields, String name) {
        return fields.whole(name, 1, 100)
                .orElseThrow(() -> Refusal.missing("field " + fields.path(name), "1 to 100 years"));
    }

    private static <T> T read(Fields fields, String name, Function<String, T> parse) {
        try {
            return parse.apply(fields.text(name));
        } catch (Refusal refusal) {
            throw refusal.at("field " + fields.path(name));
        }
    }
}

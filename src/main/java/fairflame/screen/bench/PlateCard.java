package fairflame.screen.bench;

import fairflame.gas.Fuel;
import fairflame.quantity.Unit;
import fairflame.screen.kit.Chips;
import fairflame.screen.kit.Columns;
import fairflame.screen.kit.Slip;
import fairflame.screen.kit.Texts;
import fairflame.screen.look.Words;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.Map;
import javafx.scene.layout.VBox;

/** What the data plate of the heater says. Nothing on it is ever assumed. */
final class PlateCard extends VBox {
    private static final double LEAST = 150;
    private static final Map<String, Unit> NUMBERS = numbers();

    PlateCard(BenchModel model, Words words) {
        super(12);
        var fuels = new Chips();
        for (var fuel : Fuel.values()) {
            fuels.one(
                    "fuel-" + fuel.word(),
                    words.say("fuel." + fuel.word()),
                    fuel.word().equals(model.draft().get("heater.fuel")),
                    () -> model.history().change(draft -> draft.with("heater.fuel", fuel.word())));
        }
        var fields = new ArrayList<Slip>();
        NUMBERS.forEach((name, unit) -> {
            var field = "heater." + name;
            var slip = new Slip(
                    field, words.say("plate." + name, unit.symbol()), model.typed(field), model.allowed(field));
            fields.add(slip);
        });
        fields.add(new Slip(
                "heater.ageYears",
                words.say("plate.ageYears"),
                model.typed("heater.ageYears"),
                model.allowed("heater.ageYears")));
        getChildren()
                .addAll(
                        Texts.words(words.say("step.plate"), "large", "strong"),
                        Texts.words(words.say("plate.note"), "small", "slate"),
                        new Slip(
                                "heater.description",
                                words.say("plate.description"),
                                model.typed("heater.description"),
                                model.allowed("heater.description")),
                        fuels,
                        new Columns(LEAST, 12, fields));
    }

    /** The draft of a plate starts with the unit that plates are stamped in. */
    static Draft withUnits(Draft draft) {
        var units = new LinkedHashMap<String, Unit>();
        NUMBERS.forEach((field, unit) -> units.put("heater." + field, unit));
        return draft.withUnits(units);
    }

    private static Map<String, Unit> numbers() {
        var units = new LinkedHashMap<String, Unit>();
        units.put("input", Unit.BTU_PER_HOUR);
        units.put("inletMinimum", Unit.INCH_WATER);
        units.put("inletMaximum", Unit.INCH_WATER);
        units.put("manifold", Unit.INCH_WATER);
        units.put("flameMinimum", Unit.MICROAMPERE);
        units.put("riseMaximum", Unit.FAHRENHEIT_RISE);
        units.put("efficiency", Unit.PERCENT);
        return units;
    }
}

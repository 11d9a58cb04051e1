package fairflame.catalog;

import fairflame.Refusal;
import fairflame.money.Percent;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/** Reads {@code rates.yaml} and {@code ladder.yaml}. */
final class RatesFile {
    static final String RATES = "rates.yaml";
    static final String LADDER = "ladder.yaml";

    private final CurrencyUnit currency;

    private RatesFile(CurrencyUnit currency) {
        this.currency = currency;
    }

    static Optional<Rates> rates(Map<String, String> files, CurrencyUnit currency, Problems problems) {
        return problems.attempt(() -> new RatesFile(currency).rates(YamlEntry.parse(FileText.in(files, RATES))));
    }

    static Optional<PriceLadder> ladder(Map<String, String> files, CurrencyUnit currency, Problems problems) {
        return problems.attempt(() -> new RatesFile(currency).ladder(YamlEntry.parse(FileText.in(files, LADDER))));
    }

    private Rates rates(YamlEntry file) {
        file.only(
                "currency",
                "hourly",
                "minimumHours",
                "trip",
                "diagnosticFee",
                "creditDays",
                "roundUpTo",
                "ownFactors",
                "ownHours",
                "source");
        Currencies.check(file, currency);
        return new Rates(
                hourly(file.field("hourly")),
                file.read("minimumHours", text -> Fields.decimal(text, "0", "24")),
                money(file.field("trip")),
                file.read("diagnosticFee", this::money),
                file.read("creditDays", text -> Fields.whole(text, 0, 3650)),
                file.read("roundUpTo", text -> Fields.decimal(text, "0.01", "1")),
                decimals(file, "ownFactors", "1", "3"),
                decimals(file, "ownHours", "0", "24"),
                file.text("source"));
    }

    private Map<Trade, Money> hourly(YamlEntry field) {
        var hourly = new EnumMap<Trade, Money>(Trade.class);
        field.fields().forEach((letter, rate) -> {
            try {
                hourly.put(Trade.parse(letter), rate.as(this::money));
            } catch (Refusal.Unknown unknown) {
                throw unknown.at(field.where());
            }
        });
        if (!hourly.containsKey(Trade.TECHNICIAN)) {
            throw Refusal.missing("hourly rate T", "at least the technician's rate")
                    .at(field.where());
        }
        return hourly;
    }

    private Map<String, Money> money(YamlEntry field) {
        var amounts = new LinkedHashMap<String, Money>();
        field.fields().forEach((name, value) -> amounts.put(name, value.as(this::money)));
        if (amounts.isEmpty()) {
            throw Refusal.missing("entry", "at least one amount").at(field.where());
        }
        return amounts;
    }

    private static Map<String, BigDecimal> decimals(YamlEntry file, String name, String lowest, String highest) {
        var numbers = new LinkedHashMap<String, BigDecimal>();
        file.find(name)
                .ifPresent(field -> field.fields()
                        .forEach((key, value) ->
                                numbers.put(key, value.as(text -> Fields.decimal(text, lowest, highest)))));
        return numbers;
    }

    private Money money(String text) {
        return Fields.money(text, currency);
    }

    private PriceLadder ladder(YamlEntry file) {
        file.only("currency", "steps", "source");
        Currencies.check(file, currency);
        var steps = new ArrayList<PriceLadder.Step>();
        for (var entry : file.items("steps")) {
            entry.only("from", "markup");
            var step = new PriceLadder.Step(entry.read("from", this::money), entry.read("markup", RatesFile::markup));
            if (!steps.isEmpty()
                    && !step.from().isGreaterThan(steps.get(steps.size() - 1).from())) {
                throw Refusal.notAllowed("from", step.from().getAmount(), "more than the step before")
                        .at(entry.where());
            }
            steps.add(step);
        }
        if (steps.isEmpty() || !steps.get(0).from().isZero()) {
            throw Refusal.missing("first step of the ladder", "a step from 0.00")
                    .at(file.where() + ", steps");
        }
        return new PriceLadder(List.copyOf(steps), file.text("source"));
    }

    private static Percent markup(String text) {
        var percent = Percent.parse(text);
        if (percent.value().signum() < 0) {
            throw Refusal.outOfRange("markup", text + " %", "0 to 10000 %");
        }
        return percent;
    }
}

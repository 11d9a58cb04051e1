package fairflame.screen;

import fairflame.catalog.DepositRule;
import fairflame.catalog.GasTestRule;
import fairflame.catalog.PermitNeed;
import fairflame.catalog.TaxRule;
import fairflame.money.Percent;
import fairflame.money.Rounding;
import fairflame.quote.Basis;
import fairflame.quote.Choice;
import fairflame.quote.Duties;
import fairflame.quote.FindingSheet;
import fairflame.quote.Gauge;
import fairflame.quote.Line;
import fairflame.quote.LineKind;
import fairflame.quote.Note;
import fairflame.quote.Party;
import fairflame.quote.PlaceRules;
import fairflame.quote.Quote;
import fairflame.quote.TaxAmount;
import fairflame.quote.Totals;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/** A small invented quote for pictures of single controls. */
public final class Samples {
    private static final List<Basis> WHY =
            List.of(new Basis("standard time", "Own time 0.60 h, access 0.75 h", "invented for the demo"));

    private Samples() {}

    public static Gauge gas() {
        return gauge("Gas pressure at the heater", "in w.c.", "10.1", "8.9", "4.0", "14.0", Gauge.Verdict.GOOD);
    }

    public static Gauge volts() {
        return gauge("Control voltage at the gas valve", "V", "26.3", "15.7", "20.4", "28.8", Gauge.Verdict.OUTSIDE);
    }

    public static Gauge gauge(
            String title, String unit, String rest, String low, String from, String to, Gauge.Verdict verdict) {
        return new Gauge(
                title,
                unit,
                Optional.of(new BigDecimal(rest)),
                new BigDecimal(low),
                Optional.of(new BigDecimal(from)),
                Optional.of(new BigDecimal(to)),
                verdict,
                "It should stay between " + from + " and " + to + " " + unit + ".");
    }

    public static Quote quote() {
        return new Quote(
                "Q-2026-0001",
                1,
                "V-2026-0001",
                true,
                LocalDate.of(2026, 6, 3),
                LocalDate.of(2026, 7, 3),
                CurrencyUnit.USD,
                new Party(
                        "Copperline Pool Heat",
                        List.of("12 Mill Lane", "Demo City"),
                        "555-0100",
                        "desk@copperline.example",
                        ""),
                "GF-10234",
                new Party(
                        "Odalys Brennecke",
                        List.of("7 Heron Court", "Demo City"),
                        "555-0142",
                        "odalys@example.com",
                        "owner"),
                new Party(
                        "Odalys Brennecke",
                        List.of("7 Heron Court", "Demo City"),
                        "555-0142",
                        "odalys@example.com",
                        "owner"),
                "gas pool heater, 400,000 Btu/h",
                "Demo City",
                rules(),
                new FindingSheet(
                        "Water has got into two safety switches. They steal the voltage that holds the gas valve open.",
                        List.of("Both water-side temperature switches leak to ground."),
                        List.of("Valve voltage fell to 15.7 V before the flame went out."),
                        List.of("Gas supply: pressure stays good while firing."),
                        List.of(),
                        List.of(gas(), volts())),
                List.of(
                        choice("both", "Replace both switches", true, "", "195.75", "96.00", "2.00"),
                        choice(
                                "one",
                                "Replace one switch",
                                false,
                                "The other switch may fail the same way.",
                                "152.25",
                                "48.00",
                                "1.00")),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                "en",
                List.of());
    }

    private static PlaceRules rules() {
        return new PlaceRules(
                "demo-city",
                new TaxRule(List.of(), Set.of("part"), true, false, Rounding.NEAREST, "invented for the demo"),
                new DepositRule(Percent.parse("10"), Optional.empty(), Optional.empty(), "invented for the demo"),
                "gas fitter",
                "",
                new GasTestRule(BigDecimal.valueOf(3), 15, BigDecimal.valueOf(5), true, "invented for the demo"),
                3,
                true,
                Percent.ZERO);
    }

    private static Choice choice(
            String id, String title, boolean suggested, String leaves, String labour, String part, String tape) {
        var usd = CurrencyUnit.USD;
        var base = new BigDecimal(part).add(new BigDecimal(tape));
        var tax = Money.of(usd, base.multiply(new BigDecimal("0.0725")), java.math.RoundingMode.HALF_UP);
        var lines = List.of(
                line("L1", LineKind.LABOUR, "Replace water-side temperature switches", labour),
                line("L2", LineKind.PART, "Water-side temperature switch", part),
                line("L3", LineKind.CONSUMABLE, "Thread tape for water", tape),
                line("L4", LineKind.TRIP, "Trip", "89.00"));
        var net = lines.stream().map(Line::net).reduce(Money.zero(usd), Money::plus);
        return new Choice(
                id,
                title,
                "We take both switches out, seal the threads and look for where the water came from.",
                suggested,
                leaves,
                List.of(),
                new Duties(false, PermitNeed.NO, false),
                new BigDecimal("1.35"),
                lines,
                new Totals(
                        net,
                        Money.zero(usd),
                        List.of(new TaxAmount("Sales tax", Percent.parse("7.25"), Money.of(usd, base), tax)),
                        tax,
                        net.plus(tax)),
                Money.zero(usd),
                List.of("B", "D"),
                List.of(
                        new Note(
                                "N-PERMIT",
                                "A permit and inspection may be required. The fee is shown apart.",
                                true,
                                "sample"),
                        new Note("N-WATER", "Pool water chemistry affects these parts.", false, "sample")),
                List.of());
    }

    private static Line line(String id, LineKind kind, String words, String net) {
        var amount = Money.parse("USD " + net);
        return new Line(
                id,
                kind,
                "",
                words,
                BigDecimal.ONE,
                "each",
                amount,
                amount,
                Money.zero(CurrencyUnit.USD),
                true,
                false,
                WHY);
    }
}

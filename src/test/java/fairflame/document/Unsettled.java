package fairflame.document;

import fairflame.quote.Choice;
import fairflame.quote.Duties;
import fairflame.quote.FindingSheet;
import fairflame.quote.Gauge;
import fairflame.quote.LineKind;
import fairflame.quote.Party;
import fairflame.quote.Quote;
import fairflame.quote.StopWorkSheet;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import org.joda.money.CurrencyUnit;

/** Visits without a repair price. Invented for the tests. */
final class Unsettled {
    private Unsettled() {}

    /** Readings that contradict each other: a fee and the next checks. */
    static Quote quote() {
        var lines = List.of(Papers.line(
                "L1", LineKind.DIAGNOSIS, "Diagnostic visit with the next checks", "1", "visit", "129.00", false));
        var choice = new Choice(
                "A",
                "Finish the diagnosis",
                "We come back with a fast gauge and test until the cause is settled.",
                true,
                "The heater itself: nothing is repaired by this visit.",
                List.of(),
                Duties.NONE,
                BigDecimal.ZERO,
                lines,
                Papers.totals(lines, "State and county tax", "7.25"),
                Papers.usd("0"),
                List.of(),
                List.of(),
                List.of());
        return new Quote(
                "Q-2026-0003",
                1,
                "V-2026-0003",
                false,
                LocalDate.of(2026, 5, 18),
                LocalDate.of(2026, 6, 17),
                CurrencyUnit.USD,
                Papers.SELLER,
                Papers.LICENCE,
                new Party(
                        "Perpetua Lindgren",
                        List.of("3 Weir Close", "Larkwell, Corran County 04417"),
                        "555-0129",
                        "perpetua@example.com",
                        "tenant"),
                new Party("Perpetua Lindgren", List.of("3 Weir Close", "Larkwell, Corran County 04417"), "", "", ""),
                "Gas pool heater, natural gas, 333,000 Btu/h, plate minimum 5 in w.c.",
                "Larkwell, Corran County",
                Papers.rules(),
                new FindingSheet(
                        "Two different faults would explain what we measured. We do not sell a repair on a guess.",
                        List.of("Not settled: gas volume or damp high limit."),
                        List.of("The gas pressure dips by 3.2 and the voltage falls to 17.9 V in the same second."),
                        List.of("Flame sensor: its signal is good."),
                        List.of(
                                "Each safety switch warm, wires lifted (8 minutes): a damp switch often shows only warm.",
                                "Gas pressure at the meter while the heater fires (10 minutes): tells a small pipe from a weak supply."),
                        List.of(
                                Papers.pressure(
                                        "10.0", "6.8", Gauge.Verdict.EDGE, "The pressure dips more than it should."),
                                Papers.volts(
                                        "26.0",
                                        "17.9",
                                        Gauge.Verdict.OUTSIDE,
                                        "The voltage falls below what the valve needs."),
                                new Gauge(
                                        "Flame signal",
                                        "\u00B5A",
                                        Optional.empty(),
                                        new BigDecimal("2.6"),
                                        Optional.of(new BigDecimal("1.0")),
                                        Optional.empty(),
                                        Gauge.Verdict.GOOD,
                                        "The flame is seen well."))),
                List.of(choice),
                Papers.ALWAYS,
                Papers.text().diagnosisTerms(),
                List.of(),
                List.of("catalog 2026-04"),
                "en",
                List.of());
    }

    /** Smell of gas: no price anywhere. */
    static StopWorkSheet gasSmell() {
        return new StopWorkSheet(
                "V-2026-0004",
                OffsetDateTime.parse("2026-05-19T15:42:00-05:00"),
                Papers.SELLER,
                Papers.LICENCE,
                Papers.CUSTOMER,
                Papers.CUSTOMER,
                "Gas pool heater, natural gas, 400,000 Btu/h",
                "Gas is leaking near the heater. Leave it off and stay away.",
                List.of(new StopWorkSheet.Danger(
                        "G1",
                        "Smell of gas",
                        "A gas detector sounded at the union; gas could be smelled at the pad.",
                        List.of(
                                "Keep everyone away from the heater and out of the pool house.",
                                "Do not touch switches or phones near it. No flame.",
                                "From a safe distance call the emergency number and the gas utility.",
                                "Wait until they tell you that it is safe."))),
                List.of(
                        "The gas cock at the heater was shut.",
                        "A tag was hung on it: do not use.",
                        "The owner was told in person."),
                List.of("Only a licensed person may release this heater."),
                "I have received this notice. My signature is a receipt. It orders no work.");
    }
}

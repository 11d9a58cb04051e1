package fairflame.document;

import fairflame.catalog.PermitNeed;
import fairflame.catalog.Trade;
import fairflame.invoice.Completion;
import fairflame.invoice.Invoice;
import fairflame.invoice.PressureTest;
import fairflame.invoice.TestRecord;
import fairflame.quote.Choice;
import fairflame.quote.Duties;
import fairflame.quote.FindingSheet;
import fairflame.quote.Gauge;
import fairflame.quote.LineKind;
import fairflame.quote.Note;
import fairflame.quote.Party;
import fairflame.quote.Quote;
import fairflame.quote.Work;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.joda.money.CurrencyUnit;

/** A gas line too small for its heater: quote and invoice with all notes of gas work. Invented for the tests. */
final class GasLine {
    private GasLine() {}

    static final List<Note> NOTES = List.of(
            new Note(
                    "N-GASFIT",
                    "Licensed gas fitter: work on gas piping is done by a licensed gas fitter, Tobias Renn, licence GF-20417.",
                    true,
                    "task R18"),
            new Note(
                    "N-PERMIT",
                    "Permit: a permit and an inspection are required for this work. The fee is its own line. The work is not finished until the inspector has accepted it.",
                    true,
                    "permit: yes"),
            new Note(
                    "N-TEST",
                    "Pressure test: new piping is tested with air before gas is turned on, and every joint we touch is checked for leaks.",
                    true,
                    "gas joint"),
            new Note(
                    "N-UTIL",
                    "Gas utility: the utility must confirm that its meter and regulator carry the load. Its work and cost are not in this price.",
                    true,
                    "load"));

    /** A gas line too small: one choice, all notes, many lines. */
    static Quote quote() {
        var lines = List.of(
                Papers.line("L1", LineKind.PART, "Steel pipe, schedule 40, black, 1-1/4 in", "84", "ft", "5.35", true),
                Papers.line("L2", LineKind.PART, "Elbow 90\u00B0, malleable iron, 1-1/4 in", "9", "each", "7.80", true),
                Papers.line("L3", LineKind.PART, "Tee, malleable iron, 1-1/4 in", "2", "each", "11.25", true),
                Papers.line("L4", LineKind.PART, "Union, ground joint, 1-1/4 in", "2", "each", "18.40", true),
                Papers.line("L5", LineKind.PART, "Gas shutoff valve, full port, 1-1/4 in", "1", "each", "46.90", true),
                Papers.line(
                        "L6",
                        LineKind.PART,
                        "Sediment trap, tee and capped nipple, 1-1/4 in",
                        "1",
                        "set",
                        "24.60",
                        true),
                Papers.line("L7", LineKind.CONSUMABLE, "Pipe joint compound listed for gas", "3", "tube", "6.75", true),
                Papers.line("L8", LineKind.CONSUMABLE, "Straps and anchors", "14", "each", "1.15", true),
                Papers.line(
                        "L9",
                        LineKind.LABOUR,
                        "Licensed gas fitter: replace the line, test, restart",
                        "13.70",
                        "h",
                        "165.00",
                        false),
                Papers.line("L10", LineKind.TRIP, "Trip to Mill Road", "1", "trip", "89.00", false),
                Papers.line(
                        "L11",
                        LineKind.PERMIT_FEE,
                        "Permit and inspection, passed through",
                        "1",
                        "permit",
                        "120.00",
                        false),
                Papers.line(
                        "L12",
                        LineKind.DIAGNOSIS,
                        "Credit of the diagnostic fee paid on May 12",
                        "-1",
                        "visit",
                        "129.00",
                        false));
        var choice = new Choice(
                "A",
                "New gas line in 1-1/4 inch",
                "The 84 ft gas line to the heater is replaced by one that carries the full load.",
                true,
                "Meter and regulator of the utility, and all other gas lines, stay as they are.",
                List.of(
                        work(
                                "Remove the old 3/4 in line; run 84 ft of 1-1/4 in steel pipe with a new shutoff and sediment trap."),
                        work("Pressure-test the new line before gas is turned on."),
                        work("Measure pressure, heat input and exhaust with all appliances running.")),
                new Duties(true, PermitNeed.YES, true),
                new BigDecimal("13.70"),
                lines,
                Papers.totals(lines, "State and county tax", "7.25"),
                Papers.usd("300.00"),
                List.of(
                        "Gas joints: no leak",
                        "Pressure test: 3 psi for 15 minutes, witnessed",
                        "Gas pressure at rest and firing",
                        "Heat input by the gas meter",
                        "Exhaust and carbon monoxide"),
                NOTES,
                List.of(
                        "In 1 inch pipe the computed pressure at the heater is 7.8 in w.c. with everything running; in 1-1/4 inch it is 9.2. One inch would meet the plate but leave a dip above 2 in w.c."));
        var notes = new ArrayList<>(NOTES);
        notes.addAll(Papers.ALWAYS);
        notes.add(new Note(
                "N-CO",
                "Exhaust will be tested. Keep the vent clear and have carbon monoxide alarms where people sleep.",
                false,
                "fired test"));
        return new Quote(
                "Q-2026-0002",
                1,
                "V-2026-0002",
                true,
                LocalDate.of(2026, 5, 15),
                LocalDate.of(2026, 6, 14),
                CurrencyUnit.USD,
                Papers.SELLER,
                Papers.LICENCE,
                new Party(
                        "Ansel Okafor-Lindqvist",
                        List.of("212 Harbour View Apartments", "Larkwell, Corran County 04417"),
                        "555-0163",
                        "ansel@example.com",
                        "owner"),
                new Party("Pool house", List.of("40 Mill Road", "Larkwell, Corran County 04418"), "", "", ""),
                "Gas pool heater, natural gas, 400,000 Btu/h, plate minimum 6 in w.c.",
                "Larkwell, Corran County",
                Papers.rules(),
                new FindingSheet(
                        "The gas pressure falls too far when the burner lights: the pipe to the heater is too small for it.",
                        List.of(
                                "Insufficient gas volume through the installed pipe: 3/4 in schedule 40, 84 ft, 110 ft equivalent; predicted drop 5.8 in w.c. at 374 cfh, measured 5.9."),
                        List.of(
                                "At rest 10.2, while firing 3.9: a dip of 6.3.",
                                "At the meter the pressure holds at 9.8 while firing.",
                                "The pipe computation predicts 5.8 for this pipe; 5.9 was measured."),
                        List.of(
                                "The shutoff: the same pressure before and after it.",
                                "Voltage and switches: good and dry."),
                        List.of(),
                        List.of(Papers.pressure(
                                "10.2",
                                "3.9",
                                Gauge.Verdict.OUTSIDE,
                                "The pressure falls below what the heater's plate asks for."))),
                List.of(choice),
                notes,
                Papers.text().terms(),
                List.of("The length of pipe under the deck was taken as 12 ft; it could not be seen."),
                List.of("catalog 2026-04"),
                "en",
                List.of());
    }

    /** The gas line, done under permit, with the pressure test on record; nothing paid yet. */
    static Invoice invoice() {
        var quote = quote();
        var taken = quote.choices().get(0);
        return new Invoice(
                "I-2026-0002",
                Invoice.Kind.FULL,
                "",
                LocalDate.of(2026, 6, 2),
                LocalDate.of(2026, 6, 1),
                LocalDate.of(2026, 6, 16),
                CurrencyUnit.USD,
                quote.number(),
                1,
                "7c0de5a1".repeat(8),
                List.of("Q-2026-0002-C1"),
                Papers.SELLER,
                Papers.LICENCE,
                quote.customer(),
                quote.site(),
                taken.title(),
                taken.lines(),
                taken.totals(),
                Papers.rules().tax(),
                true,
                new Completion(
                        "LP-2026-3391, accepted June 1, 2026",
                        "Tobias Renn",
                        "GF-20417",
                        Map.of(
                                "A",
                                new TestRecord(true, "no bubbles, no detector rise"),
                                "C",
                                new TestRecord(true, "10.2 at rest, 9.3 firing, manifold 3.5 in w.c."),
                                "G",
                                new TestRecord(true, "38 ppm carbon monoxide, air-free"),
                                "K",
                                new TestRecord(true, "391 cfh, 98 % of the plate")),
                        Optional.of(new PressureTest(
                                new BigDecimal("3"), 15, new BigDecimal("15"), "air", "Inspector R. Abara", true)),
                        true),
                List.of(),
                List.of());
    }

    private static Work work(String plain) {
        return new Work("R18", "Replace gas line", plain, "pipe-too-small", "settled", Set.of(Trade.GAS_FITTER));
    }
}

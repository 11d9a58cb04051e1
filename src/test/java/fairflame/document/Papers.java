package fairflame.document;

import fairflame.agreement.Declined;
import fairflame.agreement.Seal;
import fairflame.agreement.Signature;
import fairflame.agreement.SignedRevision;
import fairflame.catalog.DepositRule;
import fairflame.catalog.GasTestRule;
import fairflame.catalog.PermitNeed;
import fairflame.catalog.TaxRule;
import fairflame.catalog.Trade;
import fairflame.invoice.Completion;
import fairflame.invoice.Invoice;
import fairflame.invoice.Payment;
import fairflame.invoice.PressureTest;
import fairflame.invoice.TestRecord;
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
import fairflame.quote.StopWorkSheet;
import fairflame.quote.TaxAmount;
import fairflame.quote.Totals;
import fairflame.quote.Work;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/** Quotes written by hand: people, towns and prices are invented for the tests. */
final class Papers {
    static final Party SELLER = new Party(
            "Sandpiper Pool Heat",
            List.of("18 Quay Street", "Larkwell, Corran County 04417"),
            "555-0142",
            "desk@sandpiperpoolheat.example",
            "");
    static final String LICENCE =
            "Corran County appliance service licence AS-20731. Gas work by our licensed gas fitters only.";
    static final Party CUSTOMER = new Party(
            "Imogen Varga",
            List.of("7 Heron Lane", "Larkwell, Corran County 04417"),
            "555-0117",
            "imogen@example.com",
            "owner");

    private Papers() {}

    static PaperText text() {
        return text("en");
    }

    static PaperText text(String language) {
        return PaperText.parse(templates(), language);
    }

    /** The templates that travel with the program. */
    static Map<String, String> templates() {
        var files = new TreeMap<String, String>();
        var folder = Path.of("templates");
        try (var paths = Files.walk(folder)) {
            for (var path : paths.filter(Files::isRegularFile).toList()) {
                files.put(folder.relativize(path).toString().replace('\\', '/'), Files.readString(path));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return files;
    }

    static Money usd(String amount) {
        return Money.of(CurrencyUnit.USD, new BigDecimal(amount));
    }

    static Line line(
            String id, LineKind kind, String words, String quantity, String unit, String price, boolean taxable) {
        var net = Rounding.NEAREST.times(usd(price), new BigDecimal(quantity));
        return new Line(
                id,
                kind,
                "",
                words,
                new BigDecimal(quantity),
                unit,
                usd(price),
                net,
                usd("0"),
                taxable,
                false,
                List.of(new Basis("catalog row", words + " at " + price, "invented for the demo")));
    }

    /** Totals with one combined rate on the taxable lines, rounded once. */
    static Totals totals(List<Line> lines, String name, String percent) {
        var net = sum(lines, line -> true);
        var base = sum(lines, Line::taxable);
        var rate = Percent.parse(percent);
        var tax = Rounding.NEAREST.times(base, rate.factor());
        return new Totals(net, usd("0"), List.of(new TaxAmount(name, rate, base, tax)), tax, net.plus(tax));
    }

    private static Money sum(List<Line> lines, java.util.function.Predicate<Line> which) {
        return lines.stream().filter(which).map(Line::afterDiscount).reduce(usd("0"), Money::plus);
    }

    static PlaceRules rules() {
        return new PlaceRules(
                "larkwell",
                new TaxRule(
                        List.of(
                                new TaxRule.Layer("State", Percent.parse("6")),
                                new TaxRule.Layer("County", Percent.parse("1.25"))),
                        Set.of("part", "consumable"),
                        true,
                        false,
                        Rounding.NEAREST,
                        "invented for the demo"),
                new DepositRule(Percent.parse("10"), Optional.of(Percent.parse("10")), Optional.empty(), "invented"),
                "licensed gas fitter",
                "GF-\\d{5}",
                GAS_TEST,
                3,
                true,
                Percent.parse("0"));
    }

    static final GasTestRule GAS_TEST = gasTest();

    static Gauge pressure(String resting, String firing, Gauge.Verdict verdict, String words) {
        return new Gauge(
                "Gas pressure at the heater",
                "in w.c.",
                Optional.of(new BigDecimal(resting)),
                new BigDecimal(firing),
                Optional.of(new BigDecimal("6.0")),
                Optional.of(new BigDecimal("10.5")),
                verdict,
                words);
    }

    static Gauge volts(String idle, String firing, Gauge.Verdict verdict, String words) {
        return new Gauge(
                "Voltage at the gas valve",
                "V",
                Optional.of(new BigDecimal(idle)),
                new BigDecimal(firing),
                Optional.of(new BigDecimal("20.4")),
                Optional.of(new BigDecimal("28.8")),
                verdict,
                words);
    }

    static final List<Note> ALWAYS = List.of(
            new Note(
                    "N-LOCAL",
                    "Local code, the permit office and the licensed professional decide. Where they ask for more than this paper, they are followed.",
                    false,
                    "always"),
            new Note(
                    "N-HIDDEN",
                    "Damage that shows only later is first shown to you and priced. Nothing goes on without your yes.",
                    false,
                    "always"));

    /** Two wet switches: the pair (suggested) or one. Figures: 1.35 h at 145.00, tax 7.25 % on parts. */
    static Quote wetSwitches() {
        var pairLines = List.of(
                line(
                        "L1",
                        LineKind.PART,
                        "Temperature switch for the water header, 135 \u00B0F",
                        "2",
                        "each",
                        "48.00",
                        true),
                line("L2", LineKind.CONSUMABLE, "PTFE thread tape for water, lead-free", "2", "wrap", "1.00", true),
                line("L3", LineKind.LABOUR, "Replace both switches, test the heater", "1.35", "h", "145.00", false),
                line("L4", LineKind.TRIP, "Trip to Heron Lane", "1", "trip", "89.00", false));
        var pair = new Choice(
                "A",
                "Replace both wet switches",
                "Both temperature switches in the water header are replaced in one visit.",
                true,
                "The drip that wetted them is sealed. Older parts of the heater stay as they are.",
                List.of(
                        work(
                                "Take the panel off once, drain the header, fit two new switches sealed with tape made for water."),
                        work("Run the heater through three starts and test both safety switches.")),
                Duties.NONE,
                new BigDecimal("1.35"),
                pairLines,
                totals(pairLines, "State and county tax", "7.25"),
                usd("38.98"),
                List.of(
                        "Water joints: no leak for 10 minutes",
                        "Each safety switch opens when it must",
                        "Voltage at the gas valve over three starts",
                        "Water temperature rise"),
                List.of(new Note(
                        "N-NOBYPASS",
                        "No safety device is bypassed. A heater that does not pass its tests stays off.",
                        false,
                        "safety part")),
                List.of(
                        "One switch now and the other later would cost $293.80 + $293.80. Both now cost $389.86. Both now pays if the second fails with a chance above 33 % while you own the heater. The two are of one age and wet from one drip."));
        var oneLines = List.of(
                line(
                        "L1",
                        LineKind.PART,
                        "Temperature switch for the water header, 135 \u00B0F",
                        "1",
                        "each",
                        "48.00",
                        true),
                line("L2", LineKind.CONSUMABLE, "PTFE thread tape for water, lead-free", "1", "wrap", "1.00", true),
                line("L3", LineKind.LABOUR, "Replace one switch, test the heater", "1.05", "h", "145.00", false),
                line("L4", LineKind.TRIP, "Trip to Heron Lane", "1", "trip", "89.00", false));
        var one = new Choice(
                "B",
                "Replace one switch only",
                "The worse of the two switches is replaced.",
                false,
                "The second switch is wet as well. It may fail the same way, and the heater may stop again.",
                List.of(
                        work("Take the panel off, drain the header, fit one new switch."),
                        work("Run the heater through three starts.")),
                Duties.NONE,
                new BigDecimal("1.05"),
                oneLines,
                totals(oneLines, "State and county tax", "7.25"),
                usd("29.38"),
                List.of(
                        "Water joints: no leak for 10 minutes",
                        "Each safety switch opens when it must",
                        "Voltage at the gas valve over three starts"),
                List.of(
                        new Note(
                                "N-NOBYPASS",
                                "No safety device is bypassed. A heater that does not pass its tests stays off.",
                                false,
                                "safety part"),
                        new Note(
                                "N-SINGLE",
                                "You chose one of two matching parts; the other may fail the same way.",
                                false,
                                "pair declined")),
                List.of());
        var notes = new ArrayList<>(ALWAYS);
        notes.add(new Note(
                "N-WATER",
                "Pool water chemistry wears these parts. Damage from it is not covered.",
                false,
                "header opened"));
        notes.add(new Note("N-HOT", "Parts and water may be hot. Please keep children and pets away.", false, "drain"));
        notes.add(new Note(
                "N-CANCEL",
                "You may cancel this order without a reason until midnight of the third business day after signing. See the attached notice.",
                false,
                "profile"));
        return new Quote(
                "Q-2026-0001",
                1,
                "V-2026-0001",
                true,
                LocalDate.of(2026, 5, 14),
                LocalDate.of(2026, 6, 13),
                CurrencyUnit.USD,
                SELLER,
                LICENCE,
                CUSTOMER,
                CUSTOMER,
                "Gas pool heater, natural gas, 400,000 Btu/h, plate minimum 4 in w.c.",
                "Larkwell, Corran County",
                rules(),
                new FindingSheet(
                        "Two wet temperature switches leak current to the metal, so the gas valve loses its voltage and the flame goes out.",
                        List.of(
                                "Both water-side temperature switches (high limit 22 k\u03A9, outlet 31 k\u03A9 to body, leads lifted) leak to ground; valve voltage falls to 15.7 V before flame-out."),
                        List.of(
                                "With power off and wires lifted, both switches leak to the metal: 22 and 31 kilohm. A dry one shows far above 1,000.",
                                "The voltage at the gas valve falls to 15.7 V just before the flame goes out.",
                                "With both switches out of the circuit for one short test the heater stayed lit."),
                        List.of(
                                "Gas supply: the pressure dips by only 1.2.",
                                "Flame sensor: its signal is good while the heater is lit."),
                        List.of(),
                        List.of(
                                pressure(
                                        "10.1",
                                        "8.9",
                                        Gauge.Verdict.GOOD,
                                        "The gas pressure holds when the burner lights."),
                                volts(
                                        "26.3",
                                        "15.7",
                                        Gauge.Verdict.OUTSIDE,
                                        "The voltage falls too far to hold the gas valve open."))),
                List.of(pair, one),
                notes,
                text().terms(),
                List.of(),
                List.of("catalog 2026-04", "templates en"));
    }

    private static Work work(String plain) {
        return new Work("R03", "Replace switches", plain, "wet-switches", "settled", Set.of(Trade.TECHNICIAN));
    }

    static final List<Note> GAS_NOTES = List.of(
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
    static Quote gasLine() {
        var lines = List.of(
                line("L1", LineKind.PART, "Steel pipe, schedule 40, black, 1-1/4 in", "84", "ft", "5.35", true),
                line("L2", LineKind.PART, "Elbow 90\u00B0, malleable iron, 1-1/4 in", "9", "each", "7.80", true),
                line("L3", LineKind.PART, "Tee, malleable iron, 1-1/4 in", "2", "each", "11.25", true),
                line("L4", LineKind.PART, "Union, ground joint, 1-1/4 in", "2", "each", "18.40", true),
                line("L5", LineKind.PART, "Gas shutoff valve, full port, 1-1/4 in", "1", "each", "46.90", true),
                line("L6", LineKind.PART, "Sediment trap, tee and capped nipple, 1-1/4 in", "1", "set", "24.60", true),
                line("L7", LineKind.CONSUMABLE, "Pipe joint compound listed for gas", "3", "tube", "6.75", true),
                line("L8", LineKind.CONSUMABLE, "Straps and anchors", "14", "each", "1.15", true),
                line(
                        "L9",
                        LineKind.LABOUR,
                        "Licensed gas fitter: replace the line, test, restart",
                        "13.70",
                        "h",
                        "165.00",
                        false),
                line("L10", LineKind.TRIP, "Trip to Mill Road", "1", "trip", "89.00", false),
                line(
                        "L11",
                        LineKind.PERMIT_FEE,
                        "Permit and inspection, passed through",
                        "1",
                        "permit",
                        "120.00",
                        false),
                line(
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
                totals(lines, "State and county tax", "7.25"),
                usd("300.00"),
                List.of(
                        "Gas joints: no leak",
                        "Pressure test: 3 psi for 15 minutes, witnessed",
                        "Gas pressure at rest and firing",
                        "Heat input by the gas meter",
                        "Exhaust and carbon monoxide"),
                GAS_NOTES,
                List.of(
                        "In 1 inch pipe the computed pressure at the heater is 7.8 in w.c. with everything running; in 1-1/4 inch it is 9.2. One inch would meet the plate but leave a dip above 2 in w.c."));
        var notes = new ArrayList<>(GAS_NOTES);
        notes.addAll(ALWAYS);
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
                SELLER,
                LICENCE,
                new Party(
                        "Ansel Okafor-Lindqvist",
                        List.of("212 Harbour View Apartments", "Larkwell, Corran County 04417"),
                        "555-0163",
                        "ansel@example.com",
                        "owner"),
                new Party("Pool house", List.of("40 Mill Road", "Larkwell, Corran County 04418"), "", "", ""),
                "Gas pool heater, natural gas, 400,000 Btu/h, plate minimum 6 in w.c.",
                "Larkwell, Corran County",
                rules(),
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
                        List.of(pressure(
                                "10.2",
                                "3.9",
                                Gauge.Verdict.OUTSIDE,
                                "The pressure falls below what the heater's plate asks for."))),
                List.of(choice),
                notes,
                text().terms(),
                List.of("The length of pipe under the deck was taken as 12 ft; it could not be seen."),
                List.of("catalog 2026-04"));
    }

    /** Readings that contradict each other: a fee and the next checks. */
    static Quote diagnosisOnly() {
        var lines = List.of(
                line("L1", LineKind.DIAGNOSIS, "Diagnostic visit with the next checks", "1", "visit", "129.00", false));
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
                totals(lines, "State and county tax", "7.25"),
                usd("0"),
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
                SELLER,
                LICENCE,
                new Party(
                        "Perpetua Lindgren",
                        List.of("3 Weir Close", "Larkwell, Corran County 04417"),
                        "555-0129",
                        "perpetua@example.com",
                        "tenant"),
                new Party("Perpetua Lindgren", List.of("3 Weir Close", "Larkwell, Corran County 04417"), "", "", ""),
                "Gas pool heater, natural gas, 333,000 Btu/h, plate minimum 5 in w.c.",
                "Larkwell, Corran County",
                rules(),
                new FindingSheet(
                        "Two different faults would explain what we measured. We do not sell a repair on a guess.",
                        List.of("Not settled: gas volume or damp high limit."),
                        List.of("The gas pressure dips by 3.2 and the voltage falls to 17.9 V in the same second."),
                        List.of("Flame sensor: its signal is good."),
                        List.of(
                                "Each safety switch warm, wires lifted (8 minutes): a damp switch often shows only warm.",
                                "Gas pressure at the meter while the heater fires (10 minutes): tells a small pipe from a weak supply."),
                        List.of(
                                pressure("10.0", "6.8", Gauge.Verdict.EDGE, "The pressure dips more than it should."),
                                volts(
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
                ALWAYS,
                text().diagnosisTerms(),
                List.of(),
                List.of("catalog 2026-04"));
    }

    /** Smell of gas: no price anywhere. */
    static StopWorkSheet gasSmell() {
        return new StopWorkSheet(
                "V-2026-0004",
                OffsetDateTime.parse("2026-05-19T15:42:00-05:00"),
                SELLER,
                LICENCE,
                CUSTOMER,
                CUSTOMER,
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

    static SignedRevision signed() {
        return new SignedRevision(
                wetSwitches(),
                "A",
                List.of(new Declined(
                        "B",
                        "Replace one switch only",
                        usd("293.80"),
                        "I was offered this choice at this price and did not take it.")),
                new Signature(
                        "Imogen Varga",
                        "owner",
                        OffsetDateTime.parse("2026-05-14T11:26:00-05:00"),
                        "I authorise this work for $389.86. I have read what is done, what it leaves as it is, and the notes. I agree to sign on a screen and know that I may have paper instead.",
                        STROKES,
                        "Dario Quill, technician"),
                new Seal("3f9a07c2".repeat(8), "0".repeat(64), "b41c6de90a72".repeat(5) + "b41c", Map.of()));
    }

    static final List<List<Integer>> STROKES = List.of(
            List.of(80, 60, 75, 120, 70, 180, 66, 240),
            List.of(60, 70, 96, 64),
            List.of(
                    110, 240, 118, 180, 130, 160, 142, 178, 140, 236, 150, 186, 166, 160, 180, 180, 178, 236, 190, 184,
                    206, 164, 216, 182, 214, 226, 228, 240),
            List.of(
                    250, 200, 262, 166, 290, 170, 286, 214, 262, 238, 250, 214, 258, 190, 300, 180, 330, 230, 352, 168,
                    378, 232, 392, 196, 420, 176, 410, 232, 452, 214),
            List.of(480, 60, 520, 236, 574, 52),
            List.of(
                    590, 214, 604, 172, 640, 176, 636, 236, 662, 216, 668, 170, 690, 168, 700, 210, 716, 170, 720, 290,
                    690, 330, 668, 300, 742, 232, 790, 210));

    private static GasTestRule gasTest() {
        return new GasTestRule(new BigDecimal("3"), 15, new BigDecimal("5"), true, "invented for the demo");
    }

    static final Payment DEPOSIT =
            new Payment("P-2026-0001", LocalDate.of(2026, 5, 14), usd("38.98"), "card", "C-4471", true);

    /** The signed pair, done and tested; the deposit is paid. */
    static Invoice wetInvoice() {
        var taken = signed().taken();
        return new Invoice(
                "I-2026-0001",
                Invoice.Kind.FULL,
                "",
                LocalDate.of(2026, 5, 20),
                LocalDate.of(2026, 5, 19),
                LocalDate.of(2026, 6, 3),
                CurrencyUnit.USD,
                "Q-2026-0001",
                1,
                signed().seal().chain(),
                List.of(),
                SELLER,
                LICENCE,
                CUSTOMER,
                CUSTOMER,
                taken.title(),
                taken.lines(),
                taken.totals(),
                rules().tax(),
                true,
                new Completion(
                        "not required: like-for-like switch, rules of Larkwell",
                        "",
                        "",
                        Map.of(
                                "B",
                                new TestRecord(true, "dry for 10 minutes at 18 psi"),
                                "D",
                                new TestRecord(true, "both open at 134 \u00B0F"),
                                "E",
                                new TestRecord(true, "25.1 V lowest over three starts"),
                                "H",
                                new TestRecord(true, "18 \u00B0F at 62 gpm")),
                        Optional.empty(),
                        true),
                List.of("Pool water chemistry wears these parts. Damage from it is not covered."),
                List.of(DEPOSIT));
    }

    /** The gas line, done under permit, with the pressure test on record; nothing paid yet. */
    static Invoice gasInvoice() {
        var quote = gasLine();
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
                SELLER,
                LICENCE,
                quote.customer(),
                quote.site(),
                taken.title(),
                taken.lines(),
                taken.totals(),
                rules().tax(),
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
}

package fairflame.document;

import fairflame.agreement.Declined;
import fairflame.agreement.Seal;
import fairflame.agreement.Signature;
import fairflame.agreement.SignedRevision;
import fairflame.catalog.Trade;
import fairflame.invoice.Completion;
import fairflame.invoice.Invoice;
import fairflame.invoice.Payment;
import fairflame.invoice.TestRecord;
import fairflame.quote.Choice;
import fairflame.quote.Duties;
import fairflame.quote.FindingSheet;
import fairflame.quote.Gauge;
import fairflame.quote.Line;
import fairflame.quote.LineKind;
import fairflame.quote.Note;
import fairflame.quote.Quote;
import fairflame.quote.Work;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.joda.money.CurrencyUnit;

/** Two wet switches: quote, signature, invoice. Invented for the tests. */
final class WetSwitches {
    private WetSwitches() {}

    /** Two wet switches: the pair (suggested) or one. Figures: 1.35 h at 145.00, tax 7.25 % on parts. */
    static Quote quote() {
        var pairLines = List.of(
                Papers.line(
                        "L1",
                        LineKind.PART,
                        "Temperature switch for the water header, 135 \u00B0F",
                        "2",
                        "each",
                        "48.00",
                        true),
                Papers.line(
                        "L2", LineKind.CONSUMABLE, "PTFE thread tape for water, lead-free", "2", "wrap", "1.00", true),
                Papers.line(
                        "L3", LineKind.LABOUR, "Replace both switches, test the heater", "1.35", "h", "145.00", false),
                Papers.line("L4", LineKind.TRIP, "Trip to Heron Lane", "1", "trip", "89.00", false));
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
                Papers.totals(pairLines, "State and county tax", "7.25"),
                Papers.usd("38.98"),
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
                Papers.line(
                        "L1",
                        LineKind.PART,
                        "Temperature switch for the water header, 135 \u00B0F",
                        "1",
                        "each",
                        "48.00",
                        true),
                Papers.line(
                        "L2", LineKind.CONSUMABLE, "PTFE thread tape for water, lead-free", "1", "wrap", "1.00", true),
                Papers.line("L3", LineKind.LABOUR, "Replace one switch, test the heater", "1.05", "h", "145.00", false),
                Papers.line("L4", LineKind.TRIP, "Trip to Heron Lane", "1", "trip", "89.00", false));
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
                Papers.totals(oneLines, "State and county tax", "7.25"),
                Papers.usd("29.38"),
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
        var notes = new ArrayList<>(Papers.ALWAYS);
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
                Papers.SELLER,
                Papers.LICENCE,
                Papers.CUSTOMER,
                Papers.CUSTOMER,
                "Gas pool heater, natural gas, 400,000 Btu/h, plate minimum 4 in w.c.",
                "Larkwell, Corran County",
                Papers.rules(),
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
                                Papers.pressure(
                                        "10.1",
                                        "8.9",
                                        Gauge.Verdict.GOOD,
                                        "The gas pressure holds when the burner lights."),
                                Papers.volts(
                                        "26.3",
                                        "15.7",
                                        Gauge.Verdict.OUTSIDE,
                                        "The voltage falls too far to hold the gas valve open."))),
                List.of(pair, one),
                notes,
                Papers.text().terms(),
                List.of(),
                List.of("catalog 2026-04", "templates en"),
                "en",
                List.of());
    }

    private static Work work(String plain) {
        return new Work("R03", "Replace switches", plain, "wet-switches", "settled", Set.of(Trade.TECHNICIAN));
    }

    static SignedRevision signed() {
        return new SignedRevision(
                quote(),
                "A",
                List.of(new Declined(
                        "B",
                        "Replace one switch only",
                        Papers.usd("293.80"),
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

    static final Payment DEPOSIT =
            new Payment("P-2026-0001", LocalDate.of(2026, 5, 14), Papers.usd("38.98"), "card", "C-4471", true);

    /** The signed pair, done and tested; the deposit is paid. */
    static Invoice invoice() {
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
                Papers.SELLER,
                Papers.LICENCE,
                Papers.CUSTOMER,
                Papers.CUSTOMER,
                taken.title(),
                taken.lines(),
                taken.totals(),
                Papers.rules().tax(),
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

    /** The whole invoice taken back. */
    static Invoice credit() {
        var of = invoice();
        var lines = of.lines().stream()
                .map(line -> new Line(
                        line.id(),
                        line.kind(),
                        line.item(),
                        line.description(),
                        line.quantity().negate(),
                        line.unit(),
                        line.unitPrice(),
                        line.net().negated(),
                        line.discount().negated(),
                        line.taxable(),
                        line.further(),
                        line.basis()))
                .toList();
        return new Invoice(
                "C-2026-0001",
                Invoice.Kind.CREDIT,
                of.number(),
                of.issued(),
                of.supplied(),
                of.due(),
                of.currency(),
                of.quote(),
                of.revision(),
                of.seal(),
                of.changeOrders(),
                of.seller(),
                of.sellerLicence(),
                of.customer(),
                of.site(),
                of.title(),
                lines,
                Papers.totals(lines, "State and county tax", "7.25"),
                of.taxRule(),
                of.complete(),
                of.completion(),
                List.of(),
                List.of());
    }

    /** The quote with other ids of its two choices. */
    static Quote with(String first, String second) {
        var choices = quote().choices();
        return choosing(List.of(
                choice(choices.get(0), first, choices.get(0).arithmetic()),
                choice(choices.get(1), second, choices.get(1).arithmetic())));
    }

    /** The quote with one arithmetic behind both choices. */
    static Quote sharing(String arithmetic) {
        return choosing(quote().choices().stream()
                .map(choice -> choice(choice, choice.id(), List.of(arithmetic)))
                .toList());
    }

    private static Choice choice(Choice c, String id, List<String> arithmetic) {
        return new Choice(
                id,
                c.title(),
                c.plain(),
                c.suggested(),
                c.leavesUnfixed(),
                c.work(),
                c.duties(),
                c.hours(),
                c.lines(),
                c.totals(),
                c.deposit(),
                c.tests(),
                c.notes(),
                arithmetic);
    }

    private static Quote choosing(List<Choice> choices) {
        var q = quote();
        return new Quote(
                q.number(),
                q.revision(),
                q.visit(),
                q.repair(),
                q.made(),
                q.validUntil(),
                q.currency(),
                q.seller(),
                q.sellerLicence(),
                q.customer(),
                q.site(),
                q.heater(),
                q.place(),
                q.rules(),
                q.finding(),
                choices,
                q.notes(),
                q.terms(),
                q.assumed(),
                q.madeFrom(),
                "en",
                List.of());
    }
}

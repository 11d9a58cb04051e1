package fairflame.store;

import fairflame.agreement.ChangeOrder;
import fairflame.agreement.Declined;
import fairflame.agreement.Seal;
import fairflame.agreement.Sealing;
import fairflame.agreement.Signature;
import fairflame.agreement.SignedRevision;
import fairflame.catalog.DepositRule;
import fairflame.catalog.GasTestRule;
import fairflame.catalog.PermitNeed;
import fairflame.catalog.TaxRule;
import fairflame.invoice.Completion;
import fairflame.invoice.Invoice;
import fairflame.invoice.Payment;
import fairflame.invoice.TestRecord;
import fairflame.money.Percent;
import fairflame.money.Rounding;
import fairflame.quote.Basis;
import fairflame.quote.Choice;
import fairflame.quote.Duties;
import fairflame.quote.FindingSheet;
import fairflame.quote.Line;
import fairflame.quote.LineKind;
import fairflame.quote.Note;
import fairflame.quote.Party;
import fairflame.quote.PlaceRules;
import fairflame.quote.Quote;
import fairflame.quote.TaxAmount;
import fairflame.quote.Totals;
import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/** A small job to store, invented for the tests: two switches changed, signed, billed and paid. */
final class Samples {
    static final By OFFICE = new By("Rosa Quill", Instant.parse("2026-03-02T15:04:05Z"));
    static final LocalDate DAY = LocalDate.of(2026, 3, 2);
    static final StoredVisit VISIT =
            new StoredVisit("V-2026-0001", "found", "Odile Marsh", DAY, "{\"complaint\":\"locks out\"}");
    static final Party SHOP =
            new Party("Ember & Ebb", List.of("3 Quay Row", "Tarn Hollow"), "555-0101", "desk@ember.example", "");
    static final Party CUSTOMER =
            new Party("Odile Marsh", List.of("9 Heron Lane", "Tarn Hollow"), "555-0102", "odile@example.com", "owner");
    private static final TaxRule TAX = new TaxRule(
            List.of(new TaxRule.Layer("state", new Percent(new BigDecimal("7.25")))),
            Set.of("part"),
            true,
            false,
            Rounding.NEAREST,
            "invented for the demo");
    private static final GasTestRule GAS_TEST =
            new GasTestRule(BigDecimal.TEN, 15, new BigDecimal("5"), false, "invented for the demo");

    private Samples() {}

    static Money usd(String amount) {
        return Money.of(CurrencyUnit.USD, new BigDecimal(amount));
    }

    static Quote quote(String number, int revision) {
        return quote(number, revision, "locks out after seconds");
    }

    static Quote quote(String number, int revision, String headline) {
        return new Quote(
                number,
                revision,
                VISIT.id(),
                true,
                DAY,
                DAY.plusDays(30),
                CurrencyUnit.USD,
                SHOP,
                "C-77",
                CUSTOMER,
                CUSTOMER,
                "gas pool heater, 250,000 BTU/h",
                "Tarn Hollow",
                new PlaceRules(
                        "tarn-hollow",
                        TAX,
                        new DepositRule(Percent.ZERO, Optional.empty(), Optional.empty(), "invented for the demo"),
                        "gas fitter",
                        "",
                        GAS_TEST,
                        3,
                        false,
                        Percent.ZERO),
                new FindingSheet(headline, List.of("wet switches"), List.of(), List.of(), List.of(), List.of()),
                List.of(
                        choice("one", false, "48.35", "3.51", "51.86"),
                        choice("both", true, "96.70", "7.01", "103.71")),
                List.of(new Note("N-SWITCH", "Both switches share one age.", false, "pairing")),
                List.of("Due on receipt."),
                List.of(),
                List.of("catalog 1"),
                "en",
                List.of());
    }

    private static Choice choice(String id, boolean suggested, String net, String tax, String total) {
        return new Choice(
                id,
                id + " of the pair",
                "Change " + id,
                suggested,
                "",
                List.of(),
                new Duties(false, PermitNeed.NO, false),
                BigDecimal.ONE,
                List.of(line(net)),
                totals(net, tax, total),
                usd("0.00"),
                List.of("A"),
                List.of(),
                List.of());
    }

    private static Line line(String net) {
        return new Line(
                "L1",
                LineKind.PART,
                "SW-1",
                "water-side switch",
                BigDecimal.ONE,
                "each",
                usd(net),
                usd(net),
                usd("0.00"),
                true,
                false,
                List.of(new Basis("catalog row", "SW-1", "parts.csv")));
    }

    private static Totals totals(String net, String tax, String total) {
        var rate = new Percent(new BigDecimal("7.25"));
        return new Totals(
                usd(net), usd("0.00"), List.of(new TaxAmount("state", rate, usd(net), usd(tax))), usd(tax), usd(total));
    }

    static SignedRevision signed(Quote quote, String previous) {
        return Sealing.seal(
                quote,
                "both",
                List.of(new Declined("one", "one of the pair", usd("51.86"), "I know what this leaves unfixed.")),
                signature(),
                previous);
    }

    static Signature signature() {
        return new Signature(
                "Odile Marsh",
                "owner",
                OffsetDateTime.parse("2026-03-02T10:04:05-05:00"),
                "I authorise this work for 103.71 USD",
                List.of(List.of(10, 20, 30, 40)),
                "Bram Sedge");
    }

    static ChangeOrder changeOrder(String quote, int order, String agreement, String previous) {
        var number = quote + "-C" + order;
        var open = new ChangeOrder(
                number,
                quote,
                1,
                agreement,
                "a cracked union was found",
                List.of(line("48.35")),
                List.of(),
                fairflame.quote.Duties.NONE,
                List.of(),
                totals("96.70", "7.01", "103.71"),
                totals("145.05", "10.52", "155.57"),
                signature(),
                new Seal("", "", "", Map.of()));
        return Sealing.seal(open, previous);
    }

    static Completion completion(String permit) {
        return new Completion(permit, "", "", Map.of("A", new TestRecord(true, "no bubbles")), Optional.empty(), true);
    }

    static Invoice invoice(String number, SignedRevision signed) {
        return invoice(number, signed, Invoice.Kind.FULL, "");
    }

    static Invoice invoice(String number, SignedRevision signed, Invoice.Kind kind, String corrects) {
        return new Invoice(
                number,
                kind,
                corrects,
                DAY.plusDays(1),
                DAY,
                DAY.plusDays(15),
                CurrencyUnit.USD,
                signed.quote().number(),
                signed.quote().revision(),
                signed.seal().chain(),
                List.of(),
                SHOP,
                "C-77",
                CUSTOMER,
                CUSTOMER,
                "both of the pair",
                List.of(line("96.70")),
                totals("96.70", "7.01", "103.71"),
                TAX,
                true,
                completion(""),
                List.of(),
                List.of());
    }

    static Receipt receipt(String id, String quote, Optional<String> invoice, String amount) {
        return new Receipt(quote, invoice, new Payment(id, DAY, usd(amount), "card", "ref " + id, invoice.isEmpty()));
    }
}

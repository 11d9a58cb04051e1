package fairflame.invoice;

import fairflame.catalog.TaxRule;
import fairflame.money.Amounts;
import fairflame.money.Percent;
import fairflame.money.Rounding;
import fairflame.quote.Line;
import fairflame.quote.LineKind;
import fairflame.quote.Party;
import fairflame.quote.Taxation;
import fairflame.quote.Totals;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/** Lawful invoices and credit notes of every shape: layers, rounding rules, discounts, negative lines, payments. */
public final class RandomInvoices {
    private static final CurrencyUnit USD = CurrencyUnit.USD;
    private static final List<String> UNITS = List.of("each", "ft", "h", "visit", "tube", "dose");
    private static final Party SELLER = new Party(
            "Sandpiper Pool Heat", List.of("12 Quay Road", "Larkwell"), "555-0100", "office@sandpiper.example", "");
    private static final Party CUSTOMER = new Party(
            "Rosa & Ned <Okafor>", List.of("3 Heron Court", "Rear house", "Larkwell", "Osier County"), "", "", "owner");

    private final Random random;

    public RandomInvoices(Random random) {
        this.random = random;
    }

    public Invoice next(int sequence) {
        var kind = Invoice.Kind.values()[random.nextInt(3)];
        var rule = rule();
        var lines = lines(rule);
        var totals = Taxation.of(lines, rule, USD);
        if (totals.total().isNegative()) {
            return next(sequence);
        }
        return kind == Invoice.Kind.CREDIT
                ? invoice(
                        sequence,
                        kind,
                        rule,
                        lines.stream().map(RandomInvoices::negated).toList(),
                        negated(totals))
                : invoice(sequence, kind, rule, lines, totals);
    }

    /** A full invoice on a day for a quote, and a credit note of all of it. */
    public Invoice full(int sequence, String quote, LocalDate day) {
        while (true) {
            var found = next(sequence);
            if (found.kind() == Invoice.Kind.FULL && found.totals().total().isPositive()) {
                return placed(found, found.number(), "", quote, day);
            }
        }
    }

    /** Takes back a whole invoice. */
    public Invoice credit(Invoice invoice, String number, LocalDate day) {
        var lines = invoice.lines().stream().map(RandomInvoices::negated).toList();
        var note = invoice(0, Invoice.Kind.CREDIT, invoice.taxRule(), lines, negated(invoice.totals()));
        return placed(note, number, invoice.number(), invoice.quote(), day);
    }

    private static Invoice placed(Invoice from, String number, String corrects, String quote, LocalDate day) {
        return new Invoice(
                number,
                from.kind(),
                corrects,
                day,
                day,
                day.plusDays(30),
                from.currency(),
                quote,
                from.revision(),
                from.seal(),
                from.changeOrders(),
                from.seller(),
                from.sellerLicence(),
                from.customer(),
                from.site(),
                from.title(),
                from.lines(),
                from.totals(),
                from.taxRule(),
                from.complete(),
                from.completion(),
                from.notes(),
                List.of());
    }

    private TaxRule rule() {
        var layers = new ArrayList<TaxRule.Layer>();
        var names = List.of("State", "County", "City", "Transit district");
        for (int i = 0; i < random.nextInt(5); i++) {
            layers.add(new TaxRule.Layer(names.get(i), new Percent(BigDecimal.valueOf(50 + random.nextInt(850), 2))));
        }
        return new TaxRule(
                layers,
                Set.of("part"),
                random.nextBoolean(),
                random.nextBoolean(),
                random.nextInt(4) == 0 ? Rounding.DOWN : Rounding.NEAREST,
                "invented for the demo");
    }

    private List<Line> lines(TaxRule rule) {
        var lines = new ArrayList<Line>();
        var all = random.nextInt(5);
        for (int i = 0; i < 1 + random.nextInt(6); i++) {
            var quantity = new BigDecimal(1 + random.nextInt(400)).movePointLeft(random.nextInt(3));
            var price = Money.ofMinor(USD, random.nextInt(20_000) * (i > 0 && random.nextInt(6) == 0 ? -1 : 1));
            var taxable = all == 0 || (all != 1 && random.nextBoolean());
            lines.add(new Line(
                    "L" + (i + 1),
                    LineKind.values()[random.nextInt(LineKind.values().length)],
                    random.nextBoolean() ? "HS-" + i : "",
                    "Switch, \u00BD in & \"sealed\" no. " + i,
                    quantity,
                    UNITS.get(random.nextInt(UNITS.size())),
                    price,
                    Rounding.NEAREST.times(price, quantity),
                    Money.zero(USD),
                    taxable && !rule.layers().isEmpty(),
                    false,
                    List.of()));
        }
        return random.nextBoolean() ? lines : discounted(lines);
    }

    private List<Line> discounted(List<Line> lines) {
        var weights = lines.stream()
                .map(line ->
                        line.net().isNegative() ? BigDecimal.ZERO : line.net().getAmount())
                .toList();
        var most = weights.stream().reduce(BigDecimal.ZERO, BigDecimal::add);
        if (most.signum() == 0) {
            return lines;
        }
        var discount =
                Money.ofMinor(USD, random.nextInt(1 + most.movePointRight(1).intValue()));
        var shares = Amounts.allocate(discount, weights);
        var shared = new ArrayList<Line>();
        for (int i = 0; i < lines.size(); i++) {
            shared.add(with(lines.get(i), lines.get(i).quantity(), lines.get(i).net(), shares.get(i)));
        }
        return shared;
    }

    static Line with(Line line, BigDecimal quantity, Money net, Money discount) {
        return new Line(
                line.id(),
                line.kind(),
                line.item(),
                line.description(),
                quantity,
                line.unit(),
                line.unitPrice(),
                net,
                discount,
                line.taxable(),
                line.further(),
                line.basis());
    }

    private static Line negated(Line line) {
        return with(
                line,
                line.quantity().negate(),
                line.net().negated(),
                line.discount().negated());
    }

    private static Totals negated(Totals totals) {
        return new Totals(
                totals.subtotal().negated(),
                totals.discount().negated(),
                totals.taxes().stream()
                        .map(tax -> new fairflame.quote.TaxAmount(
                                tax.name(),
                                tax.rate(),
                                tax.base().negated(),
                                tax.amount().negated()))
                        .toList(),
                totals.tax().negated(),
                totals.total().negated());
    }

    private Invoice invoice(int sequence, Invoice.Kind kind, TaxRule rule, List<Line> lines, Totals totals) {
        var credit = kind == Invoice.Kind.CREDIT;
        var day = LocalDate.of(2026, 3, 2).plusDays(random.nextInt(200));
        var paid = Money.ofMinor(USD, random.nextInt(1 + totals.total().abs().getAmountMinorInt()));
        return new Invoice(
                (credit ? "C-2026-" : "I-2026-") + sequence,
                kind,
                credit ? "I-2026-0001" : "",
                day,
                day.minusDays(1),
                day.plusDays(30),
                USD,
                "Q-2026-0001",
                1,
                "0".repeat(64),
                List.of(),
                SELLER,
                "CL-10417",
                CUSTOMER,
                CUSTOMER,
                "Both water-side switches",
                lines,
                totals,
                rule,
                true,
                new Completion("", "", "", Map.of(), Optional.empty(), true),
                List.of("Local code, the permit office and the licensed professional decide."),
                credit || random.nextBoolean()
                        ? List.of()
                        : List.of(new Payment("P-" + sequence, day, paid, "card", "", false)));
    }
}

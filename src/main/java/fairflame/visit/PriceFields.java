package fairflame.visit;

import fairflame.Refusal;
import fairflame.money.Amounts;
import fairflame.money.Percent;
import fairflame.quote.Discount;
import fairflame.quote.ExtraLine;
import fairflame.quote.LineDiscount;
import fairflame.quote.LineKind;
import fairflame.quote.PaidDiagnosis;
import fairflame.quote.PricingInputs;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/**
 * Reads what a price depends on from a visit file.
 *
 * @param currency the shop's
 */
record PriceFields(CurrencyUnit currency) {
    private static final String USUAL_ZONE = "standard";

    /** Kinds of line that may be asked for; trip, diagnosis and permit fee follow from the shop and the place. */
    private static final Set<String> ASKED_FOR = Set.of(
            LineKind.PART.word(),
            LineKind.CONSUMABLE.word(),
            LineKind.LABOUR.word(),
            LineKind.SUBCONTRACT.word(),
            LineKind.DISPOSAL.word());

    private static final Pattern QUANTITY = Pattern.compile("\\d{1,6}(\\.\\d{1,3})?");

    /** The terms in a visit's field {@code price}; the shop's usual ones when there is none. */
    PriceTerms read(Optional<Fields> price) {
        return price.map(this::terms)
                .orElseGet(() -> new PriceTerms(PricingInputs.inZone(USUAL_ZONE), Optional.empty(), Optional.empty()));
    }

    private PriceTerms terms(Fields fields) {
        fields.only(
                "zone",
                "conditions",
                "discountPercent",
                "discountAmount",
                "discountReason",
                "lineDiscounts",
                "diagnosisPaid",
                "diagnosisPaidOn",
                "diagnosisSameTrip",
                "extras",
                "further",
                "pricesUntil",
                "taxRate");
        var inputs = new PricingInputs(
                fields.textOr("zone", USUAL_ZONE),
                Set.copyOf(fields.texts("conditions")),
                discount(fields, "discountPercent", "discountAmount", "discountReason"),
                fields.objects("lineDiscounts").stream().map(this::lineDiscount).toList(),
                paid(fields),
                fields.objects("extras").stream().map(this::extra).toList(),
                Set.copyOf(fields.texts("further")));
        return new PriceTerms(inputs, percent(fields, "taxRate", 30), day(fields, "pricesUntil"));
    }

    /** Nothing when neither percent nor amount is given; refused when both are, or when no reason is. */
    private Optional<Discount> discount(Fields fields, String percent, String amount, String reason) {
        if (fields.has(percent) && fields.has(amount)) {
            throw Refusal.notAllowed(
                    "field " + fields.path(amount), fields.text(amount), "a percent or an amount, not both");
        }
        if (!fields.has(percent) && !fields.has(amount)) {
            return Optional.empty();
        }
        var why = fields.textOr(reason, "");
        if (why.isBlank()) {
            throw Refusal.missing("field " + fields.path(reason), "a few words that the customer can read");
        }
        return percent(fields, percent, 100)
                .map(share -> Discount.ofPercent(why, share))
                .or(() -> money(fields, amount).map(off -> Discount.ofAmount(why, off)));
    }

    private LineDiscount lineDiscount(Fields fields) {
        fields.only("line", "percent", "amount", "reason");
        var discount = discount(fields, "percent", "amount", "reason")
                .orElseThrow(() -> Refusal.missing("field " + fields.path("percent"), "a percent or an amount"));
        return new LineDiscount(fields.text("line"), discount);
    }

    private Optional<PaidDiagnosis> paid(Fields fields) {
        var amount = money(fields, "diagnosisPaid");
        var on = day(fields, "diagnosisPaidOn");
        if (amount.isPresent() && on.isEmpty()) {
            throw Refusal.missing("field " + fields.path("diagnosisPaidOn"), "the day the fee was paid");
        }
        boolean sameTrip = fields.flag("diagnosisSameTrip", false);
        if (amount.isEmpty() && (sameTrip || on.isPresent())) {
            throw Refusal.missing("field " + fields.path("diagnosisPaid"), "the fee that was paid");
        }
        return amount.map(fee -> new PaidDiagnosis(fee, on.orElseThrow(), sameTrip));
    }

    private ExtraLine extra(Fields fields) {
        fields.only("choice", "kind", "description", "quantity", "unit", "unitPrice", "passThrough", "why", "source");
        var kind = fields.word("kind", ASKED_FOR);
        return new ExtraLine(
                fields.textOr("choice", ""),
                Arrays.stream(LineKind.values())
                        .filter(each -> each.word().equals(kind))
                        .findFirst()
                        .orElseThrow(),
                fields.text("description"),
                quantity(fields),
                fields.textOr("unit", "each"),
                money(fields, "unitPrice")
                        .orElseThrow(() -> Refusal.missing("field " + fields.path("unitPrice"), "two decimals")),
                fields.flag("passThrough", false),
                fields.text("why"),
                fields.textOr("source", "asked for by the customer"));
    }

    private static BigDecimal quantity(Fields fields) {
        var text = fields.textOr("quantity", "1");
        if (!QUANTITY.matcher(text).matches() || new BigDecimal(text).signum() == 0) {
            throw Refusal.outOfRange(
                    "field " + fields.path("quantity"), text, "above zero, up to 999999.999, three decimals at most");
        }
        return new BigDecimal(text);
    }

    private static Optional<LocalDate> day(Fields fields, String name) {
        return fields.has(name) ? Optional.of(VisitFile.date(fields, name)) : Optional.empty();
    }

    Optional<Percent> percent(Fields fields, String name, int highest) {
        return fields.optional(name).map(text -> {
            try {
                var percent = Percent.parse(text);
                if (percent.value().signum() < 0 || percent.value().compareTo(BigDecimal.valueOf(highest)) > 0) {
                    throw Refusal.outOfRange("percentage", text, "0 to " + highest + " %");
                }
                return percent;
            } catch (Refusal refusal) {
                throw refusal.at("field " + fields.path(name));
            }
        });
    }

    /** An amount with two decimals; a currency code in front has to be the shop's. */
    Optional<Money> money(Fields fields, String name) {
        return fields.optional(name).map(text -> {
            try {
                var parts = text.split("\\s+", -1);
                if (parts.length == 2 && !parts[0].equals(currency.getCode())) {
                    throw Refusal.notAllowed("currency", parts[0], currency.getCode());
                }
                var amount = Amounts.parse(currency, parts[parts.length - 1]);
                if (amount.isNegative() || parts.length > 2) {
                    throw Refusal.outOfRange("amount of money", text, "0.00 or more");
                }
                return amount;
            } catch (Refusal refusal) {
                throw refusal.at("field " + fields.path(name));
            }
        });
    }
}

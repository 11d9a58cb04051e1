package fairflame.visit;

import fairflame.Refusal;
import fairflame.money.Amounts;
import fairflame.money.Percent;
import java.math.BigDecimal;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/**
 * Reads what a price depends on from a visit file.
 *
 * @param currency the shop's
 */
record PriceFields(CurrencyUnit currency) {
    /** The terms in a visit's field {@code price}; the shop's usual ones when there is none. */
    PriceTerms read(Optional<Fields> price) {
        return price.map(this::terms).orElseGet(PriceFields::plainTerms);
    }

    private PriceTerms terms(Fields fields) {
        fields.only(
                "zone",
                "conditions",
                "discountPercent",
                "discountAmount",
                "discountReason",
                "diagnosisPaid",
                "diagnosisPaidOn",
                "taxRate");
        if (fields.has("discountPercent") && fields.has("discountAmount")) {
            throw Refusal.notAllowed(
                    "field " + fields.path("discountAmount"),
                    fields.text("discountAmount"),
                    "a percent or an amount, not both");
        }
        var terms = new PriceTerms(
                fields.textOr("zone", plainTerms().zone()),
                fields.texts("conditions").stream().collect(Collectors.toSet()),
                percent(fields, "discountPercent", 100),
                money(fields, "discountAmount"),
                fields.textOr("discountReason", ""),
                money(fields, "diagnosisPaid"),
                fields.has("diagnosisPaidOn")
                        ? Optional.of(VisitFile.date(fields, "diagnosisPaidOn"))
                        : Optional.empty(),
                percent(fields, "taxRate", 30));
        if (terms.diagnosisPaid().isPresent() && terms.diagnosisPaidOn().isEmpty()) {
            throw Refusal.missing("field " + fields.path("diagnosisPaidOn"), "the day the fee was paid");
        }
        return terms;
    }

    private static PriceTerms plainTerms() {
        return new PriceTerms(
                "standard",
                Set.of(),
                Optional.empty(),
                Optional.empty(),
                "",
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
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

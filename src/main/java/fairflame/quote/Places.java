package fairflame.quote;

import fairflame.Refusal;
import fairflame.catalog.Jurisdiction;
import fairflame.catalog.TaxRule;
import fairflame.money.Percent;
import java.math.BigDecimal;
import java.util.HashSet;
import java.util.regex.Pattern;

/** The rules of a place that a quote takes along. */
final class Places {
    /** Field of the place that says how far a bill may go above the quote, such as "10 percent". */
    static final String OVERRUN = "estimateOverrun";

    private static final Pattern PERCENT = Pattern.compile("\\s*(\\d{1,3}(?:\\.\\d{1,4})?)\\s*(?:%|percent).*");

    private Places() {}

    static PlaceRules rules(Jurisdiction place) {
        return new PlaceRules(
                place.id(),
                tax(place),
                place.deposit(),
                place.gasLicence(),
                place.gasLicencePattern(),
                place.gasTest(),
                place.cancelDays(),
                place.cancelAlways() || !place.unknown().isEmpty(),
                overrun(place));
    }

    /** The tax rule with the permit fee among its kinds just when the place taxes it. */
    static TaxRule tax(Jurisdiction place) {
        var kinds = new HashSet<>(place.tax().taxableKinds());
        if (place.permitFeeTaxed()) {
            kinds.add(LineKind.PERMIT_FEE.word());
        } else {
            kinds.remove(LineKind.PERMIT_FEE.word());
        }
        var rule = place.tax();
        return new TaxRule(rule.layers(), kinds, rule.combined(), rule.perItem(), rule.rounding(), rule.source());
    }

    /** Nothing above the quote where the place says nothing: the cautious side. */
    private static Percent overrun(Jurisdiction place) {
        var text = place.facts().getOrDefault(OVERRUN, "unknown");
        if (text.isBlank() || text.equals("unknown")) {
            return Percent.ZERO;
        }
        var match = PERCENT.matcher(text);
        if (!match.matches()) {
            throw Refusal.malformed("field " + OVERRUN + " of " + place.name(), text, "such as 10 percent, or unknown");
        }
        return new Percent(new BigDecimal(match.group(1)));
    }
}

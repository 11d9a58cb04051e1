package fairflame.document;

import fairflame.catalog.TaxRule;
import fairflame.quote.Choice;
import fairflame.quote.Line;
import fairflame.quote.PlaceRules;
import fairflame.quote.Quote;
import fairflame.quote.Taxation;
import fairflame.quote.Totals;
import java.util.List;
import org.joda.money.CurrencyUnit;

/** Quotes around any lines: all else is taken from the quote of the wet switches. */
final class RandomQuotes {
    private RandomQuotes() {}

    /** One choice of these lines under the rule of the demo's place. */
    static Quote of(List<Line> lines) {
        var rule = WetSwitches.quote().rules().tax();
        return quote(List.of(choice("A", lines, Taxation.of(lines, rule, CurrencyUnit.USD))), rule);
    }

    static Choice choice(String id, List<Line> lines, Totals totals) {
        var c = WetSwitches.quote().choices().get(0);
        return new Choice(
                id,
                c.title(),
                c.plain(),
                true,
                "",
                c.work(),
                c.duties(),
                c.hours(),
                lines,
                totals,
                Papers.usd("0"),
                c.tests(),
                c.notes(),
                c.arithmetic());
    }

    static Quote quote(List<Choice> choices, TaxRule rule) {
        var q = WetSwitches.quote();
        var r = q.rules();
        var rules = new PlaceRules(
                r.jurisdiction(),
                rule,
                r.deposit(),
                r.gasLicence(),
                r.gasLicencePattern(),
                r.gasTest(),
                r.cancelDays(),
                r.cancelAlways(),
                r.overrun());
        return new Quote(
                q.number(),
                1,
                q.visit(),
                true,
                q.made(),
                q.validUntil(),
                q.currency(),
                q.seller(),
                q.sellerLicence(),
                q.customer(),
                q.site(),
                q.heater(),
                q.place(),
                rules,
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

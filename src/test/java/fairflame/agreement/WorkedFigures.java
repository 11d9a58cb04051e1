package fairflame.agreement;

import static fairflame.quote.DemoQuotes.SWITCHES;
import static fairflame.quote.DemoShop.USD;
import static fairflame.quote.DemoShop.usd;

import fairflame.quote.Choice;
import fairflame.quote.Deposit;
import fairflame.quote.Line;
import fairflame.quote.LineKind;
import fairflame.quote.Quote;
import fairflame.quote.Taxation;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;

/**
 * The signed job whose figures were worked by hand: parts 109.19 taxed at 7.25 %, labour 195.75 not taxed, discount
 * 25.00 shared 8.95 and 16.05; total 287.21.
 */
public final class WorkedFigures {
    private WorkedFigures() {}

    public static final SignedRevision SIGNED = signed(List.of(
            line("L1", LineKind.PART, "109.19", "8.95", true), line("L2", LineKind.LABOUR, "195.75", "16.05", false)));

    public static Line line(String id, LineKind kind, String net, String discount, boolean taxable) {
        return new Line(
                id,
                kind,
                "",
                kind.word() + " " + id,
                BigDecimal.ONE,
                "each",
                usd(net),
                usd(net),
                usd(discount),
                taxable,
                false,
                List.of());
    }

    public static SignedRevision signed(List<Line> lines) {
        var quote = quote(lines);
        return DemoAgreements.sign(quote, "both", Map.of());
    }

    public static Quote quote(List<Line> lines) {
        var like = SWITCHES.choice("both");
        var totals = Taxation.of(lines, SWITCHES.rules().tax(), USD);
        var choice = new Choice(
                "both",
                like.title(),
                like.plain(),
                true,
                "",
                like.work(),
                like.duties(),
                like.hours(),
                lines,
                totals,
                Deposit.of(SWITCHES.rules().deposit(), totals.total()),
                like.tests(),
                like.notes(),
                List.of());
        var quote = SWITCHES;
        return new Quote(
                quote.number(),
                quote.revision(),
                quote.visit(),
                true,
                quote.made(),
                quote.validUntil(),
                USD,
                quote.seller(),
                quote.sellerLicence(),
                quote.customer(),
                quote.site(),
                quote.heater(),
                quote.place(),
                quote.rules(),
                quote.finding(),
                List.of(choice),
                quote.notes(),
                quote.terms(),
                quote.assumed(),
                quote.madeFrom(),
                "en",
                List.of());
    }
}

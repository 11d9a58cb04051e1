package fairflame.agreement;

import fairflame.money.Amounts;
import fairflame.quote.Choice;
import fairflame.quote.Quote;
import fairflame.quote.TemplateText;
import fairflame.wording.Spoken;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.joda.money.Money;

/**
 * The words that a customer agrees to, read from {@code templates/consent.yaml}.
 *
 * @param authorise for a repair
 * @param authoriseDiagnosis for a diagnosis only
 * @param authoriseChange for a change order
 * @param electronic to sign on a screen and get a file
 * @param decline for a choice not taken
 * @param waiver for work before the right to cancel has run out, in the customer's own hand
 */
public record ConsentText(
        @Spoken String authorise,
        @Spoken String authoriseDiagnosis,
        @Spoken String authoriseChange,
        @Spoken String electronic,
        @Spoken String decline,
        @Spoken String waiver,
        Map<String, String> sources) {
    private static final Set<String> WORDS = Set.of("title", "total", "quote", "shop");

    public ConsentText {
        sources = Map.copyOf(sources);
        for (var text : new String[] {authorise, authoriseDiagnosis, authoriseChange, electronic, decline, waiver}) {
            TemplateText.check(text, WORDS);
        }
    }

    /** Reads the text of the file. */
    public static ConsentText parse(String yaml) {
        return TemplateText.read("consent.yaml", yaml, ConsentText.class);
    }

    /** What the customer agrees to by signing for a choice. */
    public String authorise(Quote quote, Choice choice) {
        var text = quote.repair() ? authorise : authoriseDiagnosis;
        return fill(text, quote, choice.title(), choice.totals().total());
    }

    /** What the customer agrees to by signing a change that brings the job to this total. */
    public String authoriseChange(Quote quote, Money total) {
        return fill(authoriseChange, quote, "", total);
    }

    /** What the customer says of a choice not taken. */
    public String decline(Quote quote, Choice choice) {
        return fill(decline, quote, choice.title(), choice.totals().total());
    }

    /** What the customer agrees to by signing on a screen. */
    public String electronic(Quote quote) {
        return fill(electronic, quote, "", Money.zero(quote.currency()));
    }

    private static String fill(String text, Quote quote, String title, Money total) {
        var words = new TreeMap<String, String>();
        words.put("title", title);
        words.put("total", Amounts.plain(total) + " " + total.getCurrencyUnit());
        words.put("quote", quote.number());
        words.put("shop", quote.seller().name());
        return TemplateText.fill(text, words);
    }
}

package fairflame.document;

import fairflame.document.page.PageFormat;
import fairflame.quote.Quote;
import java.util.LinkedHashMap;

/** The paper for a customer who is away, of the invented quotes. */
public final class AwayPaper {
    static final PaperIdentity IDENTITY =
            new PaperIdentity("Q-2026-0001", 1, "0123456789abcdef".repeat(4), "Q-2026-0001-r1-away-1.pdf");

    private AwayPaper() {}

    /** Two wet switches, in English: choices "both" and "one". */
    public static byte[] english() {
        return of(WetSwitches.with("both", "one"), "en");
    }

    static byte[] of(Quote quote, String language) {
        return of(quote, language, PageFormat.LETTER);
    }

    static byte[] of(Quote quote, String language, PageFormat format) {
        var orders = new LinkedHashMap<String, String>();
        var declines = new LinkedHashMap<String, String>();
        for (var choice : quote.choices()) {
            orders.put(choice.id(), "I have read this quote and authorise the work under \"" + choice.title() + "\".");
            declines.put(choice.id(), "I was offered \"" + choice.title() + "\". I do not want it now.");
        }
        var sheet = new AnswerSheet(
                IDENTITY, orders, declines, "I agree to answer by a file and to get my copy as a file.");
        return QuotePdf.away(quote, sheet, Papers.text(language), format, QuotePdf.Pictures.NONE);
    }
}

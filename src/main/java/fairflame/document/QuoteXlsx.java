package fairflame.document;

import fairflame.agreement.SignedRevision;
import fairflame.document.SheetStyles.Look;
import fairflame.document.page.PageFormat;
import fairflame.quote.Choice;
import fairflame.quote.Party;
import fairflame.quote.Quote;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** A quote as a spreadsheet: an overview, a sheet of live formulas for each choice, and the reasons of each line. */
public final class QuoteXlsx {
    private static final int LAST_COLUMN = 3;

    private final Quote quote;
    private final Optional<SignedRevision> signed;
    private final PaperText text;
    private final PageFormat format;
    private final XSSFWorkbook book;
    private final SheetStyles styles;
    private final ChoiceNames names;

    private QuoteXlsx(
            Quote quote, Optional<SignedRevision> signed, PaperText text, PageFormat format, XSSFWorkbook book) {
        this.quote = quote;
        this.signed = signed;
        this.text = text;
        this.format = format;
        this.book = book;
        this.names = new ChoiceNames(quote, text);
        this.styles = new SheetStyles(book, text.figures().sign(quote.currency()));
    }

    /** The file's bytes: the same for the same quote and words. Formulas carry their values. */
    public static byte[] write(Quote quote, Optional<SignedRevision> signed, PaperText text, PageFormat format) {
        try (var book = new XSSFWorkbook()) {
            new QuoteXlsx(quote, signed, text, format, book).fill();
            var title = text.say(Label.QUOTE) + " " + quote.number();
            return XlsxFile.write(book, title, quote.seller().name(), quote.made());
        } catch (IOException e) {
            throw new UncheckedIOException("spreadsheet could not be closed", e);
        }
    }

    private void fill() {
        var overview = new Tab(book, styles, text.say(Label.SHEET_OVERVIEW), 24, 52, 18, 18);
        var totals = new LinkedHashMap<Choice, String>();
        for (var choice : quote.choices()) {
            totals.put(choice, choice(choice));
        }
        overview(overview, totals);
        var reasons = new ReasonsTab(new Tab(book, styles, text.say(Label.SHEET_REASONS), ReasonsTab.widths()), text);
        quote.choices().forEach(choice -> reasons.add(names.of(choice.id()), choice.lines()));
        reasons.tab().print(book, ReasonsTab.LAST_COLUMN, format, foot());
    }

    private String foot() {
        var seal = signed.map(
                        revision -> text.say(Label.FOOT_SEAL, revision.seal().brief()))
                .orElseGet(() -> text.say(Label.FOOT_UNSIGNED));
        return text.say(Label.FOOT_QUOTE, quote.number(), Integer.toString(quote.revision())) + ", " + seal;
    }

    /** Writes one choice; gives the address of its total. */
    private String choice(Choice choice) {
        var tab = new Tab(book, styles, names.of(choice.id()), ItemTab.widths());
        tab.next(Tab.TITLE).text(0, names.of(choice.id()) + ": " + choice.title(), Look.TITLE);
        tab.next().text(0, foot(), Look.LABEL);
        tab.next();
        var sheet = new ItemTab(
                tab, new Items(choice.lines(), choice.totals(), quote.rules().tax()), text);
        var total = sheet.write();
        tab.print(book, sheet.lastColumn(), format, foot());
        return tab.from(total);
    }

    private void overview(Tab tab, Map<Choice, String> totals) {
        var figures = text.figures();
        var title = signed.isPresent() ? Label.SIGNED_QUOTE : quote.repair() ? Label.QUOTE : Label.DIAGNOSIS_QUOTE;
        tab.next(Tab.TITLE).text(0, text.say(title), Look.TITLE);
        tab.next().text(0, quote.seller().name(), Look.SECTION);
        tab.next();
        fact(tab, Label.NUMBER, quote.number());
        fact(tab, Label.REVISION, Integer.toString(quote.revision()));
        fact(tab, Label.DATE, figures.date(quote.made()));
        fact(tab, Label.VALID_UNTIL, figures.date(quote.validUntil()));
        fact(tab, Label.PREPARED_FOR, party(quote.customer()));
        fact(tab, Label.SITE, party(quote.site()));
        fact(tab, Label.HEATER, quote.heater());
        fact(tab, Label.FOUND, quote.finding().headline());
        notices(tab);
        choices(tab, totals);
        tab.print(book, LAST_COLUMN, format, foot());
    }

    private void fact(Tab tab, Label label, String value) {
        tab.next().text(0, text.say(label), Look.LABEL).wide(1, LAST_COLUMN, value, Look.TEXT);
    }

    private static String party(Party party) {
        var parts = Stream.concat(Stream.of(party.name()), party.address().stream())
                .filter(part -> !part.isBlank())
                .toList();
        return String.join(", ", parts);
    }

    private void notices(Tab tab) {
        List<String> boxed = new PrintedNotes(quote, text).boxed();
        if (!boxed.isEmpty()) {
            tab.next();
            tab.next().wide(0, LAST_COLUMN, text.say(Label.NOTICE), Look.NOTICE);
            boxed.forEach(words -> tab.next().wide(0, LAST_COLUMN, words, Look.NOTICE));
        }
    }

    private void choices(Tab tab, Map<Choice, String> totals) {
        tab.next();
        tab.next(Tab.TALL)
                .text(0, text.say(Label.CHOICES_TITLE), Look.HEADER)
                .text(1, text.say(Label.DESCRIPTION), Look.HEADER)
                .text(2, text.say(Label.DEPOSIT), Look.HEADER_RIGHT)
                .text(3, text.say(Label.TOTAL), Look.HEADER_RIGHT);
        totals.forEach((choice, total) -> {
            boolean taken = signed.filter(revision -> revision.choice().equals(choice.id()))
                    .isPresent();
            tab.next()
                    .text(0, names.of(choice.id()), Look.STRONG)
                    .text(1, taken ? "\u2713 " + choice.title() : choice.title(), Look.TEXT)
                    .number(2, choice.deposit().getAmount(), Look.MONEY)
                    .formula(3, total, Look.MONEY);
        });
    }
}

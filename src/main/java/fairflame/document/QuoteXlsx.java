package fairflame.document;

import fairflame.agreement.SignedRevision;
import fairflame.document.page.PageFormat;
import fairflame.document.sheet.Facts;
import fairflame.document.sheet.Template;
import fairflame.document.sheet.Value;
import fairflame.quote.Choice;
import fairflame.quote.Quote;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** A quote as a spreadsheet: an overview, a sheet of live formulas for each choice, and the reasons of each line. */
public final class QuoteXlsx {
    private final Quote quote;
    private final Optional<SignedRevision> signed;
    private final PaperText text;
    private final ChoiceNames names;

    private QuoteXlsx(Quote quote, Optional<SignedRevision> signed, PaperText text) {
        this.quote = quote;
        this.signed = signed;
        this.text = text;
        this.names = new ChoiceNames(quote, text);
    }

    /**
     * The file's bytes: the same for the same quote, words and template. Formulas carry their values.
     *
     * @throws fairflame.Refusal naming file, sheet and cell, when a formula of the template does not come to the cents
     *     of the quote
     */
    public static byte[] write(
            Quote quote, Optional<SignedRevision> signed, PaperText text, PageFormat format, Template template) {
        var paper = new QuoteXlsx(quote, signed, text);
        var sign = text.figures().sign(quote.currency());
        try (var book = template.filled(paper.pages(), paper.overview(), sign, SheetFacts.running(paper.foot()))) {
            SheetFacts.paper(book, format);
            var title = text.say(Label.QUOTE) + " " + quote.number();
            return XlsxFile.write(book, title, quote.seller().name(), quote.made());
        } catch (IOException e) {
            throw new UncheckedIOException("spreadsheet could not be closed", e);
        }
    }

    private List<Template.Page> pages() {
        var pages = new ArrayList<Template.Page>();
        pages.add(new Template.Page(SheetNames.OVERVIEW, text.say(Label.SHEET_OVERVIEW), overview()));
        var reasons = new ArrayList<Map<String, Value>>();
        for (var choice : quote.choices()) {
            var name = names.of(choice.id());
            pages.add(new Template.Page(SheetNames.CHOICE, name, choice(choice)));
            reasons.addAll(ItemFacts.reasons(name, choice.lines(), text));
        }
        var facts = new Facts(once(), Map.of("reason", reasons), Map.of(), conditions());
        pages.add(new Template.Page(SheetNames.REASONS, text.say(Label.SHEET_REASONS), facts));
        return pages;
    }

    private String foot() {
        var seal = signed.map(
                        revision -> text.say(Label.FOOT_SEAL, revision.seal().brief()))
                .orElseGet(() -> text.say(Label.FOOT_UNSIGNED));
        return text.say(Label.FOOT_QUOTE, quote.number(), Integer.toString(quote.revision())) + ", " + seal;
    }

    private Map<String, Value> once() {
        var figures = text.figures();
        var title = signed.isPresent() ? Label.SIGNED_QUOTE : quote.repair() ? Label.QUOTE : Label.DIAGNOSIS_QUOTE;
        return new SheetFacts(text)
                .seller(quote.seller(), quote.sellerLicence())
                .customer(quote.customer(), quote.site())
                .with("title", text.say(title))
                .with("foot", foot())
                .with("quote.number", quote.number())
                .with("quote.revision", Integer.toString(quote.revision()))
                .with("quote.made", figures.date(quote.made()))
                .with("quote.valid-until", figures.date(quote.validUntil()))
                .with("heater", quote.heater())
                .with("found", quote.finding().headline())
                .values();
    }

    private Set<String> conditions() {
        var holds = new HashSet<String>();
        holds.add(signed.isPresent() ? "signed" : "unsigned");
        if (!new PrintedNotes(quote, text).boxed().isEmpty()) {
            holds.add("noticed");
        }
        return holds;
    }

    private Facts overview() {
        var notices = new PrintedNotes(quote, text)
                .boxed().stream()
                        .map(words -> Map.of("notice.words", Value.words(words)))
                        .toList();
        var choices = quote.choices().stream().map(this::told).toList();
        return new Facts(once(), Map.of("notice", notices, "choice", choices), Map.of(), conditions());
    }

    private Map<String, Value> told(Choice choice) {
        boolean taken =
                signed.filter(revision -> revision.choice().equals(choice.id())).isPresent();
        return Map.of(
                "choice.name", Value.words(names.of(choice.id())),
                "choice.title", Value.words(taken ? "\u2713 " + choice.title() : choice.title()),
                "choice.plain", Value.words(choice.plain()),
                "choice.leaves", Value.words(choice.leavesUnfixed()),
                "choice.deposit", Value.number(choice.deposit().getAmount(), money(choice.deposit())),
                "choice.total",
                        Value.number(
                                choice.totals().total().getAmount(),
                                money(choice.totals().total())));
    }

    private String money(org.joda.money.Money amount) {
        return text.figures().money(amount);
    }

    private Facts choice(Choice choice) {
        var all = new HashMap<>(once());
        all.putAll(told(choice));
        all.put("choice.title", Value.words(choice.title()));
        var items = new Items(choice.lines(), choice.totals(), quote.rules().tax());
        return new ItemFacts(items, text).with(all, Map.of(), conditions());
    }
}

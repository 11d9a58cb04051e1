package fairflame.visit;

import fairflame.Refusal;
import fairflame.agreement.Agreed;
import fairflame.agreement.ConsentText;
import fairflame.catalog.Shop;
import fairflame.catalog.ShopFiles;
import fairflame.diagnosis.Knowledge;
import fairflame.document.PaperText;
import fairflame.document.SheetTemplates;
import fairflame.gas.GasTables;
import fairflame.invoice.Invoicing;
import fairflame.invoice.books.Chart;
import fairflame.quote.Cautions;
import fairflame.quote.NoteBook;
import fairflame.quote.Quote;
import fairflame.store.Folder;
import fairflame.wording.Language;
import fairflame.wording.Told;
import fairflame.wording.Wording;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Supplier;

/**
 * Everything a visit is judged, priced and printed by, read once and checked as a whole.
 *
 * @param accounts the shop's chart of accounts, text of {@code accounts.csv}
 * @param templates texts of the printed words by file name, for every language
 * @param spreadsheets layout of quote and invoice as spreadsheets
 * @param translations what the files say in other languages
 * @param wording the language that everything here speaks
 * @param versions names and digests of catalog, knowledge and templates, kept in every quote
 * @param sources where it was read from
 */
public record Library(
        Knowledge knowledge,
        Shop shop,
        GasTables tables,
        NoteBook notes,
        Cautions cautions,
        ConsentText consent,
        String accounts,
        Map<String, String> templates,
        SheetTemplates spreadsheets,
        List<String> versions,
        Translations translations,
        Wording wording,
        Sources sources) {
    /** The language that papers are written in unless the customer wants another. */
    public static final String ENGLISH = "en";

    public Library {
        templates = Map.copyOf(templates);
        versions = List.copyOf(versions);
    }

    /** Reads a shop's folders, or the samples where none is given; refused as a whole when anything in them is. */
    public static Library load(Sources sources) {
        return of(
                sources,
                texts(sources.catalog(), () -> Folder.shipped("catalog-sample")),
                texts(sources.templates(), () -> Folder.shipped("templates")));
    }

    /** As {@link #load}, with the texts of catalog and templates as they would be after a change. */
    static Library of(Sources sources, Map<String, String> catalog, Map<String, String> templates) {
        var knowledgeFiles = texts(sources.knowledge(), Knowledge::shippedFiles);
        var shop = placed(sources.catalog(), () -> ShopFiles.parse(catalog));
        return new Library(
                placed(sources.knowledge(), () -> Knowledge.parse(knowledgeFiles)),
                shop,
                GasTables.shipped(),
                placed(sources.templates(), () -> NoteBook.parse(text(templates, "notes.yaml"))),
                placed(sources.templates(), () -> Cautions.parse(text(templates, "cautions.yaml"))),
                placed(sources.templates(), () -> ConsentText.parse(text(templates, "consent.yaml"))),
                catalog.getOrDefault(Chart.FILE, ""),
                templates,
                placed(sources.templates(), () -> SheetTemplates.parse(Folder.spreadsheets(sources.templates()))),
                List.of(
                        "catalog: " + shop.version() + ", " + digest(catalog),
                        "knowledge: " + digest(knowledgeFiles),
                        "templates: " + digest(templates)),
                new Translations(List.of(catalog, templates), knowledgeFiles),
                Wording.ENGLISH,
                sources);
    }

    /**
     * The same library with everything that a customer reads in a language: an examination, a quote or a sheet made with it
     * is written in that language, with the same facts and cents.
     */
    public Library in(Language language) {
        if (language == wording.language()) {
            return this;
        }
        var words = translations.wording(language);
        return new Library(
                translations.knowledge(language),
                translations.shop(shop, language),
                tables,
                Told.in(words, notes),
                Told.in(words, cautions),
                Told.in(words, consent),
                accounts,
                templates,
                spreadsheets,
                versions,
                translations,
                words,
                sources);
    }

    /** The same library in the language that a quote was made in. */
    Library in(Quote quote) {
        return in(Language.of(quote.language()));
    }

    /** Bills what was agreed on, in the language that it was agreed on in. */
    Invoicing invoicing(Agreed agreed) {
        var told = in(agreed.signed().quote());
        return new Invoicing(agreed, told.cautions(), told.wording());
    }

    /** The printed words in the language of this library. */
    public PaperText paper() {
        return paper(wording.language().code());
    }

    /** The same library with another state of the shop's catalog, and what that state is called. */
    Library with(Shop other, String state) {
        var named = new ArrayList<>(versions);
        named.add(state);
        return new Library(
                knowledge,
                other,
                tables,
                notes,
                cautions,
                consent,
                accounts,
                templates,
                spreadsheets,
                named,
                translations,
                wording,
                sources);
    }

    /** Reads also what is otherwise read only when it is used: accounts, and the papers in every language. */
    Library readWhole() {
        if (!accounts.isEmpty()) {
            placed(sources.catalog(), () -> Chart.parse(accounts));
        }
        templates.keySet().stream()
                .filter(name -> name.endsWith("/layout.yaml"))
                .map(name -> name.substring(0, name.indexOf('/')))
                .sorted()
                .forEach(language -> placed(sources.templates(), () -> paper(language)));
        for (var language : Language.values()) {
            placed(sources.templates(), () -> translations.wording(language));
        }
        return this;
    }

    /** The printed words in a language. */
    public PaperText paper(String language) {
        return PaperText.parse(templates, language);
    }

    /** The shop's name as printed. */
    public String shopName() {
        return paper(ENGLISH).company().seller().name();
    }

    /** Reads visits with this knowledge and currency. */
    public VisitFile visits() {
        return new VisitFile(knowledge, shop.currency());
    }

    private static Map<String, String> texts(Optional<Path> folder, Supplier<? extends Map<String, String>> samples) {
        return folder.<Map<String, String>>map(Folder::read).orElseGet(samples);
    }

    private static String text(Map<String, String> files, String name) {
        var text = files.get(name);
        if (text == null) {
            throw Refusal.missing("file " + name, "a file of that name in the templates folder");
        }
        return text;
    }

    /** The first twelve digits of a SHA-256 over names and texts: tells two states of a folder apart. */
    private static String digest(Map<String, String> files) {
        try {
            var digest = MessageDigest.getInstance("SHA-256");
            new TreeMap<>(files).forEach((name, text) -> {
                digest.update((name + "\n" + text.length() + "\n").getBytes(StandardCharsets.UTF_8));
                digest.update(text.getBytes(StandardCharsets.UTF_8));
            });
            return HexFormat.of().formatHex(digest.digest()).substring(0, 12);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }

    private static <T> T placed(Optional<Path> folder, Supplier<T> read) {
        try {
            return read.get();
        } catch (Refusal refusal) {
            throw folder.map(path -> refusal.at(path.toString())).orElse(refusal);
        }
    }
}

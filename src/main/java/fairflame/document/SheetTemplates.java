package fairflame.document;

import fairflame.Refusal;
import fairflame.document.sheet.Template;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** The spreadsheets that a shop lays out itself. */
public record SheetTemplates(Template quote, Template invoice) {
    public static final String QUOTE = "quote.xlsx";
    public static final String INVOICE = "invoice.xlsx";

    /**
     * Reads {@code quote.xlsx} and {@code invoice.xlsx}.
     *
     * @param files content by name
     * @throws Refusal naming file, sheet and cell
     */
    public static SheetTemplates parse(Map<String, byte[]> files) {
        return new SheetTemplates(
                Template.parse(
                        QUOTE,
                        file(files, QUOTE),
                        Map.of(
                                SheetNames.OVERVIEW, SheetNames.overview(),
                                SheetNames.CHOICE, SheetNames.choice(),
                                SheetNames.REASONS, SheetNames.reasons(SheetNames.ofQuote())),
                        Set.of(SheetNames.REASONS),
                        SheetNames.ofQuote()),
                Template.parse(
                        INVOICE,
                        file(files, INVOICE),
                        Map.of(
                                SheetNames.INVOICE, SheetNames.invoice(),
                                SheetNames.REASONS, SheetNames.reasons(SheetNames.ofInvoice())),
                        Set.of(SheetNames.REASONS),
                        SheetNames.ofInvoice()));
    }

    private static byte[] file(Map<String, byte[]> files, String name) {
        return Optional.ofNullable(files.get(name))
                .orElseThrow(
                        () -> Refusal.missing("spreadsheet " + name, "a file of that name in the templates folder"));
    }
}

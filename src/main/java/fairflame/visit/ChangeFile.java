package fairflame.visit;

import fairflame.Refusal;
import fairflame.agreement.AddedLine;
import fairflame.agreement.Change;
import fairflame.catalog.PermitNeed;
import fairflame.money.Amounts;
import fairflame.quote.Duties;
import fairflame.quote.LineKind;
import fairflame.store.TextFile;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import org.joda.money.CurrencyUnit;

/** Reads a change of signed work from its JSON text. Format: docs/formats/change.md. */
public final class ChangeFile {
    /** The format's name and edition, in every file. */
    public static final String FORMAT = "fairflame-change-1";

    private ChangeFile() {}

    /** The change in a file; a refusal names the file. */
    public static Change read(Path file, CurrencyUnit currency) {
        try {
            return read(TextFile.read(file), currency);
        } catch (Refusal refusal) {
            throw refusal.where().contains(file.toString()) ? refusal : refusal.at(file.toString());
        }
    }

    /** The change in a text. */
    public static Change read(String json, CurrencyUnit currency) {
        var top = Fields.of(json)
                .only("format", "reason", "added", "removed", "gasWork", "permit", "pressureTest", "tests");
        top.word("format", Set.of(FORMAT));
        var permit = PermitNeed.valueOf(
                top.has("permit")
                        ? top.word("permit", Set.of("no", "ask", "yes")).toUpperCase(Locale.ROOT)
                        : "NO");
        return new Change(
                top.text("reason"),
                top.objects("added").stream().map(line -> line(line, currency)).toList(),
                top.texts("removed"),
                new Duties(top.flag("gasWork", false), permit, top.flag("pressureTest", false)),
                top.texts("tests"));
    }

    private static AddedLine line(Fields fields, CurrencyUnit currency) {
        fields.only("kind", "item", "description", "quantity", "unit", "unitPrice", "why", "source");
        var kinds = Arrays.stream(LineKind.values()).collect(Collectors.toMap(LineKind::word, kind -> kind));
        var kind = kinds.get(fields.word("kind", kinds.keySet()));
        if (kind == null) {
            throw new IllegalStateException("a kind that was just found");
        }
        try {
            return new AddedLine(
                    kind,
                    fields.textOr("item", ""),
                    fields.text("description"),
                    quantity(fields.text("quantity")),
                    fields.text("unit"),
                    Amounts.parse(currency, fields.text("unitPrice")),
                    fields.text("why"),
                    fields.textOr("source", "agreed on the job"));
        } catch (Refusal refusal) {
            throw refusal.at(fields.path("line"));
        }
    }

    private static BigDecimal quantity(String text) {
        if (!text.matches("\\d{1,6}(\\.\\d{1,4})?")) {
            throw Refusal.malformed("quantity", text, "digits in quotes, such as \"1.5\"");
        }
        return new BigDecimal(text);
    }
}

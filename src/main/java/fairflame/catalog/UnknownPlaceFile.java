package fairflame.catalog;

import fairflame.Refusal;
import java.util.Map;
import java.util.Optional;
import org.joda.money.CurrencyUnit;

/** Reads {@code unknown-place.yaml}; a folder need not have it. */
final class UnknownPlaceFile {
    static final String NAME = "unknown-place.yaml";

    private UnknownPlaceFile() {}

    static Optional<UnknownPlace> read(Map<String, String> files, CurrencyUnit currency, Problems problems) {
        return files.containsKey(NAME)
                ? problems.attempt(() -> place(YamlEntry.parse(FileText.in(files, NAME)), currency))
                : Optional.empty();
    }

    private static UnknownPlace place(YamlEntry file, CurrencyUnit currency) {
        file.only("currency", "tax", "permitFee", "source");
        Currencies.check(file, currency);
        var tax = TaxField.read(file.field("tax"));
        if (tax.layers().isEmpty()) {
            throw Refusal.notAllowed("tax layers", "none", "at least one rate: an unknown place is not a free one")
                    .at(file.where() + ", tax");
        }
        return new UnknownPlace(tax, file.read("permitFee", text -> Fields.money(text, currency)), file.text("source"));
    }
}

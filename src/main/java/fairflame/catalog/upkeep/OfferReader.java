package fairflame.catalog.upkeep;

import fairflame.Refusal;
import fairflame.catalog.upkeep.PriceSheet.SheetRow;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.joda.money.CurrencyUnit;

/** Reads the rows of one price list by the mapping of its supplier. */
final class OfferReader {
    private final Map<PriceField, Integer> places = new EnumMap<>(PriceField.class);
    private final CurrencyUnit currency;
    private final Map<String, Integer> seen = new HashMap<>();

    /** Refuses a sheet that lacks a mapped heading or has it twice. */
    OfferReader(PriceSheet sheet, ColumnMapping mapping, CurrencyUnit currency) {
        this.currency = currency;
        mapping.columns().forEach((field, heading) -> places.put(field, place(sheet, heading)));
    }

    private static int place(PriceSheet sheet, String heading) {
        var found = -1;
        for (int i = 0; i < sheet.header().size(); i++) {
            if (sheet.header().get(i).strip().equalsIgnoreCase(heading)) {
                if (found >= 0) {
                    throw Refusal.notAllowed("heading", heading, "each mapped heading once")
                            .at(sheet.name());
                }
                found = i;
            }
        }
        if (found < 0) {
            throw Refusal.unknown("heading", heading, "one of the sheet's: " + String.join(", ", sheet.header()))
                    .at(sheet.name());
        }
        return found;
    }

    /** The part number as it stands in the row, for messages. */
    String shownNumber(SheetRow row) {
        return text(row, PriceField.NUMBER);
    }

    Offer read(SheetRow row) {
        var number = read(row, PriceField.NUMBER, Cell::number)
                .orElseThrow(() -> Refusal.missing("part number", "a part number in every row"));
        var earlier = seen.putIfAbsent(number, row.number());
        if (earlier != null) {
            throw Refusal.notAllowed("part number", number, "each part once; it stands in row " + earlier);
        }
        return new Offer(
                row.number(),
                number,
                read(row, PriceField.COST, text -> Cell.money("cost", text, currency))
                        .orElseThrow(() -> Refusal.missing("cost", "an amount such as 48.35")),
                read(row, PriceField.DESCRIPTION, text -> Cell.words("description", text)),
                read(row, PriceField.LIST_PRICE, text -> Cell.money("list price", text, currency)),
                read(row, PriceField.UNIT, text -> Cell.words("unit", text)),
                read(row, PriceField.ROLE, Cell::number),
                read(row, PriceField.SIZE, text -> Cell.words("size", text)),
                read(row, PriceField.CONSUMABLE, text -> Cell.flag("consumable", text)),
                read(row, PriceField.WARRANTY_MONTHS, Cell::months),
                read(row, PriceField.REPLACED_BY, Cell::number));
    }

    private <T> Optional<T> read(SheetRow row, PriceField field, Function<String, T> as) {
        var text = text(row, field);
        return text.isEmpty() ? Optional.empty() : Optional.of(as.apply(text));
    }

    private String text(SheetRow row, PriceField field) {
        var column = places.get(field);
        return column == null ? "" : row.cell(column);
    }
}

package fairflame.screen.stock;

import fairflame.catalog.edit.Spot;
import fairflame.screen.look.Words;
import fairflame.visit.Shelf;
import fairflame.visit.ShelfRow;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** Names of tables, rows and fields in the words of the screen; what has no words is named as in the file. */
public final class FieldWords {
    private static final int LONGEST_TITLE = 140;
    private static final Map<Shelf, List<String>> NOTES = Map.of(
            Shelf.PARTS, List.of("number", "cost", "list_price", "unit", "supplier", "replaced_by"),
            Shelf.TASKS, List.of("id", "hours", "per", "permit"),
            Shelf.ACCESS, List.of("id", "hours", "needs"),
            Shelf.LADDER, List.of("markup"),
            Shelf.SUPPLIERS, List.of("phone", "email", "lead_days"),
            Shelf.PROMISES, List.of("partsMonths", "labourDays"),
            Shelf.TESTS, List.of("letter", "pass"),
            Shelf.ACCOUNTS, List.of("number", "role", "type"));

    private final Words words;
    private final String currency;

    public FieldWords(Words words, String currency) {
        this.words = words;
        this.currency = currency;
    }

    /** The name of a field inside its row, with its unit. */
    public String field(ShelfRow row, Spot spot) {
        var steps = spot.steps();
        var from = Math.min(row.spot().steps().size(), Math.max(0, steps.size() - 1));
        var names = new ArrayList<String>();
        for (var step : steps.subList(from, steps.size())) {
            names.add(step(step));
        }
        return String.join(", ", names);
    }

    private String step(String step) {
        if (step.matches("\\d+")) {
            return String.valueOf(Integer.parseInt(step) + 1);
        }
        var key = "field." + step;
        return words.keys().contains(key) ? words.say(key, currency) : apart(step);
    }

    /** {@code gasPressureIndoors} as "gas pressure indoors". */
    private static String apart(String name) {
        return name.replaceAll("(\\p{Ll})(\\p{Lu})", "$1 $2")
                .replace('-', ' ')
                .replace('_', ' ')
                .toLowerCase(Locale.ROOT);
    }

    /** What a row is called. */
    public String title(ShelfRow row) {
        if (row.shelf() == Shelf.LADDER) {
            return words.say(
                    "stock.step",
                    row.field("from").map(ShelfRow.RowField::value).orElse(""));
        }
        if (row.shelf() == Shelf.RATES) {
            return row.spot().steps().isEmpty()
                    ? words.say("stock.rates-other")
                    : step(row.spot().last());
        }
        var title = row.field("title", "description", "name", "text", "words", "say", "headline")
                .or(() -> row.fields().stream().findFirst())
                .map(ShelfRow.RowField::value)
                .orElse("")
                .replaceAll("\\s+", " ");
        return title.isBlank()
                ? row.key()
                : title.length() > LONGEST_TITLE ? title.substring(0, LONGEST_TITLE) + "\u2026" : title;
    }

    /** The small print below a row's name. */
    public String note(ShelfRow row) {
        var notes = new ArrayList<String>();
        if (row.shelf() == Shelf.RATES) {
            row.fields().stream()
                    .filter(field -> !field.spot().last().equals("source"))
                    .forEach(field -> notes.add(field(row, field.spot()) + " " + field.value()));
        } else if (NOTES.containsKey(row.shelf())) {
            NOTES.getOrDefault(row.shelf(), List.of())
                    .forEach(name -> row.field(name)
                            .filter(field -> !field.value().isBlank())
                            .ifPresent(field -> notes.add(step(name) + " " + field.value())));
        } else {
            notes.add(row.key());
            row.field("rate").ifPresent(rate -> notes.add(step("rate") + " " + rate.value()));
        }
        if (row.shelf() == Shelf.PARTS
                && row.field("sold").filter(sold -> sold.value().equals("no")).isPresent()) {
            notes.add(words.say("stock.withdrawn"));
        }
        return String.join("  \u00B7  ", notes);
    }
}

package fairflame.diagnosis;

import com.fasterxml.jackson.databind.JsonNode;
import fairflame.Refusal;
import fairflame.wording.Wording;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.BiFunction;
import java.util.function.Consumer;
import java.util.function.Function;

/** One row of a knowledge file: every field is asked for by name, and what nobody asks for is refused. */
final class Row {
    private final JsonNode node;
    private final String place;

    Row(JsonNode node, String place) {
        this.node = node;
        this.place = place;
        if (!node.isObject()) {
            throw Refusal.malformed("row", node, "fields with names").at(place);
        }
    }

    /** File and row, as a message names them. */
    String place() {
        return place;
    }

    /** The row with what a customer reads in a language. */
    Row in(Wording wording, String kind) {
        return wording.isEnglish() ? this : new Row(SpokenFields.in(wording, kind, node), place);
    }

    /** Hands every text that a customer may come to read to a listener. */
    void hear(String kind, Consumer<String> listener) {
        SpokenFields.hear(kind, node, listener);
    }

    Row only(String... names) {
        var allowed = new TreeSet<>(Set.of(names));
        for (var field : (Iterable<String>) node::fieldNames) {
            if (!allowed.contains(field)) {
                throw Refusal.unknown("field", field, Vocabulary.listed(allowed))
                        .at(place);
            }
        }
        return this;
    }

    /** Text that may be absent or blank. */
    String textOr(String name, String otherwise) {
        var child = node.get(name);
        if (child == null || child.isNull()) {
            return otherwise;
        }
        if (!child.isValueNode()) {
            throw Refusal.malformed("field " + name, child, "one text").at(place);
        }
        return child.asText().isBlank() ? otherwise : child.asText().strip();
    }

    String text(String name) {
        var text = textOr(name, "");
        if (text.isEmpty()) {
            throw Refusal.missing("field " + name, "text").at(place);
        }
        return text;
    }

    boolean flag(String name, boolean otherwise) {
        var text = textOr(name, otherwise ? "yes" : "no");
        return switch (text) {
            case "yes", "true" -> true;
            case "no", "false" -> false;
            default -> throw Refusal.unknown("field " + name, text, "yes, no").at(place);
        };
    }

    int whole(String name, int lowest, int highest, int otherwise) {
        var text = textOr(name, String.valueOf(otherwise));
        var allowed = lowest + " to " + highest;
        if (!text.matches("-?\\d{1,9}")) {
            throw Refusal.malformed("field " + name, text, allowed).at(place);
        }
        int number = Integer.parseInt(text);
        if (number < lowest || number > highest) {
            throw Refusal.outOfRange("field " + name, text, allowed).at(place);
        }
        return number;
    }

    /** The texts of a list, or one text alone; in a table cell they are separated by {@code ;}. */
    List<String> texts(String name) {
        var child = node.get(name);
        if (child == null || child.isNull()) {
            return List.of();
        }
        var found = new ArrayList<String>();
        if (child.isArray()) {
            child.forEach(item -> found.add(item.asText().strip()));
        } else {
            for (var part : child.asText().split(";", -1)) {
                found.add(part.strip());
            }
        }
        found.removeIf(String::isEmpty);
        return List.copyOf(found);
    }

    /** Each text of a list turned into a value; a refusal names the field. */
    <T> List<T> each(String name, Function<String, T> reader) {
        return texts(name).stream()
                .map(text -> named(name, () -> reader.apply(text)))
                .toList();
    }

    /** The text of a field turned into a value; a refusal names the field. */
    <T> T as(String name, Function<String, T> reader) {
        var text = text(name);
        return named(name, () -> reader.apply(text));
    }

    <T> Optional<T> optional(String name, Function<String, T> reader) {
        var text = textOr(name, "");
        return text.isEmpty() ? Optional.empty() : Optional.of(named(name, () -> reader.apply(text)));
    }

    /** Rows nested under a field. */
    List<Row> rows(String name, BiFunction<JsonNode, Integer, String> label) {
        var child = node.get(name);
        if (child == null || child.isNull()) {
            return List.of();
        }
        if (!child.isArray()) {
            throw Refusal.malformed("field " + name, child, "a list").at(place);
        }
        var found = new ArrayList<Row>();
        for (int i = 0; i < child.size(); i++) {
            found.add(new Row(child.get(i), place + " " + name + " " + label.apply(child.get(i), i + 1)));
        }
        return List.copyOf(found);
    }

    private <T> T named(String field, java.util.function.Supplier<T> reading) {
        try {
            return reading.get();
        } catch (Refusal refusal) {
            throw refusal.at(place + " field " + field);
        }
    }
}

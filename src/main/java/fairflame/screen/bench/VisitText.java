package fairflame.screen.bench;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;

/** Writes a draft as the text of a visit file, leaving out fields that were refused. */
final class VisitText {
    private static final List<String> PLATE = List.of(
            "description",
            "fuel",
            "input",
            "inletMinimum",
            "inletMaximum",
            "manifold",
            "flameMinimum",
            "riseMaximum",
            "efficiency");
    /** Only a bare number takes the unit beside it; words such as "open" stand alone. */
    private static final String NUMBER = "[+-]?[\\d.,]+";

    private static final List<String> PARTY = List.of("name", "phone", "email", "role", "language");

    private final Draft draft;
    private final java.util.Set<String> refused;
    /** Draft entry of each reading in the text, by its place. */
    private final List<Integer> readings = new ArrayList<>();

    VisitText(Draft draft, java.util.Set<String> refused) {
        this.draft = draft;
        this.refused = refused;
    }

    /** The draft's field that a place in the text came from, such as {@code readings[2].value}. */
    String fieldOf(String place) {
        var reading = java.util.regex.Pattern.compile("readings\\[(\\d+)](?:\\.(\\w+))?")
                .matcher(place);
        if (reading.find()) {
            return "reading." + readings.get(Integer.parseInt(reading.group(1))) + ".value";
        }
        return place;
    }

    String json() {
        var top = JsonNodeFactory.instance.objectNode();
        top.put("format", "fairflame-visit-1");
        for (var name : List.of("id", "date", "technician", "jurisdiction", "complaint")) {
            put(top, name, name);
        }
        party(top, "customer");
        party(top, "site");
        plate(top.putObject("heater"));
        gates(top.putObject("gates"));
        readings(top.putArray("readings"));
        leads(top.putArray("bypassLeads"));
        releases(top.putArray("releases"));
        price(top.putObject("price"));
        if (draft.has("layout") && !refused.contains("layout")) {
            top.putRawValue("layout", new com.fasterxml.jackson.databind.util.RawValue(draft.get("layout")));
        }
        new TermsText(draft, refused, this::put).into(top);
        return top.toString();
    }

    private void put(ObjectNode node, String name, String field) {
        if (draft.has(field) && !refused.contains(field)) {
            node.put(name, measured(draft, field));
        }
    }

    /** What stands in a field, a bare number with the unit beside it. */
    static String measured(Draft draft, String field) {
        var unit = draft.get(field + ".unit");
        var text = draft.get(field).strip();
        return unit.isEmpty() || !text.matches(NUMBER) ? text : text + " " + unit;
    }

    private void party(ObjectNode top, String who) {
        var lines = draft.get(who + ".address")
                .lines()
                .map(String::strip)
                .filter(line -> !line.isEmpty())
                .toList();
        if (!draft.has(who + ".name") || lines.isEmpty() || refused.contains(who)) {
            return;
        }
        var node = top.putObject(who);
        PARTY.forEach(name -> put(node, name, who + "." + name));
        lines.forEach(node.withArray("address")::add);
    }

    private void plate(ObjectNode node) {
        PLATE.forEach(name -> put(node, name, "heater." + name));
        var age = draft.get("heater.ageYears").strip();
        if (age.matches("\\d{1,4}") && !refused.contains("heater.ageYears")) {
            node.put("ageYears", Integer.parseInt(age));
        }
    }

    private void gates(ObjectNode node) {
        draft.fields().forEach((field, answer) -> {
            if (field.startsWith("gate.")) {
                node.put(field.substring("gate.".length()), answer);
            }
        });
    }

    private void readings(ArrayNode array) {
        for (var number : draft.numbers("reading")) {
            var field = "reading." + number;
            if (!draft.has(field + ".value") || refused.contains(field + ".value")) {
                continue;
            }
            readings.add(number);
            var node = array.addObject();
            put(node, "check", field + ".check");
            put(node, "value", field + ".value");
            put(node, "instrument", field + ".instrument");
            put(node, "note", field + ".note");
            words(draft.get(field + ".conditions")).forEach(node.withArray("conditions")::add);
            if (draft.get(field + ".told").equals("yes")) {
                node.put("seen", false);
            }
        }
    }

    private void leads(ArrayNode array) {
        for (var number : draft.numbers("lead")) {
            var node = array.addObject();
            put(node, "device", "lead." + number + ".device");
            put(node, "placedBy", "lead." + number + ".placedBy");
            node.put("removed", draft.get("lead." + number + ".removed").equals("yes"));
        }
    }

    private void releases(ArrayNode array) {
        for (var number : draft.numbers("release")) {
            var field = "release." + number + ".";
            if (List.of("gate", "name", "licence", "cause").stream().allMatch(name -> draft.has(field + name))) {
                var node = array.addObject();
                List.of("gate", "name", "licence", "cause").forEach(name -> put(node, name, field + name));
            }
        }
    }

    private void price(ObjectNode node) {
        for (var name : List.of(
                "zone",
                "discountPercent",
                "discountAmount",
                "discountReason",
                "diagnosisPaid",
                "diagnosisPaidOn",
                "taxRate")) {
            put(node, name, "price." + name);
        }
        words(draft.get("price.conditions")).forEach(node.withArray("conditions")::add);
    }

    static List<String> words(String text) {
        return java.util.Arrays.stream(text.split(","))
                .map(String::strip)
                .filter(word -> !word.isEmpty())
                .toList();
    }
}

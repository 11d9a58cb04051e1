package fairflame.command;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import fairflame.visit.Handoff;
import java.io.PrintWriter;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;

/** Prints the fields in which two sides differ, ours at the left. */
final class SideBySide {
    private static final JsonMapper JSON = new JsonMapper();
    private static final int WIDTH = 44;

    private SideBySide() {}

    static void print(PrintWriter out, Handoff.Conflict conflict) {
        out.println(conflict.number() + ". " + conflict.kind() + " " + conflict.key() + " from " + conflict.origin()
                + ": " + conflict.reason()
                + (conflict.settled().isEmpty() ? "" : " (settled: " + conflict.settled() + ")"));
        var ours = fields(conflict.ours());
        var theirs = fields(conflict.theirs());
        var names = new TreeSet<>(ours.keySet());
        names.addAll(theirs.keySet());
        for (var name : names) {
            var left = ours.getOrDefault(name, "(not here)");
            var right = theirs.getOrDefault(name, "(not there)");
            if (!left.equals(right)) {
                out.println("   " + name);
                out.printf("      here  %s%n      there %s%n", cut(left), cut(right));
            }
        }
    }

    private static String cut(String text) {
        var line = text.replaceAll("\\s+", " ");
        return line.length() <= WIDTH * 2 ? line : line.substring(0, WIDTH * 2) + "...";
    }

    private static Map<String, String> fields(String text) {
        var fields = new TreeMap<String, String>();
        try {
            add(fields, "", text.isEmpty() ? JSON.createObjectNode() : JSON.readTree(text));
        } catch (JsonProcessingException notJson) {
            fields.put("/", text);
        }
        return fields;
    }

    private static void add(Map<String, String> fields, String path, JsonNode node) {
        if (node.isObject()) {
            node.properties().forEach(entry -> add(fields, path + "/" + entry.getKey(), entry.getValue()));
        } else if (node.isArray()) {
            for (int i = 0; i < node.size(); i++) {
                add(fields, path + "/" + i, node.get(i));
            }
        } else {
            fields.put(path.isEmpty() ? "/" : path, node.asText());
        }
    }
}

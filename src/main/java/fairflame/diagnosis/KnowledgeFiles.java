package fairflame.diagnosis;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.dataformat.csv.CsvMapper;
import com.fasterxml.jackson.dataformat.csv.CsvParser;
import com.fasterxml.jackson.dataformat.csv.CsvSchema;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import fairflame.Refusal;
import fairflame.wording.TextFiles;
import fairflame.wording.Wording;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Consumer;
import java.util.regex.Pattern;

/** The rows of knowledge files, by kind of file. A file that cannot be read as rows is handed to the sink. */
final class KnowledgeFiles {
    /** The kinds and their form. A name is the kind, optionally a hyphen and more, and the ending. */
    private static final Map<String, String> KINDS = new TreeMap<>(Map.of(
            "sources", "csv",
            "instruments", "csv",
            "circumstances", "csv",
            "complaints", "csv",
            "checks", "csv",
            "gates", "yaml",
            "causes", "yaml",
            "contradictions", "yaml",
            "doubts", "yaml",
            "verdicts", "yaml"));

    private static final Pattern NAME = Pattern.compile("([a-z]+)(?:-[a-z0-9-]+)?\\.(csv|yaml)");
    private static final YAMLMapper YAML = YAMLMapper.builder()
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .build();
    private static final CsvMapper CSV = CsvMapper.builder()
            .enable(CsvParser.Feature.TRIM_SPACES)
            .enable(CsvParser.Feature.SKIP_EMPTY_LINES)
            .enable(CsvParser.Feature.FAIL_ON_MISSING_COLUMNS)
            .build();

    private final Map<String, List<Row>> rows = new TreeMap<>();
    private final Consumer<Refusal> refused;
    private final Wording wording;

    KnowledgeFiles(Map<String, String> files, Consumer<Refusal> refused) {
        this(files, Wording.ENGLISH, refused);
    }

    /** The rows with what a customer reads in a language; files of texts in other languages hold no rows. */
    KnowledgeFiles(Map<String, String> files, Wording wording, Consumer<Refusal> refused) {
        this.refused = refused;
        this.wording = wording;
        new TreeMap<>(files).forEach((name, text) -> {
            if (TextFiles.isText(name)) {
                return;
            }
            try {
                var kind = kind(name);
                rows.computeIfAbsent(kind, any -> new ArrayList<>()).addAll(told(kind, read(name, text)));
            } catch (Refusal refusal) {
                refused.accept(refusal);
            }
        });
        KINDS.keySet().stream()
                .filter(kind -> !rows.containsKey(kind))
                .forEach(kind -> refused.accept(Refusal.missing("knowledge file", kind + "." + KINDS.get(kind))));
    }

    /** All rows of one kind, file by file in the order of their names. */
    List<Row> of(String kind) {
        return List.copyOf(rows.getOrDefault(kind, List.of()));
    }

    Wording wording() {
        return wording;
    }

    Consumer<Refusal> refused() {
        return refused;
    }

    private List<Row> told(String kind, List<Row> read) {
        return read.stream().map(row -> row.in(wording, kind)).toList();
    }

    /** Every text that a customer may come to read, each once, in the order of the files. */
    List<String> spoken() {
        var heard = new LinkedHashSet<String>();
        rows.forEach((kind, each) -> each.forEach(row -> row.hear(kind, heard::add)));
        return List.copyOf(heard);
    }

    private static String kind(String name) {
        var match = NAME.matcher(name);
        if (match.matches() && match.group(2).equals(KINDS.get(match.group(1)))) {
            return match.group(1);
        }
        var allowed = KINDS.entrySet().stream()
                .map(kind -> kind.getKey() + "." + kind.getValue())
                .toList();
        throw Refusal.unknown("knowledge file", name, String.join(", ", allowed) + ", or such as causes-ours.yaml");
    }

    private static List<Row> read(String name, String text) {
        try {
            return name.endsWith(".csv") ? table(name, text) : list(name, text);
        } catch (JsonProcessingException e) {
            var at = e.getLocation();
            var where = at == null ? name : name + " line " + at.getLineNr();
            throw Refusal.malformed("text", e.getOriginalMessage(), "well-formed rows")
                    .at(where);
        } catch (IOException e) {
            // Text in memory has no other way to fail; whatever the parser reports is about the text.
            throw Refusal.malformed("text", String.valueOf(e.getMessage()), "well-formed rows")
                    .at(name);
        }
    }

    private static List<Row> table(String name, String text) throws IOException {
        var found = new ArrayList<Row>();
        try (var values = CSV.readerFor(JsonNode.class)
                .with(CsvSchema.emptySchema().withHeader())
                .<JsonNode>readValues(text)) {
            while (values.hasNextValue()) {
                var node = values.nextValue();
                var key = node.path("id").asText(node.path("key").asText(""));
                found.add(new Row(node, name + " row " + (found.size() + 1) + " " + key));
            }
        }
        return found;
    }

    private static List<Row> list(String name, String text) throws IOException {
        var root = YAML.readTree(text);
        if (!root.isArray()) {
            throw Refusal.malformed("content", root.getNodeType(), "a list of rows, each beginning with '- '")
                    .at(name);
        }
        var found = new ArrayList<Row>();
        for (int i = 0; i < root.size(); i++) {
            found.add(new Row(
                    root.get(i),
                    name + " row " + (i + 1) + " " + root.get(i).path("id").asText("")));
        }
        return found;
    }
}

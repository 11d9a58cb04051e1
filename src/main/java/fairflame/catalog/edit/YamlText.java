package fairflame.catalog.edit;

import fairflame.Refusal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.yaml.snakeyaml.DumperOptions.ScalarStyle;
import org.yaml.snakeyaml.nodes.MappingNode;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.NodeTuple;
import org.yaml.snakeyaml.nodes.SequenceNode;

/**
 * A YAML file of which single values, entries and fields are changed. Every edit is read again and has to give exactly
 * the content that was meant; otherwise it is refused and the file has to be edited by hand there.
 */
public final class YamlText implements ShopText {
    private final String file;
    private final String text;
    private final YamlNodes nodes;

    private YamlText(String file, String text) {
        this.file = file;
        this.text = text;
        this.nodes = new YamlNodes(file, text);
    }

    /** Reads a file; refused with its line when it is not well formed. */
    public static YamlText parse(String file, String text) {
        return new YamlText(file, text);
    }

    @Override
    public String text() {
        return text;
    }

    @Override
    public List<Leaf> leaves() {
        return nodes.leaves();
    }

    @Override
    public Optional<String> at(Spot spot) {
        return spot.steps().isEmpty() ? Optional.of(text) : nodes.find(spot).map(nodes::value);
    }

    /** Steps of the entries of a list or of the fields of a map; empty where neither stands. */
    public List<String> steps(Spot spot) {
        var node = nodes.find(spot);
        if (node.isPresent() && node.get() instanceof MappingNode map) {
            return map.getValue().stream().map(YamlNodes::key).toList();
        }
        var steps = new ArrayList<String>();
        if (node.isPresent() && node.get() instanceof SequenceNode list) {
            list.getValue().forEach(item -> steps.add(YamlNodes.step(list, steps.size())));
        }
        return steps;
    }

    /** The outermost entry of a list that a value belongs to; the value itself where it stands in none. */
    public Spot entryOf(Spot leaf) {
        for (int length = 1; length < leaf.steps().size(); length++) {
            var outer = new Spot(leaf.steps().subList(0, length));
            if (nodes.find(outer).filter(SequenceNode.class::isInstance).isPresent()) {
                return outer.in(leaf.steps().get(length));
            }
        }
        return leaf;
    }

    /** The source text of an entry on one line, in braces. */
    public static String entry(Map<String, String> fields) {
        var texts = new ArrayList<String>();
        fields.forEach((name, value) -> texts.add(name + ": "
                + YamlScalar.ways(
                                value,
                                new YamlScalar.Place(ScalarStyle.PLAIN, numeric(value) ? "0" : "", true, 0, 0, "\n"))
                        .get(0)));
        return "{" + String.join(", ", texts) + "}";
    }

    private static boolean numeric(String value) {
        return value.matches("-?[\\d.]+");
    }

    @Override
    public String with(FieldEdit edit) {
        if (!comesBetween(edit)) {
            refuseUnlessStill(file, edit);
        }
        var meant = new YamlMeaning(file, nodes).of(edit);
        for (var way : ways(edit)) {
            if (gives(way, meant)) {
                return way;
            }
        }
        throw Refusal.notAllowed(
                        "place in the file", edit.spot(), "a change by hand: the file is laid out in another way here")
                .at(file);
    }

    /** An entry that comes into a list at a position; the one that stands there moves on. */
    private boolean comesBetween(FieldEdit edit) {
        return edit.before().isEmpty()
                && edit.spot().last().matches("\\d{1,6}")
                && nodes.find(edit.spot().outer())
                        .filter(SequenceNode.class::isInstance)
                        .isPresent();
    }

    private boolean gives(String way, Object meant) {
        try {
            return new YamlNodes(file, way).content().equals(meant);
        } catch (Refusal notWellFormed) {
            return false;
        }
    }

    private List<String> ways(FieldEdit edit) {
        var node = nodes.find(edit.spot());
        if (node.isEmpty() || edit.before().isEmpty()) {
            return added(edit.spot(), edit.after().orElseThrow());
        }
        if (edit.after().isEmpty()) {
            return List.of(without(edit.spot(), node.get()));
        }
        return YamlNodes.texts(node.get())
                ? List.of(relisted((SequenceNode) node.get(), items(edit.after().get())))
                : replaced(edit.spot(), node.get(), edit.after().get());
    }

    static List<String> items(String lines) {
        return lines.lines().map(String::strip).filter(line -> !line.isEmpty()).toList();
    }

    private List<String> replaced(Spot spot, Node node, String value) {
        var from = nodes.from(node);
        var column = lineOf(from).length() - lineOf(from).stripLeading().length();
        var place = new YamlScalar.Place(
                YamlNodes.style(node),
                nodes.value(node),
                nodes.insideFlow(spot),
                column + 2,
                YamlNodes.column(node),
                end());
        return YamlScalar.ways(value, place).stream()
                .map(way -> text.substring(0, from) + way + text.substring(nodes.to(node)))
                .toList();
    }

    /** The line on which a place stands, up to that place, a dash in front counted as blank. */
    private String lineOf(int place) {
        return text.substring(text.lastIndexOf('\n', place - 1) + 1, place).replaceFirst("- ", "  ");
    }

    private String relisted(SequenceNode list, List<String> items) {
        var flow = YamlNodes.flow(list);
        var indent = YamlNodes.column(list);
        var place = YamlScalar.Place.fresh(flow, indent + 2, indent + 2, end());
        var written = items.stream().map(item -> item(list, item, place)).toList();
        var source = flow
                ? "[" + String.join(", ", written) + "]"
                : "- " + String.join(end() + " ".repeat(indent) + "- ", written);
        return text.substring(0, nodes.from(list)) + source + text.substring(nodes.to(list));
    }

    /** An item that was there already stays written as it was. */
    private String item(SequenceNode list, String value, YamlScalar.Place place) {
        return list.getValue().stream()
                .filter(item -> nodes.value(item).equals(value))
                .findFirst()
                .map(item -> text.substring(nodes.from(item), nodes.to(item)))
                .orElseGet(() -> YamlScalar.ways(value, place).get(0));
    }

    private List<String> added(Spot spot, String value) {
        var outer = nodes.find(spot.outer())
                .orElseThrow(() -> Refusal.unknown("place", spot.outer(), "a place in the file")
                        .at(file));
        if (outer instanceof SequenceNode list) {
            return List.of(inserted(list, YamlNodes.index(list, spot.last()), value));
        }
        if (!(outer instanceof MappingNode map)) {
            throw Refusal.notAllowed("place", spot, "a field of an entry").at(file);
        }
        var flow = YamlNodes.flow(map) || nodes.insideFlow(spot);
        var column = map.getValue().isEmpty()
                ? 0
                : YamlNodes.column(map.getValue().get(0).getKeyNode());
        var place = new YamlScalar.Place(
                ScalarStyle.PLAIN,
                numeric(value) ? "0" : "",
                flow,
                column + 2,
                column + spot.last().length() + 2,
                end());
        return YamlScalar.ways(value, place).stream()
                .map(way -> grown(map, spot.last() + ": " + way, column, ""))
                .toList();
    }

    private String inserted(SequenceNode list, int index, String source) {
        var items = list.getValue();
        if (index == 0 && !items.isEmpty()) {
            var first = nodes.from(items.get(0));
            var between = YamlNodes.flow(list) ? ", " : end() + " ".repeat(YamlNodes.column(list)) + "- ";
            return text.substring(0, first) + source + between + text.substring(first);
        }
        if (index < items.size() && !YamlNodes.flow(list)) {
            return after(items.get(index - 1), end() + " ".repeat(YamlNodes.column(list)) + "- " + source);
        }
        return index < items.size()
                ? text.substring(0, nodes.to(items.get(index - 1)))
                        + ", "
                        + source
                        + text.substring(nodes.to(items.get(index - 1)))
                : grown(list, source, YamlNodes.column(list), "- ");
    }

    /** A map or list with one more piece at its end. */
    private String grown(Node some, String source, int column, String mark) {
        if (YamlNodes.flow(some)) {
            var close = nodes.to(some) - 1;
            var empty = text.substring(nodes.from(some) + 1, close).isBlank();
            return text.substring(0, close).stripTrailing() + (empty ? "" : ", ") + source + text.substring(close);
        }
        return after(some, end() + " ".repeat(column) + mark + source);
    }

    /** The text with more behind the line on which a piece ends, so that a remark on that line stays with it. */
    private String after(Node piece, String more) {
        var to = nodes.to(piece);
        var line = text.indexOf('\n', to);
        var at = line < 0 ? text.length() : line > 0 && text.charAt(line - 1) == '\r' ? line - 1 : line;
        return text.substring(0, at) + more + text.substring(at);
    }

    private String without(Spot spot, Node node) {
        var outer = nodes.find(spot.outer()).orElseThrow();
        var start = outer instanceof MappingNode map
                ? YamlNodes.tuple(map, spot.last())
                        .map(NodeTuple::getKeyNode)
                        .map(nodes::from)
                        .orElseThrow()
                : nodes.from(node);
        return YamlNodes.flow(outer) ? withoutInFlow(outer, start, node) : withoutLines(start, node);
    }

    private String withoutLines(int start, Node node) {
        var from = text.lastIndexOf('\n', start - 1) + 1;
        var line = text.indexOf('\n', nodes.to(node));
        return text.substring(0, from) + (line < 0 ? "" : text.substring(line + 1));
    }

    private String withoutInFlow(Node outer, int start, Node node) {
        var before = text.substring(nodes.from(outer), start);
        var comma = before.lastIndexOf(',');
        if (comma >= 0) {
            return text.substring(0, nodes.from(outer) + comma) + text.substring(nodes.to(node));
        }
        var next = text.substring(nodes.to(node)).replaceFirst("^\\s*,\\s*", "");
        return text.substring(0, start) + next;
    }

    private String end() {
        return text.contains("\r\n") ? "\r\n" : "\n";
    }
}

package fairflame.catalog.edit;

import fairflame.Refusal;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.yaml.snakeyaml.DumperOptions.FlowStyle;
import org.yaml.snakeyaml.DumperOptions.ScalarStyle;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.error.MarkedYAMLException;
import org.yaml.snakeyaml.nodes.CollectionNode;
import org.yaml.snakeyaml.nodes.MappingNode;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.NodeTuple;
import org.yaml.snakeyaml.nodes.ScalarNode;
import org.yaml.snakeyaml.nodes.SequenceNode;

/** The parsed shape of a YAML text and where in the text each piece stands. */
final class YamlNodes {
    private static final String ID = "id";

    private final String text;
    private final Node root;

    YamlNodes(String file, String text) {
        this.text = text;
        try {
            var composed = new Yaml(new LoaderOptions()).compose(new StringReader(text));
            if (composed == null) {
                throw Refusal.missing("content", "at least one entry").at(file);
            }
            this.root = composed;
        } catch (MarkedYAMLException e) {
            var mark = e.getProblemMark();
            throw Refusal.malformed("YAML", e.getProblem(), "well-formed YAML")
                    .at(file + (mark == null ? "" : " line " + (mark.getLine() + 1)));
        }
    }

    Node root() {
        return root;
    }

    Optional<Node> find(Spot spot) {
        var at = Optional.of(root);
        for (var step : spot.steps()) {
            at = at.flatMap(node -> child(node, step));
        }
        return at;
    }

    private static Optional<Node> child(Node node, String step) {
        if (node instanceof MappingNode map) {
            return tuple(map, step).map(NodeTuple::getValueNode);
        }
        if (node instanceof SequenceNode list) {
            var index = index(list, step);
            return index < list.getValue().size() ? Optional.of(list.getValue().get(index)) : Optional.empty();
        }
        return Optional.empty();
    }

    static Optional<NodeTuple> tuple(MappingNode map, String key) {
        return map.getValue().stream().filter(tuple -> key(tuple).equals(key)).findFirst();
    }

    static String key(NodeTuple tuple) {
        return tuple.getKeyNode() instanceof ScalarNode key ? key.getValue() : "";
    }

    /** Position of an entry by its step; the size of the list when it is not there. */
    static int index(SequenceNode list, String step) {
        for (int i = 0; i < list.getValue().size(); i++) {
            if (step(list, i).equals(step)) {
                return i;
            }
        }
        var size = list.getValue().size();
        return step.matches("\\d{1,6}") ? Math.min(Integer.parseInt(step), size) : size;
    }

    /** The id of an entry where no other of the list has the same, else its position. */
    static String step(SequenceNode list, int index) {
        var id = id(list.getValue().get(index));
        var once = id.isPresent()
                && list.getValue().stream().filter(item -> id(item).equals(id)).count() == 1;
        return once ? id.get() : String.valueOf(index);
    }

    private static Optional<String> id(Node item) {
        return item instanceof MappingNode map
                ? tuple(map, ID).map(NodeTuple::getValueNode).flatMap(YamlNodes::scalar)
                : Optional.empty();
    }

    private static Optional<String> scalar(Node node) {
        return node instanceof ScalarNode scalar ? Optional.of(scalar.getValue()) : Optional.empty();
    }

    static boolean texts(Node node) {
        return node instanceof SequenceNode list && list.getValue().stream().allMatch(ScalarNode.class::isInstance);
    }

    /** The value of a field or of a list of texts; the source text of anything else. */
    String value(Node node) {
        if (node instanceof ScalarNode scalar) {
            return scalar.getValue();
        }
        return texts(node)
                ? ((SequenceNode) node)
                        .getValue().stream()
                                .map(item -> ((ScalarNode) item).getValue())
                                .collect(Collectors.joining("\n"))
                : text.substring(from(node), to(node));
    }

    int from(Node node) {
        return text.offsetByCodePoints(0, node.getStartMark().getIndex());
    }

    /** Where the last character of a piece ends; blanks, line ends and comments behind it are not part of it. */
    int to(Node node) {
        if (node instanceof CollectionNode<?> some
                && some.getFlowStyle() == FlowStyle.BLOCK
                && !some.getValue().isEmpty()) {
            return to(lastOf(some));
        }
        var end = text.offsetByCodePoints(0, node.getEndMark().getIndex());
        while (end > from(node) && Character.isWhitespace(text.charAt(end - 1))) {
            end--;
        }
        return end;
    }

    private static Node lastOf(CollectionNode<?> some) {
        var last = some.getValue().get(some.getValue().size() - 1);
        return last instanceof NodeTuple tuple ? tuple.getValueNode() : (Node) last;
    }

    static boolean flow(Node node) {
        return node instanceof CollectionNode<?> some && some.getFlowStyle() == FlowStyle.FLOW;
    }

    /** Whether a place lies inside brackets or braces. */
    boolean insideFlow(Spot spot) {
        for (var at = spot.outer(); !at.steps().isEmpty(); at = at.outer()) {
            if (find(at).filter(YamlNodes::flow).isPresent()) {
                return true;
            }
        }
        return flow(root);
    }

    static ScalarStyle style(Node node) {
        return node instanceof ScalarNode scalar ? scalar.getScalarStyle() : ScalarStyle.PLAIN;
    }

    static int column(Node node) {
        return node.getStartMark().getColumn();
    }

    /** The bare content: maps, lists and texts, without styles and places. */
    Object content() {
        return content(root);
    }

    static Object content(Node node) {
        if (node instanceof MappingNode map) {
            var fields = new LinkedHashMap<String, Object>();
            map.getValue().forEach(tuple -> fields.put(key(tuple), content(tuple.getValueNode())));
            return fields;
        }
        if (node instanceof SequenceNode list) {
            return new ArrayList<>(
                    list.getValue().stream().map(YamlNodes::content).toList());
        }
        return ((ScalarNode) node).getValue();
    }

    List<Leaf> leaves() {
        var leaves = new ArrayList<Leaf>();
        collect(root, Spot.of(), leaves);
        return leaves;
    }

    private void collect(Node node, Spot spot, List<Leaf> leaves) {
        if (node instanceof ScalarNode
                || (texts(node) && !((SequenceNode) node).getValue().isEmpty())) {
            leaves.add(new Leaf(spot, value(node), texts(node)));
        } else if (node instanceof MappingNode map) {
            map.getValue().forEach(tuple -> collect(tuple.getValueNode(), spot.in(key(tuple)), leaves));
        } else if (node instanceof SequenceNode list) {
            for (int i = 0; i < list.getValue().size(); i++) {
                var item = list.getValue().get(i);
                collect(item, spot.in(step(list, i)), leaves);
            }
        }
    }
}

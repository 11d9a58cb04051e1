package fairflame.catalog.edit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.SequenceNode;

/** What an edit means, worked out on the bare content: the edited text has to read back as exactly this. */
final class YamlMeaning {
    private final String file;
    private final YamlNodes nodes;

    YamlMeaning(String file, YamlNodes nodes) {
        this.file = file;
        this.nodes = nodes;
    }

    /** The content that the edit is meant to give, made on the bare content and not on the text. */
    @SuppressWarnings("unchecked")
    Object of(FieldEdit edit) {
        var content = nodes.content();
        var outer = edit.spot().outer().steps().isEmpty()
                ? content
                : inside(content, edit.spot().outer());
        var step = edit.spot().last();
        var old = nodes.find(edit.spot());
        if (outer instanceof Map<?, ?> map) {
            var fields = (Map<String, Object>) map;
            edit.after().ifPresentOrElse(value -> fields.put(step, content(old, value)), () -> fields.remove(step));
        } else if (outer instanceof List<?> list) {
            var items = (List<Object>) list;
            int index = nodes.find(edit.spot().outer())
                    .map(node -> YamlNodes.index((SequenceNode) node, step))
                    .orElseThrow();
            if (edit.after().isEmpty()) {
                items.remove(index);
            } else if (old.isPresent() && edit.before().isPresent()) {
                items.set(index, content(old, edit.after().get()));
            } else {
                items.add(index, new YamlNodes(file, edit.after().get()).content());
            }
        }
        return content;
    }

    private static Object content(Optional<Node> old, String value) {
        return old.filter(YamlNodes::texts).isPresent() ? new ArrayList<Object>(YamlText.items(value)) : value;
    }

    private Object inside(Object content, Spot spot) {
        Object at = content;
        var walked = Spot.of();
        for (var step : spot.steps()) {
            var outer = walked;
            at = at instanceof LinkedHashMap<?, ?> map
                    ? Optional.<Object>ofNullable(map.get(step)).orElse("")
                    : at instanceof ArrayList<?> list
                            ? list.get(nodes.find(outer)
                                    .map(node -> YamlNodes.index((SequenceNode) node, step))
                                    .orElse(0))
                            : "";
            walked = walked.in(step);
        }
        return at;
    }
}

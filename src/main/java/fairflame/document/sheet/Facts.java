package fairflame.document.sheet;

import fairflame.Refusal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What one sheet is filled with.
 *
 * @param once values by name
 * @param each values by name for every member of a group, by group
 * @param across values of two groups at a time: for every member of the first a list over the second
 * @param holds the conditions that are true
 */
public record Facts(
        Map<String, Value> once,
        Map<String, List<Map<String, Value>>> each,
        Map<String, Across> across,
        Set<String> holds) {
    public Facts {
        once = Map.copyOf(once);
        each = Map.copyOf(each);
        across = Map.copyOf(across);
        holds = Set.copyOf(holds);
    }

    /** A table of values, such as the tax of each line by each layer. */
    public record Across(String down, String over, List<List<Value>> values) {}

    int size(String group) {
        return each.getOrDefault(group, List.of()).size();
    }

    /**
     * The value of a name where the members of some groups are being written.
     *
     * @param at number of the member by group, from 0
     */
    Value value(String name, Map<String, Integer> at) {
        var table = across.get(name);
        if (table != null) {
            return table.values().get(member(at, table.down())).get(member(at, table.over()));
        }
        for (var group : at.entrySet()) {
            var members = each.getOrDefault(group.getKey(), List.of());
            if (group.getValue() < members.size()
                    && members.get(group.getValue()).containsKey(name)) {
                return Optional.ofNullable(members.get(group.getValue()).get(name))
                        .orElseThrow();
            }
        }
        return Optional.ofNullable(once.get(name)).orElseThrow(() -> none(name));
    }

    private static int member(Map<String, Integer> at, String group) {
        return Optional.ofNullable(at.get(group)).orElseThrow(() -> none(group));
    }

    private static Refusal none(String name) {
        return Refusal.missing("value of {" + name + "}", "a row or column that is left out where there is none");
    }
}

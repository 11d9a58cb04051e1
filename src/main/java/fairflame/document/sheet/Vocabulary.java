package fairflame.document.sheet;

import fairflame.Refusal;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * The names that one sheet of a template may use.
 *
 * @param names each name with the groups it is repeated for; none when it stands once
 * @param conditions what a row or column may depend on
 * @param required names that the sheet has to show, because the paper would be wrong without
 */
public record Vocabulary(Map<String, Set<String>> names, Set<String> conditions, Set<String> required) {
    public Vocabulary {
        names = Map.copyOf(names);
        conditions = Set.copyOf(conditions);
        required = Set.copyOf(required);
    }

    public static Vocabulary of(String... once) {
        return new Vocabulary(Map.of(), Set.of(), Set.of()).with("", once);
    }

    /** More names, repeated for a group ({@code line}), for two at a time ({@code line, tax}), or once. */
    public Vocabulary with(String groups, String... more) {
        var all = new LinkedHashMap<>(names);
        var set = groups.isEmpty() ? Set.<String>of() : Set.of(groups.split(", "));
        for (var name : more) {
            all.put(name, set);
        }
        return new Vocabulary(all, conditions, required);
    }

    public Vocabulary depending(String... more) {
        return new Vocabulary(names, Set.of(more), required);
    }

    public Vocabulary requiring(String... more) {
        var all = new LinkedHashSet<>(required);
        all.addAll(Set.of(more));
        return new Vocabulary(names, conditions, all);
    }

    /** All names and conditions of both; what the other requires is not required here. */
    public Vocabulary and(Vocabulary other) {
        var all = new LinkedHashMap<>(names);
        all.putAll(other.names);
        var depend = new HashSet<>(conditions);
        depend.addAll(other.conditions);
        return new Vocabulary(all, depend, required);
    }

    Set<String> groups() {
        return names.values().stream().flatMap(Set::stream).collect(Collectors.toSet());
    }

    /** The groups that a placeholder has to be repeated for; refused when nobody knows the name. */
    Set<String> groups(String name) {
        var groups = names.get(name);
        if (groups == null) {
            throw Refusal.unknown("placeholder", name, near(name));
        }
        return groups;
    }

    void check(String condition) {
        if (!conditions.contains(condition)) {
            throw Refusal.unknown("condition", condition, listed(conditions));
        }
    }

    void checkGroup(String group) {
        if (!groups().contains(group)) {
            throw Refusal.unknown("repetition for each", group, listed(groups()));
        }
    }

    // All names of a sheet are above a hundred; those of the same family are what was meant.
    private String near(String name) {
        var family = name.contains(".") ? name.substring(0, name.indexOf('.') + 1) : "";
        var same = names.keySet().stream()
                .filter(each -> !family.isEmpty() && each.startsWith(family))
                .collect(Collectors.toSet());
        return same.isEmpty()
                ? listed(names.keySet().stream()
                        .filter(each -> !each.startsWith("words."))
                        .collect(Collectors.toSet()))
                : listed(same);
    }

    private static String listed(Set<String> words) {
        return words.isEmpty() ? "none on this sheet" : words.stream().sorted().collect(Collectors.joining(", "));
    }
}

package fairflame.agreement;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import fairflame.Refusal;
import fairflame.quote.LeftOutWhenEmpty;
import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** Builds a record from a tree of JSON; every field has to be there and no other. */
final class CanonicalReader {
    private CanonicalReader() {}

    static <T> T read(Class<T> type, JsonNode node) {
        return type.cast(record(type, node));
    }

    private static Object value(Type type, JsonNode node) {
        if (type instanceof ParameterizedType generic) {
            return container((Class<?>) generic.getRawType(), generic.getActualTypeArguments(), node);
        }
        var plain = (Class<?>) type;
        if (plain.isRecord() || plain.isSealed()) {
            return record(plain, node);
        }
        return CanonicalScalars.read(plain, node);
    }

    private static Object container(Class<?> raw, Type[] of, JsonNode node) {
        if (raw == Optional.class) {
            return node.isNull() ? Optional.empty() : Optional.of(value(of[0], node));
        }
        if (raw == Map.class) {
            return map(of[0], of[1], node);
        }
        var items = list(of[0], node);
        if (raw == List.class) {
            return items;
        }
        if (raw == Set.class) {
            return new HashSet<>(items);
        }
        throw new IllegalStateException("no canonical form for " + raw);
    }

    private static List<Object> list(Type of, JsonNode node) {
        if (!node.isArray()) {
            throw Refusal.malformed("value", node, "a list");
        }
        var items = new ArrayList<>();
        for (int i = 0; i < node.size(); i++) {
            items.add(placed("[" + i + "]", of, node.get(i)));
        }
        return items;
    }

    private static Map<Object, Object> map(Type key, Type of, JsonNode node) {
        refuseUnlessObject(node);
        var map = new LinkedHashMap<>();
        node.properties()
                .forEach(entry -> map.put(
                        CanonicalScalars.key((Class<?>) key, entry.getKey()),
                        placed(entry.getKey(), of, entry.getValue())));
        return map;
    }

    private static Object record(Class<?> type, JsonNode node) {
        refuseUnlessObject(node);
        var chosen = type.isRecord() ? type : caseOf(type, node);
        var components = chosen.getRecordComponents();
        refuseOtherFields(chosen, components, node);
        var arguments = Arrays.stream(components)
                .map(component -> component(component, node))
                .toArray();
        return make(chosen, components, arguments);
    }

    private static Object component(RecordComponent component, JsonNode node) {
        var name = component.getName();
        var usual = CanonicalWriter.usual(component);
        return usual.isPresent() && !node.has(name)
                ? usual.get()
                : placed(name, component.getGenericType(), field(component, node));
    }

    /** What stands under the name of a component; what is left out when empty stands there as empty. */
    private static JsonNode field(RecordComponent component, JsonNode node) {
        var found = node.get(component.getName());
        if (found == null) {
            return component.getType() == Optional.class
                    ? JsonNodeFactory.instance.nullNode()
                    : JsonNodeFactory.instance.arrayNode();
        }
        return found;
    }

    private static Class<?> caseOf(Class<?> sealed, JsonNode node) {
        var name = node.path(CanonicalWriter.CASE).asText();
        return Arrays.stream(sealed.getPermittedSubclasses())
                .filter(candidate -> candidate.getSimpleName().equals(name))
                .findFirst()
                .orElseThrow(() -> Refusal.unknown(
                        "case of " + sealed.getSimpleName(),
                        name,
                        Arrays.stream(sealed.getPermittedSubclasses())
                                .map(Class::getSimpleName)
                                .collect(Collectors.joining(", "))));
    }

    private static void refuseUnlessObject(JsonNode node) {
        if (!node.isObject()) {
            throw Refusal.malformed("value", node, "an object");
        }
    }

    private static void refuseOtherFields(Class<?> type, RecordComponent[] components, JsonNode node) {
        var expected =
                Arrays.stream(components).map(RecordComponent::getName).collect(Collectors.toCollection(TreeSet::new));
        if (CanonicalWriter.isCase(type)) {
            expected.add(CanonicalWriter.CASE);
        }
        var met = new TreeSet<String>();
        node.fieldNames().forEachRemaining(met::add);
        var missing = new TreeSet<>(expected);
        missing.removeAll(met);
        Arrays.stream(components)
                .filter(component -> component.isAnnotationPresent(LeftOutWhenEmpty.class)
                        || CanonicalWriter.usual(component).isPresent())
                .forEach(component -> missing.remove(component.getName()));
        if (!missing.isEmpty()) {
            throw Refusal.missing("field " + String.join(", ", missing), "all fields of a " + type.getSimpleName());
        }
        met.removeAll(expected);
        if (!met.isEmpty()) {
            throw Refusal.unknown("field", String.join(", ", met), String.join(", ", expected));
        }
    }

    private static Object placed(String place, Type type, JsonNode node) {
        try {
            return value(type, node);
        } catch (Refusal refusal) {
            throw refusal.at(place);
        }
    }

    private static Object make(Class<?> type, RecordComponent[] components, Object[] arguments) {
        try {
            var types = Arrays.stream(components).map(RecordComponent::getType).toArray(Class<?>[]::new);
            Constructor<?> constructor = type.getDeclaredConstructor(types);
            return constructor.newInstance(arguments);
        } catch (InvocationTargetException e) {
            if (e.getCause() instanceof Refusal refusal) {
                throw refusal;
            }
            throw Refusal.malformed(type.getSimpleName(), String.valueOf(e.getCause()), "values that belong together");
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException("cannot make " + type, e);
        }
    }
}

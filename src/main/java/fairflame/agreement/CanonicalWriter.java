package fairflame.agreement;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.BooleanNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.LongNode;
import com.fasterxml.jackson.databind.node.NullNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.TextNode;
import fairflame.quote.LeftOutWhenEmpty;
import fairflame.quote.Usually;
import java.lang.reflect.RecordComponent;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.jspecify.annotations.Nullable;

/** Walks a record and what it holds into a tree of JSON. */
final class CanonicalWriter {
    /** Name that tells which case of a sealed type a record is. */
    static final String CASE = "is";

    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    private CanonicalWriter() {}

    static ObjectNode tree(Record thing) {
        var node = NODES.objectNode();
        for (var component : thing.getClass().getRecordComponents()) {
            var held = of(thing, component);
            if (!isLeftOut(component, held)) {
                node.set(component.getName(), value(held));
            }
        }
        if (isCase(thing.getClass())) {
            node.put(CASE, thing.getClass().getSimpleName());
        }
        return node;
    }

    private static boolean isLeftOut(RecordComponent component, Object value) {
        var empty = component.isAnnotationPresent(LeftOutWhenEmpty.class)
                && ((value instanceof Optional<?> optional && optional.isEmpty())
                        || (value instanceof Collection<?> some && some.isEmpty()));
        return empty || usual(component).filter(value::equals).isPresent();
    }

    /** The value with which a component is left out; empty for one that always stands. */
    static Optional<String> usual(RecordComponent component) {
        return Optional.ofNullable(component.getAnnotation(Usually.class)).map(Usually::value);
    }

    /** Whether a record is one case of a sealed type. */
    static boolean isCase(Class<?> type) {
        for (var parent : type.getInterfaces()) {
            if (parent.isSealed()) {
                return true;
            }
        }
        return false;
    }

    private static JsonNode value(@Nullable Object value) {
        if (value instanceof Record inner) {
            return tree(inner);
        }
        if (value instanceof Optional<?> optional) {
            return optional.map(CanonicalWriter::value).orElse(NullNode.getInstance());
        }
        if (value instanceof Set<?> set) {
            return array(sorted(set));
        }
        if (value instanceof List<?> list) {
            return array(list.stream().map(CanonicalWriter::value).toList());
        }
        if (value instanceof Map<?, ?> map) {
            return object(map);
        }
        return scalar(value);
    }

    private static JsonNode scalar(@Nullable Object value) {
        if (value instanceof Boolean flag) {
            return BooleanNode.valueOf(flag);
        }
        if (value instanceof Integer || value instanceof Long) {
            return LongNode.valueOf(((Number) value).longValue());
        }
        return TextNode.valueOf(text(value));
    }

    private static String text(@Nullable Object value) {
        if (value instanceof String text) {
            return text;
        }
        if (value instanceof BigDecimal decimal) {
            return decimal.toPlainString();
        }
        if (value instanceof OffsetDateTime time) {
            return DateTimeFormatter.ISO_OFFSET_DATE_TIME.format(time);
        }
        if (value instanceof Enum<?> constant) {
            return constant.name();
        }
        if (value instanceof CurrencyUnit currency) {
            return currency.getCode();
        }
        if (value instanceof Money || value instanceof LocalDate || value instanceof Double) {
            return value.toString();
        }
        throw new IllegalStateException("no canonical form for " + (value == null ? "null" : value.getClass()));
    }

    private static ArrayNode array(Collection<JsonNode> items) {
        return NODES.arrayNode().addAll(items);
    }

    /** A set has no order of its own: its items stand in the order of their bytes as text. */
    private static List<JsonNode> sorted(Set<?> set) {
        return set.stream()
                .map(CanonicalWriter::value)
                .sorted(Comparator.comparing(JsonNode::toString))
                .toList();
    }

    private static ObjectNode object(Map<?, ?> map) {
        var node = NODES.objectNode();
        map.forEach((key, value) -> node.set(text(key), value(value)));
        return node;
    }

    private static Object of(Record thing, RecordComponent component) {
        try {
            return component.getAccessor().invoke(thing);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException("cannot read " + component, e);
        }
    }
}

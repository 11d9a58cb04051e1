package fairflame.agreement;

import com.fasterxml.jackson.databind.JsonNode;
import fairflame.Refusal;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.Arrays;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/** Reads the values that a record holds directly. */
final class CanonicalScalars {
    private static final Map<Class<?>, Function<String, Object>> TEXTS = Map.of(
            String.class, text -> text,
            BigDecimal.class, BigDecimal::new,
            double.class, Double::valueOf,
            Money.class, Money::parse,
            CurrencyUnit.class, CurrencyUnit::of,
            LocalDate.class, LocalDate::parse,
            OffsetDateTime.class, OffsetDateTime::parse);

    private CanonicalScalars() {}

    static Object read(Class<?> type, JsonNode node) {
        if (type == boolean.class) {
            return required(node.isBoolean(), node, "true or false").booleanValue();
        }
        if (type == int.class || type == Integer.class) {
            return required(node.canConvertToInt() && node.isIntegralNumber(), node, "a whole number")
                    .intValue();
        }
        if (type == long.class) {
            return required(node.canConvertToLong() && node.isIntegralNumber(), node, "a whole number")
                    .longValue();
        }
        return text(type, required(node.isTextual(), node, "text").textValue());
    }

    static Object key(Class<?> type, String text) {
        return text(type, text);
    }

    private static Object text(Class<?> type, String text) {
        if (type.isEnum()) {
            return constant(type, text);
        }
        var reader = TEXTS.get(type);
        if (reader == null) {
            throw new IllegalStateException("no canonical form for " + type);
        }
        try {
            return reader.apply(text);
        } catch (RuntimeException e) {
            throw Refusal.malformed("value", text, "a " + type.getSimpleName() + " in its canonical form");
        }
    }

    private static Object constant(Class<?> type, String name) {
        var constants = type.getEnumConstants();
        return Arrays.stream(constants)
                .filter(constant -> ((Enum<?>) constant).name().equals(name))
                .findFirst()
                .orElseThrow(() -> Refusal.unknown(
                        type.getSimpleName(),
                        name,
                        Arrays.stream(constants).map(Object::toString).collect(Collectors.joining(", "))));
    }

    private static JsonNode required(boolean holds, JsonNode node, String allowed) {
        if (!holds) {
            throw Refusal.malformed("value", node, allowed);
        }
        return node;
    }
}

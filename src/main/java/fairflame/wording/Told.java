package fairflame.wording;

import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;

/**
 * Walks a record and everything it holds. Whatever is marked {@link Spoken} can be put into another language or listed; all
 * else stays as it is.
 */
public final class Told {
    private final UnaryOperator<String> saying;

    private Told(UnaryOperator<String> saying) {
        this.saying = saying;
    }

    /** The same record with its spoken texts in the language of this wording. */
    public static <T extends Record> T in(Wording wording, T record) {
        if (wording.isEnglish()) {
            return record;
        }
        @SuppressWarnings("unchecked")
        var told = (T) new Told(wording::of).record(record);
        return told;
    }

    /** Every spoken text of a record that is not blank, each once, in the order of its components. */
    public static List<String> texts(Record record) {
        var heard = new LinkedHashSet<String>();
        new Told(text -> {
                    heard.add(text);
                    return text;
                })
                .record(record);
        return List.copyOf(heard);
    }

    private Record record(Record record) {
        var components = record.getClass().getRecordComponents();
        var values = new Object[components.length];
        boolean changed = false;
        for (int i = 0; i < components.length; i++) {
            var before = read(record, components[i]);
            var spoken = components[i].isAnnotationPresent(Spoken.class);
            values[i] = value(before, spoken);
            changed |= !values[i].equals(before);
        }
        return changed ? make(record.getClass(), components, values) : record;
    }

    private Object value(Object value, boolean spoken) {
        if (value instanceof Record inner) {
            return record(inner);
        }
        if (value instanceof String text) {
            return spoken && !text.isBlank() ? saying.apply(text) : text;
        }
        if (value instanceof Optional<?> optional) {
            return optional.map(inner -> value(inner, spoken));
        }
        if (value instanceof Map<?, ?> map) {
            var told = new LinkedHashMap<Object, Object>();
            map.forEach((key, inner) -> told.put(key, value(inner, spoken)));
            return told;
        }
        if (value instanceof Set<?> set) {
            return new LinkedHashSet<>(each(set, spoken));
        }
        return value instanceof List<?> list ? each(list, spoken) : value;
    }

    private List<Object> each(Collection<?> items, boolean spoken) {
        var told = new ArrayList<Object>();
        items.forEach(item -> told.add(value(item, spoken)));
        return told;
    }

    private static Object read(Record record, RecordComponent component) {
        try {
            var accessor = component.getAccessor();
            accessor.setAccessible(true);
            return accessor.invoke(record);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException("cannot read " + component, e);
        }
    }

    private static Record make(Class<? extends Record> type, RecordComponent[] components, Object[] values) {
        try {
            var types = Arrays.stream(components).map(RecordComponent::getType).toArray(Class<?>[]::new);
            Constructor<? extends Record> constructor = type.getDeclaredConstructor(types);
            constructor.setAccessible(true);
            return constructor.newInstance(values);
        } catch (InvocationTargetException e) {
            if (e.getCause() instanceof RuntimeException refused) {
                throw refused;
            }
            throw new IllegalStateException("cannot make " + type, e);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException("cannot make " + type, e);
        }
    }
}

package fairflame.store;

import fairflame.Refusal;
import fairflame.agreement.CanonicalForm;

/**
 * How a thing becomes the bytes that are stored and back. The same thing always gives the same bytes, because stored
 * bytes are compared and sealed.
 */
public interface Body<T> {
    byte[] write(T thing);

    T read(byte[] bytes);

    /** The form of {@link CanonicalForm}, which reads nothing but what it wrote. */
    static <T extends Record> Body<T> canonical(Class<T> type) {
        return new Body<>() {
            @Override
            public byte[] write(T thing) {
                return CanonicalForm.write(thing);
            }

            @Override
            public T read(byte[] bytes) {
                try {
                    return CanonicalForm.read(type, bytes);
                } catch (Refusal refusal) {
                    throw refusal.at("stored " + type.getSimpleName());
                }
            }
        };
    }
}

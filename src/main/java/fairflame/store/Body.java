package fairflame.store;

/**
 * How a thing becomes the bytes that are stored and back. The same thing always gives the same bytes, because stored
 * bytes are compared and sealed.
 */
public interface Body<T> {
    byte[] write(T thing);

    T read(byte[] bytes);
}

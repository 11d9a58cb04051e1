package fairflame.store;

/** A fault of the program itself met while storing or reading. What a user can mend is a {@link fairflame.Refusal}. */
public final class StoreException extends RuntimeException {
    StoreException(String message, Throwable cause) {
        super(message, cause);
    }
}

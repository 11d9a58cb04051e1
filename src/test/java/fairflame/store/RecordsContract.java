package fairflame.store;

import static fairflame.store.Samples.OFFICE;

import fairflame.agreement.SignedRevision;
import fairflame.quote.Quote;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.Proxy;
import java.nio.file.Path;
import java.util.function.BiFunction;
import java.util.function.Consumer;
import java.util.function.Function;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;

/** A fresh database of its own for each test of what is stored. */
abstract class RecordsContract {
    @TempDir
    Path folder;

    Store store;

    @BeforeEach
    void open() {
        store = Store.open(folder.resolve("shop.db"));
    }

    @AfterEach
    void close() {
        store.close();
    }

    void change(Consumer<Records> work) {
        store.change(OFFICE, work);
    }

    <T> T make(Function<Records, T> work) {
        return store.inTransaction(OFFICE, work);
    }

    /** What is stored, each question asked in a reading transaction of its own. */
    Records seen() {
        return proxy(
                Records.class,
                (shelf, none) -> proxy(
                        shelf.getReturnType(),
                        (question, arguments) ->
                                store.reading(records -> asked(question, asked(shelf, records), arguments))));
    }

    private static <T> T proxy(Class<T> type, BiFunction<Method, Object[], Object> answer) {
        return type.cast(Proxy.newProxyInstance(
                type.getClassLoader(), new Class<?>[] {type}, (proxy, method, given) -> answer.apply(method, given)));
    }

    private static Object asked(Method method, Object of, Object... arguments) {
        try {
            return method.invoke(of, arguments);
        } catch (InvocationTargetException e) {
            if (e.getCause() instanceof RuntimeException fault) {
                throw fault;
            }
            throw new AssertionError(e.getCause());
        } catch (IllegalAccessException e) {
            throw new AssertionError(e);
        }
    }

    /** A stored quote, its visit before it. */
    Quote quoted() {
        return make(records -> {
            records.visits().save(Samples.VISIT);
            return records.quotes().issue("Q", 2026, number -> Samples.quote(number, 1));
        });
    }

    /** A stored quote, signed. */
    SignedRevision signed() {
        var quote = quoted();
        return make(records -> {
            var signed = Samples.signed(quote, records.chain().last());
            records.agreements().add(signed);
            return signed;
        });
    }
}

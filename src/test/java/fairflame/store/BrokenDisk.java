package fairflame.store;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.Proxy;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.sql.Statement;
import org.sqlite.SQLiteErrorCode;
import org.sqlite.SQLiteException;

/** Lets chosen statements of a connection fail, as a disk would that breaks just then. */
final class BrokenDisk {
    private long failFrom = Long.MAX_VALUE;
    private long failUpTo = Long.MAX_VALUE;
    private long seen;
    private boolean afterwards;

    /** From now on the n-th statement fails, counted from 1, before it is run. */
    void failAt(long n) {
        fail(n, n, false);
    }

    /** From now on the n-th statement and all after it fail. */
    void failFrom(long n) {
        fail(n, Long.MAX_VALUE - 1, false);
    }

    /** From now on the n-th statement is run, and yet reported as failed. */
    void failAfter(long n) {
        fail(n, n, true);
    }

    void heal() {
        fail(Long.MAX_VALUE, Long.MAX_VALUE, false);
    }

    private void fail(long from, long upTo, boolean late) {
        seen = 0;
        failFrom = from;
        failUpTo = upTo;
        afterwards = late;
    }

    /** Whether a statement has failed since it was told to. */
    boolean hasFailed() {
        return seen >= failFrom;
    }

    Connection wrap(Connection connection) {
        return proxy(Connection.class, connection, (method, result) -> switch (method.getName()) {
            case "prepareStatement" -> proxy(PreparedStatement.class, result, (inner, value) -> value);
            case "createStatement" -> proxy(Statement.class, result, (inner, value) -> value);
            default -> result;
        });
    }

    private <T> T proxy(Class<T> type, Object target, Result result) {
        return type.cast(Proxy.newProxyInstance(type.getClassLoader(), new Class<?>[] {type}, (self, method, given) -> {
            boolean statement = method.getName().startsWith("execute");
            boolean failing = statement && ++seen >= failFrom && seen <= failUpTo;
            if (failing && !afterwards) {
                throw broken();
            }
            var value = invoked(method, target, given);
            if (failing) {
                throw broken();
            }
            return result.of(method, value);
        }));
    }

    private static Object invoked(Method method, Object target, Object[] given) throws Throwable {
        try {
            return method.invoke(target, given);
        } catch (InvocationTargetException e) {
            throw e.getCause();
        }
    }

    private static SQLException broken() {
        return new SQLiteException("broken on purpose", SQLiteErrorCode.SQLITE_IOERR);
    }

    /** What is handed out instead of a result. */
    private interface Result {
        Object of(Method method, Object value);
    }
}

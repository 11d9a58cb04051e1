package fairflame.screen;

import fairflame.visit.Progress;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Proxy;
import java.util.Arrays;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicInteger;

/** A shop of which one act takes until it is let go; everything else is as quick as it is. */
final class SlowWork {
    private final ScreenWork quick;
    private final String act;
    private final boolean late;
    private final CountDownLatch free = new CountDownLatch(1);
    private final CountDownLatch there = new CountDownLatch(1);
    private final AtomicInteger asked = new AtomicInteger();

    /**
     * A shop with a slow act.
     *
     * @param late true when the act is slow after it is done, where it cannot be ended any more; false when before
     */
    SlowWork(ScreenWork quick, String act, boolean late) {
        this.quick = quick;
        this.act = act;
        this.late = late;
    }

    ScreenWork shop() {
        return (ScreenWork) Proxy.newProxyInstance(
                SlowWork.class.getClassLoader(), new Class<?>[] {ScreenWork.class}, (proxy, method, arguments) -> {
                    var slow = method.getName().equals(act);
                    if (slow) {
                        asked.incrementAndGet();
                    }
                    if (slow && !late) {
                        waits(progress(arguments));
                    }
                    try {
                        return method.invoke(quick, arguments);
                    } catch (InvocationTargetException thrown) {
                        throw thrown.getCause();
                    } finally {
                        if (slow && late) {
                            waits(Progress.UNWATCHED);
                        }
                    }
                });
    }

    private static Progress progress(Object[] arguments) {
        return (Progress) Arrays.stream(arguments)
                .filter(Progress.class::isInstance)
                .findFirst()
                .orElseThrow();
    }

    private void waits(Progress progress) throws InterruptedException {
        there.countDown();
        for (int i = 0; !free.await(5, java.util.concurrent.TimeUnit.MILLISECONDS); i++) {
            progress.at(i % 100, 100);
        }
    }

    /** Waits until the act is where it takes its time. */
    void awaitThere() {
        try {
            if (!there.await(60, java.util.concurrent.TimeUnit.SECONDS)) {
                throw new AssertionError("nobody asked for " + act);
            }
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }

    /** From now on the act is quick. */
    void letGo() {
        free.countDown();
    }

    /** How often the act was asked for. */
    int asked() {
        return asked.get();
    }
}

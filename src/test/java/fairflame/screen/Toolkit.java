package fairflame.screen;

import fairflame.screen.look.Fonts;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.FutureTask;
import java.util.concurrent.TimeUnit;
import javafx.application.Platform;

/** The window thread of the tests: started once, work is handed to it and waited for. */
public final class Toolkit {
    private static final int PATIENCE_SECONDS = 240;
    private static boolean running;

    private Toolkit() {}

    public static synchronized void start() {
        if (running) {
            return;
        }
        var up = new CountDownLatch(1);
        try {
            Platform.startup(up::countDown);
        } catch (IllegalStateException alreadyStarted) {
            up.countDown();
        }
        Platform.setImplicitExit(false);
        try {
            if (!up.await(PATIENCE_SECONDS, TimeUnit.SECONDS)) {
                throw new IllegalStateException("the window toolkit did not start");
            }
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
        Fonts.load();
        running = true;
    }

    /** Runs on the window thread and gives its result; what it throws is thrown here. */
    public static <T> T on(Callable<T> work) {
        start();
        var task = new FutureTask<>(work);
        Platform.runLater(task);
        try {
            return task.get(PATIENCE_SECONDS, TimeUnit.SECONDS);
        } catch (java.util.concurrent.ExecutionException e) {
            if (e.getCause() instanceof RuntimeException runtime) {
                throw runtime;
            }
            if (e.getCause() instanceof Error error) {
                throw error;
            }
            throw new IllegalStateException(e.getCause());
        } catch (InterruptedException | java.util.concurrent.TimeoutException e) {
            throw new IllegalStateException(e);
        }
    }

    public static void run(Runnable work) {
        on(() -> {
            work.run();
            return true;
        });
    }

    /** Waits until no work runs beside the window, and until what it did is told; that may begin other work. */
    public static void awaitWork() {
        while (true) {
            run(() -> {});
            var working = Thread.getAllStackTraces().keySet().stream()
                    .filter(thread -> thread.getName().equals("fairflame-work"))
                    .toList();
            if (working.isEmpty()) {
                run(() -> {});
                return;
            }
            for (var thread : working) {
                try {
                    thread.join(PATIENCE_SECONDS * 1000L);
                } catch (InterruptedException e) {
                    throw new IllegalStateException(e);
                }
            }
        }
    }

    /** As {@link #awaitWork}, on the window's thread, which goes on meanwhile. */
    public static void awaitWorkHere() {
        var waiting = new Object();
        new Thread(() -> {
                    awaitWork();
                    Platform.runLater(() -> Platform.exitNestedEventLoop(waiting, waiting));
                })
                .start();
        Platform.enterNestedEventLoop(waiting);
    }

    /** Waits until no work runs and the window thread has drawn what was asked of it. */
    public static void settle() {
        awaitWork();
        drawn();
    }

    /** Waits until the window thread has drawn what was asked of it, whatever runs beside it. */
    public static void drawn() {
        for (int i = 0; i < 3; i++) {
            var pulse = new CountDownLatch(1);
            Platform.runLater(() -> {
                Platform.requestNextPulse();
                new javafx.animation.AnimationTimer() {
                    @Override
                    public void handle(long now) {
                        stop();
                        pulse.countDown();
                    }
                }.start();
            });
            try {
                pulse.await(PATIENCE_SECONDS, TimeUnit.SECONDS);
            } catch (InterruptedException e) {
                throw new IllegalStateException(e);
            }
        }
    }
}

package fairflame.screen;

import fairflame.screen.bench.BenchModel;
import fairflame.screen.bench.Draft;
import fairflame.screen.bench.Drafting;
import fairflame.screen.bench.Steps;
import fairflame.screen.look.Look;
import java.io.PrintStream;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.file.Files;
import java.util.Arrays;
import java.util.Locale;
import java.util.concurrent.CountDownLatch;
import javafx.animation.AnimationTimer;
import javafx.application.Platform;
import javafx.scene.Scene;
import javafx.stage.Stage;

/**
 * Times one keystroke into a reading on the bench of each demo visit and of a visit with a large gas line: what is kept,
 * judged and priced without a window, and with the window until the frame with the new paper was drawn; beside the clock the
 * processor time of the window's thread, which does not hang on what else the machine does. Run with the
 * display-free settings of the tests; figures in docs/measurements.md.
 */
public final class KeystrokeTime {
    private static final int WARM = 600;
    private static final int ROUNDS = 120;
    private static final double MILLION = 1e6;
    private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();

    private final PrintStream out;

    private KeystrokeTime(PrintStream out) {
        this.out = out;
    }

    public static void main(String[] arguments) throws Exception {
        var timing = new KeystrokeTime(System.out);
        Toolkit.start();
        timing.out.println("visit, step: median (95 in 100) milliseconds");
        for (int visit = 1; visit <= 3; visit++) {
            timing.visit("demo visit " + visit, Shop.demo(visit), visit == 2 ? "gas-firing" : "valve-low");
        }
        timing.visit("visit 2 with a line of 50 runs", LargeLine.on(Shop.demo(2), 50), "gas-firing");
        timing.visit("visit 4, stopped", Shop.demo(4), "valve-low");
        System.exit(0);
    }

    private void visit(String name, Draft draft, String check) throws Exception {
        var folder = Files.createTempDirectory("keystrokes");
        try (var workplace = Shop.in(folder)) {
            var work = new WorkplaceScreens(workplace, true);
            work.keep(draft);
            report(name, "kept", time(index -> work.keep(typed(draft, check, index))));
            report(name, "judged and priced", time(index -> judge(work, typed(draft, check, index))));
            window(name, work, draft, check);
        }
    }

    private static void judge(WorkplaceScreens work, Draft draft) {
        work.judge(Drafting.visitText(draft));
    }

    private void window(String name, WorkplaceScreens work, Draft draft, String check) throws Exception {
        var shell = new ShellModel(work);
        shell.open(draft.get("id"));
        var bench = shell.bench().get().orElseThrow();
        var stage = Toolkit.on(() -> {
            var look = new Look();
            var scene = new Scene(new Shell(shell, look, details -> {}), 1280, 800);
            look.dress(scene);
            var window = new Stage();
            window.setScene(scene);
            window.show();
            bench.step().set(Steps.ofCheck(check));
            return window;
        });
        Toolkit.settle();
        var onThread = new double[ROUNDS];
        var drawn = new double[ROUNDS];
        var worked = new double[ROUNDS];
        for (int i = -WARM; i < ROUNDS; i++) {
            var round = stroke(stage.getScene(), bench, field(draft, check), value(i));
            if (i >= 0) {
                onThread[i] = round[0];
                drawn[i] = round[1];
                worked[i] = round[2];
            }
        }
        report(name, "until it is laid out", onThread);
        report(name, "work of that thread for it", worked);
        report(name, "until its frame was drawn", drawn);
        Toolkit.run(stage::hide);
    }

    /** Milliseconds until the window's thread has laid the new paper out, and until the pulse that draws it is over. */
    private static double[] stroke(Scene scene, BenchModel bench, String field, String value) throws Exception {
        var over = new CountDownLatch(1);
        var times = new double[3];
        Platform.runLater(() -> {
            var start = System.nanoTime();
            var work = THREADS.getCurrentThreadCpuTime();
            bench.typed(field).set(value);
            // What the next frame would do first: then the new paper stands where it will be drawn.
            scene.getRoot().applyCss();
            scene.getRoot().layout();
            times[0] = (System.nanoTime() - start) / MILLION;
            new AnimationTimer() {
                private int frames;

                @Override
                public void handle(long now) {
                    // The first pulse lays out and draws; the second starts when that is done.
                    if (++frames == 1) {
                        Platform.requestNextPulse();
                    } else {
                        stop();
                        times[1] = (System.nanoTime() - start) / MILLION;
                        times[2] = (THREADS.getCurrentThreadCpuTime() - work) / MILLION;
                        over.countDown();
                    }
                }
            }.start();
            Platform.requestNextPulse();
        });
        over.await();
        return times;
    }

    private static String field(Draft draft, String check) {
        return "reading." + draft.last("reading", "check", check).orElseThrow() + ".value";
    }

    /** Two values in turn, as a finger that types and takes back the last digit. */
    private static String value(int index) {
        return index % 2 == 0 ? "6." + Math.floorMod(index, 10) : "6." + Math.floorMod(index, 10) + "5";
    }

    private static Draft typed(Draft draft, String check, int index) {
        return draft.with(field(draft, check), value(index));
    }

    private interface Round {
        void run(int index);
    }

    private static double[] time(Round round) {
        var times = new double[ROUNDS];
        for (int i = -WARM; i < ROUNDS; i++) {
            var start = System.nanoTime();
            round.run(i);
            if (i >= 0) {
                times[i] = (System.nanoTime() - start) / MILLION;
            }
        }
        return times;
    }

    private void report(String visit, String step, double[] times) {
        var sorted = times.clone();
        Arrays.sort(sorted);
        out.printf(
                Locale.ROOT,
                "%-32s %-28s %6.1f (%.1f)%n",
                visit,
                step,
                sorted[sorted.length / 2],
                sorted[sorted.length * 95 / 100]);
    }
}

package fairflame.screen;

import fairflame.screen.bench.BenchModel;
import fairflame.screen.bench.Draft;
import fairflame.screen.bench.DraftHistory;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** A program of its own that types into the bench of a real shop and tells each keystroke after it was taken. */
final class TypingProgram {
    private static final List<String> FIELDS = List.of(
            "customer.name", "customer.address", "heater.description", "heater.input", "reading.1.value", "price.zone");
    private static final String LETTERS = "abcdefghijklmnopqrstuvwxyz 0123456789.\u00F1\u00E9\"\\";

    private final Process process;
    private final BufferedReader out;
    private final Draft start;
    private int told;

    private TypingProgram(Process process) throws IOException {
        this.process = process;
        this.out = new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8));
        this.start = Draft.parse(out.readLine());
    }

    /** Starts typing a new visit with keystrokes drawn from a seed. */
    static TypingProgram start(Path folder, long seed) throws IOException {
        return new TypingProgram(new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-XX:TieredStopAtLevel=1",
                        "--enable-native-access=ALL-UNNAMED",
                        "-cp",
                        System.getProperty("java.class.path"),
                        TypingProgram.class.getName(),
                        folder.toString(),
                        String.valueOf(seed))
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start());
    }

    public static void main(String[] arguments) {
        try (var workplace = Shop.in(Path.of(arguments[0]))) {
            var work = new WorkplaceScreens(workplace, true);
            var model = new BenchModel(work, work.newVisit());
            System.out.println(model.draft().text());
            var finger = new Finger(Long.parseLong(arguments[1]));
            for (int i = 1; i <= Integer.MAX_VALUE; i++) {
                finger.strike(model.history());
                System.out.println(i + ".");
                System.out.flush();
            }
        }
    }

    /** What the draft was after each of the first keystrokes of a seed, beginning with none. */
    static List<Draft> drafts(Draft start, long seed, int keystrokes) {
        var history = new DraftHistory(start, draft -> {});
        var finger = new Finger(seed);
        var all = new ArrayList<>(List.of(start));
        for (int i = 0; i < keystrokes; i++) {
            finger.strike(history);
            all.add(history.get());
        }
        return all;
    }

    /** Strikes keys drawn from a seed: letters, taking back, choosing, undo and redo. */
    private record Finger(Random random) {
        Finger(long seed) {
            this(new Random(seed));
        }

        void strike(DraftHistory history) {
            var what = random.nextInt(20);
            var field = FIELDS.get(random.nextInt(FIELDS.size()));
            var text = history.get().get(field);
            var letter = LETTERS.charAt(random.nextInt(LETTERS.length()));
            if (what == 0) {
                history.undo();
            } else if (what == 1) {
                history.redo();
            } else if (what == 2) {
                history.change(draft -> draft.with("gate.G" + (1 + (int) letter % 9), "no"));
            } else if (what < 6 && !text.isEmpty()) {
                history.type(field, text.substring(0, text.length() - 1));
            } else {
                history.type(field, text + letter);
            }
        }
    }

    /** The empty visit that it began with. */
    Draft begun() {
        return start;
    }

    /** Waits until so many keystrokes were told as taken. */
    void await(int keystrokes) throws IOException {
        while (told < keystrokes) {
            var line = out.readLine();
            if (line == null) {
                throw new AssertionError("the program ended after " + told + " keystrokes");
            }
            take(line);
        }
    }

    /** Kills the program at once and gives how many keystrokes it had told as taken. */
    int kill() throws InterruptedException {
        process.destroyForcibly().waitFor();
        try {
            out.lines().forEach(this::take);
        } catch (UncheckedIOException e) {
            // The pipe of a killed process may be closed already; what was read until now counts.
            return told;
        }
        return told;
    }

    /** A line may be cut off by the kill; then its keystroke is not taken as told. */
    private void take(String line) {
        if (line.endsWith(".")) {
            told = Integer.parseInt(line.substring(0, line.length() - 1));
        }
    }
}

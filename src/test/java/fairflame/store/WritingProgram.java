package fairflame.store;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A program of its own that stores one whole job after another and tells each after it is stored. */
final class WritingProgram {
    private static final Duration WAIT = Duration.ofSeconds(20);
    private final Process process;
    private final BufferedReader out;
    private final List<String> told = new ArrayList<>();

    private WritingProgram(Process process) {
        this.process = process;
        this.out = new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8));
    }

    static WritingProgram start(Path file, String name, int jobs) throws IOException {
        return new WritingProgram(new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-XX:TieredStopAtLevel=1",
                        "--enable-native-access=ALL-UNNAMED",
                        "-cp",
                        System.getProperty("java.class.path"),
                        WritingProgram.class.getName(),
                        file.toString(),
                        name,
                        "" + jobs)
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start());
    }

    public static void main(String[] arguments) {
        var by = new By(arguments[1], Samples.OFFICE.at());
        try (var store = Store.open(Path.of(arguments[0]), WAIT)) {
            for (int i = 1; i <= Integer.parseInt(arguments[2]); i++) {
                var id = arguments[1] + "-" + i;
                String number = store.inTransaction(by, records -> job(records, id));
                System.out.println(number);
                System.out.flush();
            }
        }
    }

    /** Stores a visit, a quote, its signature, an invoice and a payment, and tells the invoice's number. */
    private static String job(Records records, String id) {
        records.visits().save(Samples.VISIT);
        records.settings().put("job " + id, "begun");
        var quote = records.quotes().issue("Q", 2026, number -> Samples.quote(number, 1));
        var signed = Samples.signed(quote, records.chain().last());
        records.agreements().add(signed);
        var invoice = records.invoices().issue("I", 2026, number -> Samples.invoice(number, signed));
        records.payments().add(Samples.receipt("P-" + id, quote.number(), Optional.of(invoice.number()), "103.71"));
        return invoice.number();
    }

    /** Waits until so many jobs were told as stored. */
    void awaitJobs(int jobs) throws IOException {
        while (told.size() < jobs) {
            var line = out.readLine();
            if (line == null) {
                throw new AssertionError("the program ended after " + told);
            }
            told.add(line);
        }
    }

    /** Kills the program at once; returns the invoice numbers that it had told as stored. */
    List<String> kill() throws InterruptedException {
        process.destroyForcibly().waitFor();
        drain();
        return told;
    }

    /** Waits for the end; returns the invoice numbers that it told as stored. */
    List<String> end() throws InterruptedException {
        drain();
        if (process.waitFor() != 0) {
            throw new AssertionError("the program failed after " + told.size() + " jobs");
        }
        return told;
    }

    private void drain() {
        try {
            // A line may be cut off by the kill; then its job may or may not count, so it is not taken as told.
            out.lines().filter(line -> line.length() == "I-2026-0001".length()).forEach(told::add);
        } catch (UncheckedIOException e) {
            // The pipe of a killed process may be closed already; what was read until now counts.
            return;
        }
    }
}

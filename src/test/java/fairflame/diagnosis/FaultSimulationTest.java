package fairflame.diagnosis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.fail;

import fairflame.gas.Reconciliation;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Heaters with one known fault, read by technicians of every thoroughness: the finding is that fault, or stop-work, or
 * not settled; hardly ever another repair. The table of the campaign stands in docs/diagnosis-simulation.md and is
 * kept up by {@code -Dgolden.write=true}.
 */
class FaultSimulationTest {
    private static final long SEED = 20260601;
    private static final Path KEPT = Path.of("docs/diagnosis-simulation.md");

    private static final class Row {
        private int draws;
        private int right;
        private int stopped;
        private int open;
        private final Map<String, Integer> wrong = new TreeMap<>();
        private final List<String> examples = new ArrayList<>();

        int wrongs() {
            return wrong.values().stream().mapToInt(Integer::intValue).sum();
        }
    }

    /** Part of the campaign, for every build. */
    @Test
    void aFaultLeadsToItselfOrToNoRepair() {
        refuseWrong(simulated(1_000), 1_000);
    }

    /** The whole campaign: {@code mvn test -Dtests.left.out=none -Dtest=FaultSimulationTest}. */
    @Test
    @Tag("campaign")
    void tenThousandFaultsLeadToThemselvesOrToNoRepair() throws IOException {
        var rows = simulated(10_000);
        refuseWrong(rows, 10_000);
        keep(table(rows, 10_000));
    }

    private static Map<String, Row> simulated(int draws) {
        var causes = List.copyOf(Visit.KNOWLEDGE.causes());
        var rows = new TreeMap<String, Row>();
        for (int draw = 0; draw < draws; draw++) {
            var cause = causes.get(draw % causes.size());
            var random = new Random(SEED + draw);
            var row = rows.computeIfAbsent(cause.id(), any -> new Row());
            row.draws++;
            note(row, cause, visit(cause, random).finding(), draw);
        }
        return rows;
    }

    private static void refuseWrong(Map<String, Row> rows, int draws) {
        var wrong = new TreeMap<String, Object>();
        rows.forEach((id, row) -> row.examples.forEach(example -> wrong.put(id + " " + row.wrong, example)));
        assertThat(wrongs(rows)).as("wrong repairs: %s", wrong).isLessThanOrEqualTo(draws / 100);
        // A simulation that never settles anything would prove nothing.
        assertThat(rows.values().stream().mapToInt(row -> row.right).sum()).isGreaterThan(draws / 4);
    }

    private static int wrongs(Map<String, Row> rows) {
        return rows.values().stream().mapToInt(Row::wrongs).sum();
    }

    private static Visit visit(Cause cause, Random random) {
        var complaints = List.copyOf(new java.util.TreeSet<>(cause.complaints()));
        var heater = new FaultyHeater(cause.id(), random);
        var visit = Visit.of(complaints.get(random.nextInt(complaints.size()))).plate(heater.plate());
        visit.read(heater.readings(0.15 + 0.85 * random.nextDouble()).toArray(String[]::new));
        if (heater.dips() && random.nextBoolean()) {
            var loss = heater.pipe();
            var explains = loss[1] > 0.8 * 3;
            visit.pipe(
                    explains ? Reconciliation.Verdict.EXPLAINS : Reconciliation.Verdict.DOES_NOT_EXPLAIN,
                    loss[0],
                    loss[1]);
        }
        return visit;
    }

    private static void note(Row row, Cause truth, Finding finding, int draw) {
        finding.match(
                settled -> {
                    var others = settled.causes().stream()
                            .filter(cause -> !cause.cause().equals(truth.id()))
                            .filter(cause -> !truth.repairs().containsAll(cause.repairs()))
                            .toList();
                    if (others.isEmpty()) {
                        row.right++;
                    } else {
                        others.forEach(other -> row.wrong.merge(other.cause(), 1, Integer::sum));
                        row.examples.add("draw " + draw + " as " + others.get(0).cause() + " by "
                                + others.get(0).restsOn());
                    }
                    return row;
                },
                unsettled -> {
                    row.open++;
                    return row;
                },
                danger -> {
                    row.stopped++;
                    return row;
                });
    }

    private static String table(Map<String, Row> rows, int draws) {
        var text = new StringBuilder("""
                # Simulated faults

                Ten thousand heaters with one known fault each, read by technicians who take between 15 and 100 percent of all
                readings, with about one percent of instrument error. The heaters behave as pipes, wires and water do
                (`FaultyHeater` in the tests; common practice, no source), not as the rules say. "Itself" means that the
                finding is settled on the fault, or on a cause with no other repair than the fault's own. Made by
                `FaultSimulationTest`; `-Dgolden.write=true` writes it anew.

                """);
        text.append(String.format(Locale.ROOT, "Wrong repairs: %d of %,d draws.%n%n", wrongs(rows), draws));
        text.append("| fault | title | draws | itself | not settled | stop-work | another repair |\n");
        text.append("| --- | --- | --- | --- | --- | --- | --- |\n");
        rows.forEach((id, row) -> text.append(String.format(
                Locale.ROOT,
                "| %s | %s | %d | %d | %d | %d | %s |%n",
                id,
                Visit.KNOWLEDGE.cause(id).orElseThrow().title(),
                row.draws,
                row.right,
                row.open,
                row.stopped,
                row.wrong.isEmpty() ? "0" : row.wrong.toString().replaceAll("[{}]", ""))));
        return text.toString();
    }

    private static void keep(String produced) throws IOException {
        if (Boolean.getBoolean("golden.write")) {
            Files.writeString(KEPT, produced);
            fail("rewrote " + KEPT + "; review the difference and run again");
        }
        assertThat(Files.readString(KEPT)).isEqualTo(produced);
    }
}

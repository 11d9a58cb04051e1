package fairflame.catalog;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Access hours of the sample shop, invented for the demo. */
class AccessUnionTest {
    private final Shop shop = SampleFolder.shop();

    @Test
    void aSwitchNeedsThreeQuartersOfAnHourOfAccess() {
        assertThat(hours("R03")).isEqualByComparingTo("0.75");
    }

    @Test
    void tasksOfOneVisitShareEveryStep() {
        assertThat(ids("R03", "R06")).containsExactly("AX-ELEC", "AX-PANEL", "AX-DRAIN", "AX-RUN");
        assertThat(hours("R03", "R06")).isEqualByComparingTo("0.75");
    }

    @Test
    void aStepPullsInWhatItNeedsAndTheStepsThatThoseNeed() {
        // The exchanger asks for top, drain and tray; the tray for gas, panel and power.
        var bare = task("R25", List.of("AX-EXCH"));

        assertThat(AccessUnion.of(shop.access(), List.of(bare)))
                .extracting(AccessStep::id)
                .containsExactly("AX-ELEC", "AX-PANEL", "AX-TOP", "AX-GAS", "AX-DRAIN", "AX-TRAY", "AX-EXCH");
    }

    @Test
    void officeWorkNeedsNoAccess() {
        assertThat(ids("R20u", "R34")).isEmpty();
    }

    @Test
    void everyWorkAtTheHeaterEndsWithARestart() {
        assertThat(shop.tasks().stream()
                        .filter(task ->
                                !task.access().isEmpty() && !task.access().contains("AX-RUN"))
                        .map(Task::id))
                .as("a capped line is not restarted, and the open part of a line comes with its buried part")
                .containsExactly("R52", "R57");
    }

    @Test
    void orderAndRepetitionOfTasksChangeNothing() {
        var random = new Random(7);
        for (int i = 0; i < 200; i++) {
            var tasks = new ArrayList<Task>();
            for (int j = 0; j < 1 + random.nextInt(6); j++) {
                tasks.add(shop.tasks().get(random.nextInt(shop.tasks().size())));
            }
            var union = shop.accessFor(tasks);
            var turned = new ArrayList<>(tasks);
            turned.addAll(tasks);
            Collections.shuffle(turned, random);

            assertThat(shop.accessFor(turned)).as("seed 7, draw %d", i).isEqualTo(union);
            assertThat(sum(union)).as("seed 7, draw %d", i).isLessThanOrEqualTo(separately(tasks));
        }
    }

    private BigDecimal separately(List<Task> tasks) {
        return tasks.stream().map(task -> sum(shop.accessFor(List.of(task)))).reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    private static BigDecimal sum(Iterable<AccessStep> steps) {
        var sum = BigDecimal.ZERO;
        for (var step : steps) {
            sum = sum.add(step.hours());
        }
        return sum;
    }

    private BigDecimal hours(String... tasks) {
        return sum(shop.accessFor(Stream.of(tasks).map(shop::task).toList()));
    }

    private List<String> ids(String... tasks) {
        return shop.accessFor(Stream.of(tasks).map(shop::task).toList()).stream()
                .map(AccessStep::id)
                .toList();
    }

    private Task task(String like, List<String> access) {
        var task = shop.task(like);
        return new Task(
                task.id(),
                task.title(),
                task.plain(),
                task.times(),
                Set.copyOf(access),
                task.needs(),
                task.tests(),
                task.trades(),
                task.permitClass(),
                task.notes(),
                task.conflicts(),
                task.skills(),
                task.warranty(),
                task.source());
    }
}

package fairflame.screen;

import static org.assertj.core.api.Assertions.assertThat;

import fairflame.screen.bench.BenchModel;
import fairflame.screen.bench.Draft;
import fairflame.screen.kit.AtOnce;
import fairflame.screen.line.LineModel;
import fairflame.screen.line.LinePlaces;
import fairflame.visit.Workplace;
import java.nio.file.Path;
import java.util.HashSet;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The gas line drawn by hand over the real use cases, without a toolkit. */
class LineModelTest {
    @TempDir
    Path folder;

    private Workplace workplace;
    private WorkplaceScreens work;
    private BenchModel bench;
    private LineModel line;

    @BeforeEach
    void open() {
        workplace = Shop.in(folder);
        work = new WorkplaceScreens(workplace, true);
        bench = new BenchModel(work, Shop.demo(2));
        line = new LineModel(bench, work.line(), new AtOnce());
    }

    @AfterEach
    void close() {
        workplace.close();
    }

    @Test
    void aNumberTakesTheUnitThatStandsBesideIt() {
        line.typed("pad-line", "length").set("20");
        assertThat(line.text().orElseThrow().get("pad-line", "length")).isEqualTo("20 ft");
        line.unit("pad-line", "length", "m");
        assertThat(line.text().orElseThrow().get("pad-line", "length")).isEqualTo("20 m");
        assertThat(line.now()
                        .get()
                        .orElseThrow()
                        .layout()
                        .segment("pad-line")
                        .route()
                        .length()
                        .feet())
                .isCloseTo(65.6, org.assertj.core.data.Offset.offset(0.05));
        line.typed("pad-line", "length").set("30ft");
        assertThat(line.unit("pad-line", "length")).isEqualTo("ft");
        assertThat(line.typed("pad-line", "length").get()).isEqualTo("30");
    }

    @Test
    void whatIsNotPossibleIsToldBesideItsFieldAndTheDrawingStays() {
        var allowed = line.allowed("pad-line", "length");
        var other = line.allowed("source", "pressure");
        line.typed("pad-line", "length").set("far");
        assertThat(allowed.get()).isNotEmpty();
        assertThat(other.get()).isEmpty();
        assertThat(line.now().get()).isPresent();
        line.typed("pad-line", "length").set("54");
        assertThat(allowed.get()).isEmpty();
        line.typed("source", "pressure").set("much");
        assertThat(other.get()).isNotEmpty();
    }

    @Test
    void eachFieldOfTheLineIsUndoneByItself() {
        var before = bench.draft();
        line.typed("pad-line", "length").set("6");
        line.typed("pad-line", "length").set("60");
        var between = bench.draft();
        line.typed("pad-line", "fittings.ell-90").set("2");
        bench.history().undo();
        assertThat(bench.draft()).isEqualTo(between);
        bench.history().undo();
        assertThat(bench.draft()).isEqualTo(before);
        bench.history().redo();
        bench.history().redo();
        assertThat(line.typed("pad-line", "fittings.ell-90").get()).isEqualTo("2");
    }

    @Test
    void aNodeIsMovedWithAllBehindItAndTidiedAgain() {
        var layout = line.now().get().orElseThrow().layout();
        var at = LinePlaces.of(layout, bench.draft()).node("pad");
        bench.history().change(draft -> LinePlaces.of(layout, draft).moved("pad", 3, 2));
        var moved = LinePlaces.of(layout, bench.draft()).node("pad");
        assertThat(moved.x() - at.x()).isEqualTo(3);
        assertThat(moved.y() - at.y()).isEqualTo(2);
        assertThat(LinePlaces.of(layout, bench.draft()).appliance("pool-heater"))
                .isEqualTo(moved);
        assertThat(LinePlaces.of(layout, LinePlaces.tidied(bench.draft())).node("pad"))
                .isEqualTo(at);
    }

    @Test
    void noTwoEndsOfALargeLineStandInOnePlace() {
        var draft = LargeLine.on(Shop.demo(2), 50);
        var layout = new LineModel(new BenchModel(work, draft), work.line(), new AtOnce())
                .now()
                .get()
                .orElseThrow()
                .layout();
        var places = LinePlaces.of(layout, Draft.empty());
        var spots = new HashSet<>();
        layout.appliances().forEach(appliance -> spots.add(places.appliance(appliance.id())));
        assertThat(spots).hasSize(layout.appliances().size());
    }

    @Test
    void stoppedWorkPricesNoPipe() {
        bench.history().change(draft -> draft.with("gate.G1", "yes"));
        line.plan();
        assertThat(line.ways().get()).isEmpty();
        assertThat(line.refusal().get()).isNotEmpty();
    }
}

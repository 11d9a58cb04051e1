package fairflame.screen;

import static org.assertj.core.api.Assertions.assertThat;

import fairflame.invoice.actual.ActualEntry;
import fairflame.invoice.actual.OutsideWork;
import fairflame.invoice.permit.PermitState;
import fairflame.invoice.permit.PermitStep;
import fairflame.quote.LineKind;
import fairflame.screen.handover.HandoverWork;
import fairflame.screen.look.Look;
import fairflame.screen.look.Theme;
import fairflame.visit.Billing;
import fairflame.visit.CompletionFile;
import fairflame.visit.JobActuals;
import fairflame.visit.Permits;
import fairflame.visit.Progress;
import fairflame.visit.Workplace;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.control.ToggleButton;
import org.joda.money.Money;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Every part of a visit's file, with everything on it opened: nothing cut, covered, too small or too faint. */
@ExtendWith(ScreenMachine.class)
class FilePicturesTest {
    private static final String QUOTE = "Q-2026-0001";
    private static final Set<String> FOLDS =
            Set.of("outside", "actual-pad", "actual-tasks", "waiver", "part-bill", "change-line", "change-remove");

    @TempDir
    Path folder;

    private final List<String> faults = new ArrayList<>();
    private final MovingClock clock = new MovingClock();

    @ParameterizedTest
    @CsvSource(textBlock = """
            1280,  800, BRIGHT, en, 100
            1280,  800, DIM,    es, 100
            1920, 1080, BRIGHT, es, 100
            1920, 1080, DIM,    en, 100
            1024,  768, BRIGHT, es, 100
            1024,  768, DIM,    en, 100
            1280,  800, BRIGHT, es, 200
            1024,  768, DIM,    en, 200
            """)
    void everyPartOfAFileIsWholeAndReadable(int width, int height, Theme theme, String language, int text) {
        try (var workplace = Shop.in(folder, clock)) {
            var work = new WorkplaceScreens(workplace, true);
            signed(work);
            var name = width + "x" + height + "-" + theme.name().toLowerCase(Locale.ROOT) + "-" + language + "-" + text;
            work.remember("language", language);
            Toolkit.run(() -> {
                var look = new Look();
                look.theme().set(theme);
                look.textPercent(text);
                walk(work, workplace, look, new Scene(new javafx.scene.layout.StackPane(), width, height), name);
            });
            assertThat(faults).isEmpty();
        }
    }

    private static void signed(WorkplaceScreens work) {
        var draft = Shop.demo(2);
        work.keep(draft);
        var quote = work.offer(draft, Progress.UNWATCHED);
        var promises = work.promises(quote, "larger-line", "en");
        work.sign(
                quote,
                "larger-line",
                new HandoverWork.Act(
                        "Tobias Renner",
                        "owner",
                        promises,
                        List.of(List.of(10, 20, 300, 40, 500, 60)),
                        "Ines Calloway"),
                Progress.UNWATCHED);
    }

    private void walk(WorkplaceScreens work, Workplace workplace, Look look, Scene scene, String name) {
        open(work, look, scene);
        sections(scene, name, List.of("permit", "days", "money"));
        goOn(workplace);
        open(work, look, scene);
        sections(scene, name, List.of("work", "change", "bill"));
        billed(workplace);
        open(work, look, scene);
        sections(scene, name, List.of("permit", "bill", "money", "warranty"));
    }

    private static void open(WorkplaceScreens work, Look look, Scene scene) {
        var model = new ShellModel(work);
        model.open("V-2026-0602");
        model.place().set(Place.LEDGER);
        scene.setRoot(new Shell(model, look, details -> {}));
        look.dress(scene);
    }

    /** Permit, work beyond what was signed, something outside, a part bill, then everything. */
    private void goOn(Workplace workplace) {
        var permits = new Permits(workplace);
        var today = workplace.today();
        permits.step(QUOTE, new PermitStep(today, PermitState.APPLIED, "Ines", "", Optional.empty(), ""));
        permits.step(
                QUOTE,
                new PermitStep(
                        today, PermitState.ISSUED, "Ines", "GP-26-0417", Optional.of(LocalDate.of(2026, 12, 1)), ""));
        clock.days(9);
        var job = new JobActuals(workplace);
        var part = job.of(QUOTE).work().rows().stream()
                .map(row -> row.line())
                .filter(line -> line.kind() == LineKind.PART && line.unit().equals("each"))
                .findFirst()
                .orElseThrow();
        job.enter(
                QUOTE,
                new ActualEntry(
                        Map.of(part.id(), part.quantity().add(BigDecimal.ONE)),
                        List.of(new OutsideWork(
                                "Rotted union behind the wall", LineKind.PART, Money.parse("USD 45.00"), false)),
                        Set.of(),
                        Set.of(),
                        Map.of(),
                        ""));
    }

    private static void billed(Workplace workplace) {
        var job = new JobActuals(workplace);
        var part = job.of(QUOTE).work().beyond().get(0).line().id();
        job.enter(
                QUOTE,
                new ActualEntry(
                        Map.of(),
                        List.of(new OutsideWork(
                                "Rotted union behind the wall", LineKind.PART, Money.parse("USD 0.00"), false)),
                        Set.of(part),
                        Set.of(),
                        Map.of(),
                        "The shop bears it"));
        var billing = new Billing(workplace);
        var bill = billing.invoice(QUOTE, CompletionFile.NOTHING, new Billing.Terms(workplace.today(), 14, false));
        billing.pay(
                bill.invoice().number(),
                new Billing.Received(Money.parse("USD 100.00"), "cash", "", workplace.today()));
    }

    private void sections(Scene scene, String name, List<String> sections) {
        for (var section : sections) {
            layout(scene);
            if (scene.lookup("#leaf-1") instanceof ToggleButton file && !file.isSelected()) {
                file.fire();
                layout(scene);
            }
            ((ToggleButton) scene.lookup("#section-" + section)).fire();
            layout(scene);
            unfold(scene.getRoot());
            layout(scene);
            SceneCheck.faults(scene).forEach(fault -> faults.add(section + " " + name + ": " + fault));
            Shots.take(scene, "part-" + section + "-" + name);
        }
    }

    private static void unfold(Node node) {
        if (node instanceof ToggleButton key && key.getId() != null && !key.isSelected() && isFold(key.getId())) {
            key.fire();
        }
        if (node instanceof Parent parent) {
            List.copyOf(parent.getChildrenUnmodifiable()).forEach(FilePicturesTest::unfold);
        }
    }

    private static boolean isFold(String id) {
        return FOLDS.contains(id) || id.startsWith("credit-I") || id.startsWith("write-off-I");
    }

    private static void layout(Scene scene) {
        for (int i = 0; i < 2; i++) {
            scene.getRoot().applyCss();
            scene.getRoot().layout();
        }
    }
}

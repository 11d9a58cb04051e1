package fairflame.screen;

import static org.assertj.core.api.Assertions.assertThat;

import fairflame.catalog.edit.Spot;
import fairflame.invoice.report.ActualHours;
import fairflame.invoice.report.TimeComparison;
import fairflame.screen.kit.AtOnce;
import fairflame.screen.kit.Veil;
import fairflame.screen.look.Look;
import fairflame.screen.look.Theme;
import fairflame.screen.look.Words;
import fairflame.screen.stock.StockModel;
import fairflame.screen.stock.StockView;
import fairflame.screen.stock.StockWork;
import fairflame.visit.Library;
import fairflame.visit.OwnShop;
import fairflame.visit.Shelf;
import fairflame.visit.ShopEditing;
import fairflame.visit.Workplace;
import java.io.IOException;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Proxy;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.control.ToggleButton;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.StackPane;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The stock room of a shop of one's own, table by table and sheet by sheet: nothing cut, covered, small or faint. */
@ExtendWith(ScreenMachine.class)
class StockPicturesTest {
    @TempDir
    Path folder;

    private final List<String> faults = new ArrayList<>();

    @ParameterizedTest
    @CsvSource(textBlock = """
            1280,  800, BRIGHT, en, 100
            1920, 1080, DIM,    es, 100
            1024,  768, BRIGHT, es, 100
            1280,  800, DIM,    en, 200
            """)
    void everyTableAndSheetIsWholeAndReadable(int width, int height, Theme theme, String language, int text)
            throws IOException {
        OwnShop.begin(
                folder,
                new OwnShop.Details(
                        "Heron Pool Care",
                        List.of("4 Weir Lane", "Larkwell"),
                        "555-0160",
                        "hello@heron.example",
                        "AS-1"));
        try (var workplace = Workplace.open(folder, Library.load(OwnShop.in(folder)), Shop.DAY, "Tove Marchetti")) {
            change(new ShopEditing(workplace));
            var work = timed(new WorkplaceScreens(workplace, false).stock());
            var list = work.preview(
                    "tern",
                    Files.writeString(folder.resolve("list.csv"), list()),
                    Map.of("number", "Item", "cost", "Price", "description", "Text"),
                    (stage, rows) -> {});
            var name = width + "x" + height + "-" + theme.name().toLowerCase(Locale.ROOT) + "-" + language + "-" + text;
            Toolkit.run(() -> {
                var model = new StockModel(work, new AtOnce());
                var look = new Look();
                look.theme().set(theme);
                look.textPercent(text);
                var holder = new StackPane();
                holder.getStyleClass().add("desk");
                var veil = new Veil(holder);
                holder.getChildren().add(new StockView(model, Words.in(language), look, veil, Optional.empty()));
                var scene = new Scene(veil, width, height);
                look.dress(scene);
                walk(scene, model, veil, name);
                model.table().set(StockModel.IMPORT);
                model.list().supplier().set("tern");
                model.list().looked(list);
                see(scene, "stock-import", name);
            });
            assertThat(faults).isEmpty();
        }
    }

    private void walk(Scene scene, StockModel model, Veil veil, String name) {
        for (var table : List.of("parts", "tasks", "rates", "places", "texts", "hours", "changes")) {
            model.table().set(table);
            find(scene.getRoot(), "leaf-1").ifPresent(leaf -> ((ToggleButton) leaf).fire());
            see(scene, "stock-" + table, name);
        }
        var sheets = List.of(
                List.of("parts", "row-CN-1100"),
                List.of("tasks", "row-R03"),
                List.of("rates", "row-hourly"),
                List.of("places", "row-jurisdictions/larkwell.yaml"),
                List.of("company", "row-company.yaml"),
                List.of("texts", "row-N-GASFIT"));
        for (var sheet : sheets) {
            model.table().set(sheet.get(0));
            find(scene.getRoot(), "leaf-1").ifPresent(leaf -> ((ToggleButton) leaf).fire());
            scene.getRoot().applyCss();
            scene.getRoot().layout();
            press(scene.getRoot(), sheet.get(1).equals("row-CN-1100") ? first(model) : sheet.get(1));
            see(scene, "stock-sheet-" + sheet.get(0), name);
            veil.lift();
        }
    }

    private static String first(StockModel model) {
        return "row-" + model.rows().rows().get(0).spot().last();
    }

    private static void press(Parent root, String id) {
        find(root, id)
                .orElseThrow(() -> new AssertionError(id))
                .fireEvent(new KeyEvent(KeyEvent.KEY_PRESSED, "", "", KeyCode.ENTER, false, false, false, false));
    }

    private static Optional<Node> find(Node node, String id) {
        if (id.equals(node.getId())) {
            return Optional.of(node);
        }
        return node instanceof Parent parent
                ? parent.getChildrenUnmodifiable().stream()
                        .map(child -> find(child, id))
                        .flatMap(Optional::stream)
                        .findFirst()
                : Optional.empty();
    }

    private static void change(ShopEditing editing) {
        var rates = editing.open(editing.rows(Shelf.RATES, "hourly", 1).rows().get(0));
        editing.keep(rates, Map.of(Spot.of("hourly", "T"), "152.50"), "new year, dearer insurance");
        var part = editing.open(editing.rows(Shelf.PARTS, "", 1).rows().get(0));
        editing.keep(part, Map.of(part.row().spot().in("cost"), "38.20"), "the supplier told us by phone");
    }

    private static String list() {
        var text = new StringBuilder("Item,Price,Text\n");
        for (int i = 0; i < 12; i++) {
            text.append("N-").append(i).append(i < 5 ? ",cheap" : ",2.00").append(",Thing\n");
        }
        return text.toString();
    }

    /** The shop's own answers, and hours of jobs as they would come from completed work. */
    private static StockWork timed(StockWork work) {
        var hours = new ArrayList<ActualHours>();
        for (int i = 0; i < 9; i++) {
            hours.add(new ActualHours(
                    "Q-" + i,
                    LocalDate.of(2026, 5, 1 + i),
                    "R03",
                    "",
                    new BigDecimal("0.30"),
                    new BigDecimal("0.3" + i).add(new BigDecimal("0.10"))));
            hours.add(new ActualHours(
                    "Q-" + i,
                    LocalDate.of(2026, 5, 1 + i),
                    "R02",
                    i < 5 ? "tight-space" : "",
                    BigDecimal.ONE,
                    BigDecimal.ONE));
        }
        return (StockWork) Proxy.newProxyInstance(
                StockWork.class.getClassLoader(), new Class<?>[] {StockWork.class}, (proxy, method, values) -> {
                    if (method.getName().equals("hours")) {
                        return TimeComparison.of(hours);
                    }
                    try {
                        return method.invoke(work, values);
                    } catch (InvocationTargetException e) {
                        throw e.getCause();
                    }
                });
    }

    private void see(Scene scene, String what, String name) {
        for (int i = 0; i < 2; i++) {
            scene.getRoot().applyCss();
            scene.getRoot().layout();
        }
        SceneCheck.faults(scene).forEach(fault -> faults.add(what + " " + name + ": " + fault));
        Shots.take(scene, what + "-" + name);
    }
}

package fairflame.screen;

import static org.assertj.core.api.Assertions.assertThat;

import fairflame.screen.look.Theme;
import fairflame.visit.Library;
import fairflame.visit.OwnShop;
import fairflame.visit.Shelf;
import fairflame.visit.ShopEditing;
import fairflame.visit.Upkeep;
import fairflame.visit.Workplace;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.util.List;
import java.util.function.BooleanSupplier;
import org.apache.poi.xssf.streaming.SXSSFWorkbook;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** The stock room by mouse and keyboard: a row changed and taken back, price lists looked at, stopped, taken, undone. */
@ExtendWith(ScreenMachine.class)
class StockRoomTest {
    private static final int MANY = 60_000;

    @TempDir
    Path folder;

    private Workplace workplace;
    private Hand hand;

    @BeforeEach
    void open() {
        OwnShop.begin(
                folder,
                new OwnShop.Details(
                        "Heron Pool Care", List.of("4 Weir Lane", "Larkwell"), "555-0160", "hello@heron.example", ""));
        workplace = Workplace.open(folder, Library.load(OwnShop.in(folder)), Shop.DAY, "Tove Marchetti");
        hand = new Hand(new WorkplaceScreens(workplace, false), 1280, 800, Theme.BRIGHT, "en");
        Toolkit.run(() -> hand.model().place().set(Place.STOCK));
        Toolkit.settle();
    }

    @AfterEach
    void close() {
        hand.close();
        workplace.close();
    }

    private void until(BooleanSupplier held) {
        var end = System.nanoTime() + 240_000_000_000L;
        while (!held.getAsBoolean()) {
            assertThat(System.nanoTime()).as("waited four minutes").isLessThan(end);
            Toolkit.drawn();
        }
    }

    @Test
    void aStandardTimeIsChangedWithAReasonAndTakenBack() {
        hand.press("shelf-tasks").type("stock-search", "weeping").press("row-R02");
        hand.type("edit-times-0-hours", "-3").press("edit-look");
        assertThat(hand.has("edit-keep")).isFalse();
        hand.look("stock-refused");
        hand.type("edit-times-0-hours", "0.35").press("edit-look").look("stock-before-now");
        hand.press("edit-keep");
        assertThat(hand.has("edit-keep")).as("no reason, nothing kept").isTrue();
        hand.type("edit-why", "timed on nine jobs").press("edit-keep");
        assertThat(workplace.library().shop().task("R02").times().get(0).hours())
                .isEqualByComparingTo("0.35");
        hand.press("row-R02").look("stock-history");
        hand.type("edit-why", "counted wrong").press("edit-back-1");
        assertThat(workplace.library().shop().task("R02").times().get(0).hours())
                .isEqualByComparingTo("0.20");
        hand.press("shelf-changes").look("stock-changes");
    }

    @Test
    void anotherPartIsAddedAndAPrintedTextRewritten() {
        hand.press("stock-add");
        hand.type("edit-number", "HP-900")
                .type("edit-description", "Header plug, brass")
                .type("edit-cost", "twelve");
        hand.type("edit-supplier", "tern").type("edit-source", "invoice 88").press("edit-look");
        assertThat(hand.has("edit-keep")).isFalse();
        hand.type("edit-cost", "12.40")
                .press("edit-look")
                .type("edit-why", "we stock it")
                .press("edit-keep");
        hand.type("stock-search", "HP-900").press("row-HP-900").look("stock-part");
        hand.press("edit-close")
                .press("shelf-texts")
                .type("stock-search", "N-ELEC")
                .press("row-N-ELEC");
        hand.type("edit-text", "House voltage is touched only by a licensed electrician.");
        hand.look("stock-text").press("edit-look").type("edit-why", "plainer").press("edit-keep");
        assertThat(workplace.library().templates().get("notes.yaml"))
                .contains("House voltage is touched only by a licensed electrician.");
    }

    @Test
    void aListWithRefusedRowsIsShownRowByRowAndACleanOneIsTakenAndUndone() throws IOException {
        var part = workplace.library().shop().parts().stream()
                .filter(one -> one.supplier().equals("tern"))
                .findFirst()
                .orElseThrow();
        var wrong = Files.writeString(
                folder.resolve("wrong.csv"),
                "Item;Dealer price;Text\n" + part.number()
                        + ";12,50;x\nNEW-1;9.90;New thing\nNEW-2;cheap;Other thing\n");
        hand.press("shelf-import").press("list-look");
        hand.press("supplier-tern").type("list-file", wrong.toString());
        hand.press("list-look").look("stock-import-headings");
        hand.type("heading-number", "Item").type("heading-cost", "Dealer price").type("heading-description", "Text");
        hand.press("list-look");
        until(() -> hand.has("list-refused"));
        hand.look("stock-import-refused");
        assertThat(hand.has("list-take"))
                .as("a list with refused rows cannot be taken")
                .isFalse();

        var right = folder.resolve("right.xlsx");
        sheet(right, part.number());
        hand.type("list-file", right.toString()).press("list-look");
        until(() -> hand.has("list-take"));
        hand.look("stock-import-preview").press("list-take");
        until(() -> hand.has("list-undo-1"));
        assertThat(cost(part.number())).isEqualTo("USD 77.70");
        hand.look("stock-import-taken").press("list-undo-1");
        until(() -> !hand.has("list-undo-1"));
        assertThat(cost(part.number())).isEqualTo(part.cost().toString());
        assertThat(new Upkeep(workplace).mapping("tern").columns()).hasSize(3);
    }

    private String cost(String number) {
        return workplace.library().shop().parts().stream()
                .filter(part -> part.number().equals(number))
                .findFirst()
                .orElseThrow()
                .cost()
                .toString();
    }

    private static void sheet(Path file, String number) throws IOException {
        try (var book = new SXSSFWorkbook(100);
                OutputStream out = Files.newOutputStream(file)) {
            var sheet = book.createSheet();
            var rows = List.of(List.of("Item", "Dealer price", "Text"), List.of(number, "77.70", "Changed"));
            for (int i = 0; i < rows.size(); i++) {
                var row = sheet.createRow(i);
                for (int cell = 0; cell < 3; cell++) {
                    row.createCell(cell).setCellValue(rows.get(i).get(cell));
                }
            }
            book.write(out);
        }
    }

    @Test
    void aLongListIsStoppedHalfWayAndNothingOfItStays() throws IOException, SQLException {
        var text = new StringBuilder("Item,Dealer price,Text\n");
        for (int i = 0; i < MANY; i++) {
            text.append("BIG-")
                    .append(i)
                    .append(",1.")
                    .append(10 + i % 90)
                    .append(",Thing ")
                    .append(i)
                    .append('\n');
        }
        var file = Files.writeString(folder.resolve("big.csv"), text);
        new Upkeep(workplace).remember("tern", List.of("number=Item", "cost=Dealer price", "description=Text"));
        hand.press("shelf-import")
                .press("supplier-tern")
                .type("list-file", file.toString())
                .press("list-look");
        until(() -> hand.has("list-take"));
        assertThat(hand.has("list-more")).isTrue();
        // However quick the machine, the work is still waiting for the database when it is stopped.
        var address = "jdbc:sqlite:" + folder.resolve(Workplace.DATABASE);
        try (var other = DriverManager.getConnection(address);
                var statement = other.createStatement()) {
            statement.execute("BEGIN IMMEDIATE");
            hand.begin("list-take");
            until(() -> hand.has("busy-cancel"));
            hand.glance("stock-import-busy").begin("busy-cancel");
            statement.execute("ROLLBACK");
        }
        until(() -> !hand.has("busy-cancel"));
        assertThat(new Upkeep(workplace).imports()).as("stopped in time").isEmpty();
        assertThat(new ShopEditing(workplace).rows(Shelf.PARTS, "BIG-", 1).found())
                .isZero();
        hand.press("list-take");
        until(() -> hand.has("list-undo-1"));
        assertThat(new ShopEditing(workplace).rows(Shelf.PARTS, "BIG-", 1).found())
                .isEqualTo(MANY);
    }
}

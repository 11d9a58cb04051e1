package fairflame.screen;

import static org.assertj.core.api.Assertions.assertThat;

import fairflame.screen.kit.BesideWindow;
import fairflame.screen.kit.Veil;
import fairflame.screen.look.Look;
import fairflame.screen.look.Theme;
import fairflame.screen.look.Words;
import fairflame.screen.office.OfficePage;
import fairflame.visit.Progress;
import fairflame.visit.Workplace;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.atomic.AtomicReference;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.control.TextField;
import javafx.scene.layout.StackPane;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** From a truck's packet to orders, statement, figures and books, through the window only. */
@ExtendWith(ScreenMachine.class)
class OfficeScreensTest {
    @TempDir
    Path truck;

    @TempDir
    Path office;

    private Hand hand;

    private void press(String id) {
        hand.press(id);
        Toolkit.awaitWork();
        Toolkit.settle();
    }

    /** What stands under a field that was refused. */
    private String refused(String field) {
        var node = (TextField) hand.find(field);
        return Toolkit.on(node::getAccessibleHelp);
    }

    @Test
    void anOfficeGoesFromAPacketToItsBooks() throws IOException {
        var packet = packetWithAnOpenQuote();
        try (var workplace = OfficeFolder.at(office, "2026-06-20");
                var open = new Hand(new WorkplaceScreens(workplace, false), 1280, 800, Theme.BRIGHT, "en")) {
            hand = open;
            packets(packet);
            due();
            orders();
            money();
            figures();
            books();
        }
        try (var back = OfficeFolder.at(office.resolve("back"), "2026-06-21")) {
            assertThat(new WorkplaceScreens(back, false).entries("V-2026-0601")).hasSize(1);
        }
    }

    private Path packetWithAnOpenQuote() {
        OfficeFolder.packet(truck);
        try (var workplace = OfficeFolder.at(truck, "2026-06-21")) {
            new WorkplaceScreens(workplace, false)
                    .offer(Shop.demo(1).with("id", "V-2026-0699").with("date", "2026-06-19"), Progress.UNWATCHED);
            return new OfficeDoor(workplace).export();
        }
    }

    private void packets(Path packet) throws IOException {
        press("page-packets");
        press("packet-take");
        assertThat(refused("packet-file")).contains("allowed: the place of a file or folder");
        hand.type("packet-file", altered(packet).toString());
        press("packet-take");
        assertThat(refused("packet-file")).contains("visits/V-2026-0601.json").contains("altered or damaged");
        hand.look("office-packet-refused");
        hand.type("packet-file", packet.toString());
        press("packet-take");
        assertThat(hand.words("packet-said")).contains("truck-2").contains("0 that do not agree");
        press("packet-export");
        assertThat(refused("packet-laptop")).contains("name of this laptop");
        press("page-visits");
        press("entry-V-2026-0601");
        assertThat(hand.words("ledger-said")).isEmpty();
    }

    /** The same packet with one byte of a visit changed. */
    private Path altered(Path packet) throws IOException {
        var copy = truck.resolve("altered.zip");
        try (var zip = new ZipFile(packet.toFile());
                var out = new ZipOutputStream(Files.newOutputStream(copy))) {
            for (var entry : java.util.Collections.list(zip.entries())) {
                var bytes = zip.getInputStream(entry).readAllBytes();
                if (entry.getName().contains("V-2026-0601")) {
                    bytes[bytes.length - 20] ^= 1;
                }
                out.putNextEntry(new ZipEntry(entry.getName()));
                out.write(bytes);
                out.closeEntry();
            }
        }
        return copy;
    }

    private void due() {
        press("page-due");
        press("due-write");
        assertThat(office.resolve("due.ics")).content().contains("BEGIN:VEVENT").contains("Q-2026-0004");
        hand.look("office-due-written");
        press("due-quote-Q-2026-0004");
        assertThat(hand.has("open-bench")).as("the file lies open").isTrue();
        assertThat(hand.has("entry-V-2026-0699")).isTrue();
    }

    private void orders() {
        press("page-orders");
        var line = "order-line-SW-01";
        press("order-line-SE-01");
        press("order-place-tern");
        assertThat(office.resolve("O-2026-0001.pdf")).exists();
        assertThat(office.resolve("O-2026-0001.xlsx")).exists();
        assertThat(hand.has(line))
                .as("what was ordered is no longer to be ordered")
                .isFalse();
        press("order-place-tern");
        assertThat(hand.words("order-refused-tern")).contains("at least one part");
        press("order-item-O-2026-0001-SW-01");
        hand.look("office-ordered");
        press("order-line-SE-01");
        press("order-place-tern");
        assertThat(hand.has("order-place-tern")).isFalse();
        press("order-all-O-2026-0002");
        assertThat(hand.has("order-all-O-2026-0002")).isFalse();
        assertThat(hand.has("order-all-O-2026-0001")).isTrue();
    }

    private void money() {
        press("page-money");
        press("statement-write");
        assertThat(refused("statement-customer")).contains("the name on a quote");
        hand.type("statement-customer", "Oduya");
        press("statement-name-0");
        hand.type("statement-to", "2025-12-31");
        press("statement-write");
        assertThat(refused("statement-to")).contains("not before the first day");
        hand.look("office-statement-refused");
        hand.type("statement-to", "2026-06-20");
        press("statement-write");
        assertThat(hand.words("statement-said")).contains("statement-Marguerite-Oduya-2026-06-20.pdf");
        assertThat(office.resolve("statement-Marguerite-Oduya-2026-06-20.pdf")).exists();
    }

    private void figures() {
        press("page-figures");
        hand.type("figures-from", "last week");
        press("figures-show");
        assertThat(refused("figures-from")).contains("year-month-day");
        hand.type("figures-from", "2026-06-01");
        press("figures-show");
        press("figures-write");
        assertThat(office.resolve("report-2026-06-01-2026-06-20.pdf")).exists();
        hand.look("office-figures-written");
    }

    private void books() throws IOException {
        press("page-books");
        press("books-journal");
        var journal = Files.readAllLines(office.resolve("journal-2026-01-01-2026-06-20.csv"));
        assertThat(journal)
                .as("two deposits, two postings each, under a heading")
                .hasSize(5);
        hand.type("ubl-number", "I-2026-0001");
        press("books-ubl");
        assertThat(refused("ubl-number")).contains("I-2026-0001");
        press("books-backup");
        assertThat(hand.words("books-said-backup")).contains("backup-2026-06-20.db");
        press("books-backup");
        assertThat(refused("backup-file")).contains("does not exist yet");
        hand.type("restore-file", office.resolve("backup-2026-06-20.db").toString());
        hand.type("restore-folder", office.toString());
        press("books-restore");
        assertThat(refused("restore-folder")).contains(Workplace.DATABASE);
        hand.look("office-restore-refused");
        hand.type(
                "restore-folder", Files.createDirectory(office.resolve("back")).toString());
        press("books-restore");
        assertThat(hand.words("books-said-restore")).contains("back");
        press("books-export");
        assertThat(office.resolve("data-2026-06-20.jsonl")).exists();
    }

    @Test
    void aPersonSettlesAConflictAndAcceptsATime() {
        OfficeFolder.busy(office, OfficeFolder.packet(truck));
        try (var workplace = OfficeFolder.at(office, "2026-06-20");
                var open = new Hand(new WorkplaceScreens(workplace, false), 1280, 800, Theme.DIM, "es")) {
            hand = open;
            press("page-packets");
            press("settle-1");
            assertThat(refused("settle-words-1")).contains("a few words");
            hand.type("settle-words-1", "asked the owner");
            press("settle-1");
            assertThat(hand.has("settle-1")).isFalse();
            assertThat(hand.has("settle-2")).isTrue();
            hand.look("office-settled");
            press("page-figures");
            var accept = "accept-R03";
            press(accept);
            assertThat(refused("reason-R03")).contains("a reason in words");
            hand.type("reason-R03", "eight jobs in June");
            press(accept);
            assertThat(new OfficeDoor(workplace).decisions())
                    .singleElement()
                    .satisfies(decision -> assertThat(decision.reason()).isEqualTo("eight jobs in June"));
            hand.look("office-time-accepted");
            press("page-money");
            press("money-I-2026-0001");
            assertThat(hand.model().page().get()).isEqualTo(OfficePage.VISITS);
            assertThat(hand.has("open-bench")).isTrue();
        }
    }

    /** Work that never ends by itself: after a second a sheet comes, and its key ends the work at its next step. */
    @Test
    void longWorkShowsItsProgressAndCanBeStopped() {
        var told = new AtomicReference<String>();
        var scene = Toolkit.on(() -> {
            var veil = new Veil(new StackPane());
            var fresh = new Scene(veil, 800, 600);
            new Look().dress(fresh);
            new BesideWindow(veil, Words.in("en"))
                    .run(
                            "take",
                            progress -> {
                                for (int i = 0; true; i++) {
                                    progress.at(i % 100, 100);
                                }
                            },
                            done -> told.set("done"),
                            ended -> told.set(ended.words()));
            return fresh;
        });
        var cancel = await(() -> (Button) scene.getRoot().lookup("#busy-cancel"));
        Toolkit.run(cancel::fire);
        Toolkit.awaitWork();
        assertThat(told.get()).isEqualTo("Ended. Nothing of it was kept.");
        assertThat(Toolkit.on(() -> scene.getRoot().lookupAll("#busy-cancel"))).isEmpty();
    }

    private static <T> T await(java.util.concurrent.Callable<T> wanted) {
        var end = System.nanoTime() + 20_000_000_000L;
        while (System.nanoTime() < end) {
            var found = Toolkit.on(wanted);
            if (found != null) {
                return found;
            }
            Toolkit.drawn();
        }
        throw new AssertionError("it never came");
    }
}

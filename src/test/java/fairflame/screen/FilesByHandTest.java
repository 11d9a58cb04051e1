package fairflame.screen;

import static org.assertj.core.api.Assertions.assertThat;

import fairflame.document.photo.PhotoFiles;
import fairflame.screen.bench.Steps;
import fairflame.screen.kit.Choosing;
import fairflame.screen.look.Theme;
import fairflame.screen.office.OfficePage;
import fairflame.visit.Workplace;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import javafx.scene.control.TextField;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** Files as a hand brings them: pointed at in the list of files, or dropped; a changed mind leaves everything as it was. */
@ExtendWith(ScreenMachine.class)
class FilesByHandTest {
    private static final String VISIT = "V-2026-0603";

    @TempDir
    Path folder;

    @TempDir
    Path elsewhere;

    private Workplace workplace;
    private WorkplaceScreens work;
    private Hand hand;
    private PointedAt person;

    @BeforeEach
    void open() {
        workplace = Shop.in(folder);
        work = new WorkplaceScreens(workplace, true);
        work.keep(Shop.demo(3));
        hand = new Hand(work, 1280, 800, Theme.BRIGHT, "en");
        person = hand.pointing();
        Toolkit.run(() -> hand.model().open(VISIT));
        Toolkit.settle();
    }

    @AfterEach
    void close() {
        hand.close();
        workplace.close();
    }

    private String typed(String field) {
        var node = (TextField) hand.find(field);
        return Toolkit.on(node::getText);
    }

    private String refused(String field) {
        var node = hand.find(field);
        return Toolkit.on(node::getAccessibleHelp);
    }

    @Test
    void aPhotoIsChosenDroppedOrNeither() throws IOException {
        var picture = Files.write(elsewhere.resolve("switch.png"), PhotoFiles.png(600, 400));
        var other = Files.write(elsewhere.resolve("burner.png"), PhotoFiles.png(300, 500));
        Toolkit.run(() -> hand.model().bench().get().orElseThrow().step().set(Steps.PHOTOS));
        hand.press("photo-choose");
        assertThat(work.photos().of(VISIT)).isEmpty();
        assertThat(typed("photo-file")).isEmpty();
        assertThat(refused("photo-file"))
                .as("nothing was asked, nothing is refused")
                .isEmpty();
        assertThat(person.asked().endings()).contains("*.jpg", "*.png");
        person.at(picture.toFile());
        hand.press("photo-choose");
        assertThat(work.photos().of(VISIT)).extracting(photo -> photo.name()).containsExactly("switch.jpg");
        assertThat(hand.drop("photo-file", other)).isTrue();
        assertThat(work.photos().of(VISIT))
                .extracting(photo -> photo.name())
                .containsExactly("switch.jpg", "burner.jpg");
        assertThat(typed("photo-file")).isEmpty();
        var letter = Files.writeString(elsewhere.resolve("letter.txt"), "no picture");
        hand.drop("photo-add", letter);
        assertThat(refused("photo-file")).contains("not a picture");
        assertThat(work.photos().of(VISIT)).hasSize(2);
    }

    @Test
    void aPriceListIsChosenDroppedOrNeither() throws IOException {
        var list = Files.writeString(elsewhere.resolve("list.csv"), "Item,Dealer price\n");
        Toolkit.run(() -> hand.model().place().set(Place.STOCK));
        Toolkit.settle();
        hand.press("shelf-import").press("list-choose");
        assertThat(typed("list-file")).isEmpty();
        person.at(list.toFile());
        hand.press("list-choose");
        assertThat(typed("list-file")).isEqualTo(list.toString());
        person.atNothing();
        hand.press("list-choose");
        assertThat(typed("list-file")).as("a changed mind").isEqualTo(list.toString());
        hand.type("list-file", "");
        assertThat(hand.drop("list-look", list)).isTrue();
        assertThat(typed("list-file")).isEqualTo(list.toString());
        assertThat(work.stock().imports()).as("nothing is taken over by itself").isEmpty();
    }

    @Test
    void aFolderForTheCopyIsChosenOrNot() {
        hand.press("hand-over").press("take-diagnosis");
        new VisitByHand(hand, Shop.demo(3)).ids("promise-").forEach(hand::press);
        hand.type("signer", "Odalys Brennecke").draw("signature-pad").press("sign");
        var place = hand.words("copy-place");
        hand.press("copy-choose");
        assertThat(hand.words("copy-place")).isEqualTo(place);
        assertThat(hand.words("copy-said")).isEmpty();
        assertThat(elsewhere).isEmptyDirectory();
        assertThat(person.asked().kind()).isEqualTo(Choosing.Kind.FOLDER);
        person.at(elsewhere.toFile());
        hand.press("copy-choose");
        assertThat(elsewhere).isDirectoryContaining("glob:**Q-2026-0001-copy.pdf");
        assertThat(hand.words("copy-said")).contains(elsewhere.toString());
        assertThat(work.copies().folder()).as("remembered").isEqualTo(elsewhere);
    }

    @Test
    void aReturnedPaperIsChosenDroppedOrNeither() throws IOException {
        var paper = Files.writeString(elsewhere.resolve("back.pdf"), "no paper of ours");
        hand.press("hand-over").press("handover-away").press("away-choose");
        assertThat(typed("away-file")).isEmpty();
        person.at(paper.toFile());
        hand.press("away-choose");
        assertThat(typed("away-file")).isEqualTo(paper.toString());
        hand.press("away-read");
        assertThat(refused("away-file")).isNotEmpty();
        hand.type("away-file", "");
        assertThat(hand.drop("away-file", paper)).isTrue();
        assertThat(typed("away-file")).isEqualTo(paper.toString());
        assertThat(work.file(VISIT).signed()).isEmpty();
    }

    @Test
    void aPacketAndAPlaceForTheBackupAreChosenDroppedOrNeither() throws IOException {
        var packet = Files.writeString(elsewhere.resolve("packet.zip"), "no packet");
        Toolkit.run(() -> {
            hand.model().place().set(Place.LEDGER);
            hand.model().page().set(OfficePage.PACKETS);
        });
        Toolkit.settle();
        hand.press("packet-file-choose");
        assertThat(typed("packet-file")).isEmpty();
        person.at(packet.toFile());
        hand.press("packet-file-choose").press("packet-take");
        assertThat(typed("packet-file")).isEqualTo(packet.toString());
        assertThat(refused("packet-file")).contains("packet.zip");
        hand.type("packet-file", "");
        assertThat(hand.drop("packet-file", packet)).isTrue();
        assertThat(typed("packet-file")).isEqualTo(packet.toString());
        Toolkit.run(() -> hand.model().page().set(OfficePage.BOOKS));
        Toolkit.settle();
        var before = typed("backup-file");
        person.atNothing();
        hand.press("backup-file-choose");
        assertThat(typed("backup-file")).isEqualTo(before);
        assertThat(person.asked().kind()).isEqualTo(Choosing.Kind.SAVE);
        person.at(elsewhere.resolve("safe.db").toFile());
        hand.press("backup-file-choose").press("books-backup");
        assertThat(elsewhere.resolve("safe.db")).exists();
    }
}

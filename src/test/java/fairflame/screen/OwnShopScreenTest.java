package fairflame.screen;

import static org.assertj.core.api.Assertions.assertThat;

import fairflame.screen.look.Theme;
import fairflame.visit.Library;
import fairflame.visit.OwnShop;
import fairflame.visit.Workplace;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** From the demo shop to a shop of one's own, by mouse and keyboard. */
@ExtendWith(ScreenMachine.class)
class OwnShopScreenTest {
    @TempDir
    Path folder;

    @Test
    void theDetailsAreAskedForOneByOneAndThenTheShopOpens() {
        var begun = new ArrayList<OwnShop.Details>();
        try (var workplace = Shop.in(folder);
                var hand = new Hand(new WorkplaceScreens(workplace, true), 1280, 800, Theme.BRIGHT, "en", details -> {
                    OwnShop.begin(folder, details);
                    begun.add(details);
                })) {
            Toolkit.run(() -> hand.model().place().set(Place.STOCK));
            Toolkit.settle();
            hand.press("stock-own").press("own-start").look("own-empty");
            assertThat(begun).isEmpty();
            assertThat(Files.exists(folder.resolve("catalog"))).isFalse();
            hand.type("own-name", "Heron Pool Care").type("own-address", "4 Weir Lane, Larkwell");
            hand.type("own-phone", "555-0160")
                    .type("own-email", "nowhere")
                    .press("own-start")
                    .look("own-mail");
            assertThat(begun).isEmpty();
            hand.type("own-email", "hello@heron.example")
                    .type("own-licence", "AS-1")
                    .press("own-start");
            assertThat(begun).hasSize(1);
        }
        var sources = OwnShop.in(folder);
        try (var workplace = Workplace.open(folder, Library.load(sources), Shop.DAY, "Tove Marchetti");
                var hand = new Hand(new WorkplaceScreens(workplace, false), 1280, 800, Theme.DIM, "es")) {
            assertThat(workplace.library().shopName()).isEqualTo("Heron Pool Care");
            Toolkit.run(() -> hand.model().place().set(Place.STOCK));
            Toolkit.settle();
            hand.press("shelf-company").press("row-company.yaml").look("own-company");
        }
    }
}

package fairflame.screen.photo;

import static org.assertj.core.api.Assertions.assertThat;

import fairflame.Refusal;
import fairflame.quote.Photo;
import fairflame.screen.kit.AtOnce;
import fairflame.screen.kit.Later;
import fairflame.visit.Progress;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class PhotoModelTest {
    private final List<Photo> kept = new ArrayList<>();
    private boolean sealed;
    private final PhotoModel model = new PhotoModel(new Work(), "V-2026-0001", List.of(), new AtOnce());

    private final class Work implements PhotoWork {
        @Override
        public List<Photo> of(String visit) {
            return List.copyOf(kept);
        }

        @Override
        public byte[] picture(String visit, String name) {
            return new byte[0];
        }

        @Override
        public Photo add(String visit, Path file, Progress progress) {
            progress.look();
            var photo = new Photo(file.toString(), "", "", "0".repeat(64), false);
            kept.add(photo);
            return photo;
        }

        @Override
        public void tell(String visit, Photo told) {
            if (sealed) {
                throw Refusal.notAllowed("photo " + told.name(), "sealed", "a photo that is not");
            }
            kept.replaceAll(photo -> photo.name().equals(told.name()) ? told : photo);
        }

        @Override
        public void remove(String visit, String name) {
            kept.removeIf(photo -> photo.name().equals(name));
        }
    }

    private Photo taken() {
        model.file().set(" switch.jpg ");
        model.add();
        return model.photos().get().get(0);
    }

    @Test
    void aTypedPictureIsTakenInAndTheFieldIsFreeAgain() {
        assertThat(taken().name()).isEqualTo("switch.jpg");
        assertThat(model.file().get()).isEmpty();
        model.add();
        assertThat(model.refusal().get()).contains("the path of a picture");
    }

    @Test
    void aPictureThatIsOnItsWayIsNotTakenInTwice() {
        var later = new Later();
        var slow = new PhotoModel(new Work(), "V-2026-0001", List.of(), later);
        slow.file().set("switch.jpg");
        slow.add();
        slow.add();
        assertThat(later.waiting()).isEqualTo(1);
        later.go();
        assertThat(slow.photos().get()).hasSize(1);
        slow.file().set("other.jpg");
        slow.add();
        later.go();
        assertThat(slow.photos().get()).as("the key is of use again").hasSize(2);
    }

    @Test
    void aPersonWhoEndsTheWorkKeepsThePathAndNoPicture() {
        var ended = new PhotoModel(new Work(), "V-2026-0001", List.of(), AtOnce.endedAt(0));
        ended.file().set("switch.jpg");
        ended.add();
        assertThat(kept).isEmpty();
        assertThat(ended.file().get()).isEqualTo("switch.jpg");
        assertThat(ended.refusal().get()).isEqualTo("ended by hand");
    }

    @Test
    void whatIsSaidOfAPictureLeavesTheRestAsItWas() {
        model.caption(taken(), " Water ");
        model.show(model.photos().get().get(0), true);
        model.about(model.photos().get().get(0), "leak-outlet");
        assertThat(model.photos().get())
                .containsExactly(new Photo("switch.jpg", "Water", "leak-outlet", "0".repeat(64), true));
        model.remove(model.photos().get().get(0));
        assertThat(model.photos().get()).isEmpty();
    }

    @Test
    void aSealedPictureStaysAndSaysWhy() {
        var photo = taken();
        sealed = true;
        model.caption(photo, "Dry");
        assertThat(model.refusal().get()).contains("sealed");
        assertThat(model.photos().get()).containsExactly(photo);
    }
}

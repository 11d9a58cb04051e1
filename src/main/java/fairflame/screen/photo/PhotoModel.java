package fairflame.screen.photo;

import fairflame.Refusal;
import fairflame.quote.Photo;
import fairflame.screen.kit.Ended;
import fairflame.screen.kit.LongWork;
import fairflame.screen.kit.OneAtATime;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;

/** The photographs of the visit on the bench, without a window. */
public final class PhotoModel {
    private final PhotoWork work;
    private final String visit;
    private final List<About> abouts;
    private final LongWork runner;
    private final StringProperty file = new SimpleStringProperty("");
    private final StringProperty refusal = new SimpleStringProperty("");
    private final ReadOnlyObjectWrapper<List<Photo>> photos = new ReadOnlyObjectWrapper<>(List.of());

    /**
     * Something that a photograph may belong to.
     *
     * @param id of a check or gate
     */
    public record About(String id, String title) {}

    /** The photographs of a visit; {@code abouts} is what they may belong to, {@code runner} takes them in. */
    public PhotoModel(PhotoWork work, String visit, List<About> abouts, LongWork runner) {
        this.runner = new OneAtATime(runner);
        this.work = work;
        this.visit = visit;
        this.abouts = List.copyOf(abouts);
        file.addListener((property, before, now) -> refusal.set(""));
        photos.set(work.of(visit));
    }

    public List<About> abouts() {
        return abouts;
    }

    /** Path of a picture, as typed, chosen or dropped. */
    public StringProperty file() {
        return file;
    }

    /** Why the last act was refused; empty when it was not. */
    public StringProperty refusal() {
        return refusal;
    }

    public ReadOnlyObjectProperty<List<Photo>> photos() {
        return photos.getReadOnlyProperty();
    }

    public byte[] picture(Photo photo) {
        return work.picture(visit, photo.name());
    }

    /** Takes the typed file in. */
    public void add() {
        var typed = file.get().strip();
        runner.run(
                "photo",
                progress -> work.add(visit, path(typed), progress),
                added -> {
                    file.set("");
                    refusal.set("");
                    photos.set(work.of(visit));
                },
                Ended.in(refusal));
    }

    private static Path path(String typed) {
        if (typed.isEmpty()) {
            throw Refusal.missing("photo", "the path of a picture");
        }
        try {
            return Path.of(typed);
        } catch (InvalidPathException e) {
            throw Refusal.malformed("photo", typed, "the path of a picture");
        }
    }

    public void caption(Photo photo, String words) {
        tell(new Photo(photo.name(), words.strip(), photo.about(), photo.sha256(), photo.shown()));
    }

    public void about(Photo photo, String id) {
        tell(new Photo(photo.name(), photo.caption(), id, photo.sha256(), photo.shown()));
    }

    public void show(Photo photo, boolean shown) {
        tell(new Photo(photo.name(), photo.caption(), photo.about(), photo.sha256(), shown));
    }

    private void tell(Photo told) {
        act(() -> work.tell(visit, told));
    }

    public void remove(Photo photo) {
        act(() -> work.remove(visit, photo.name()));
    }

    private void act(Runnable act) {
        try {
            act.run();
            refusal.set("");
        } catch (Refusal refused) {
            refusal.set(refused.getMessage());
        }
        photos.set(work.of(visit));
    }
}

package fairflame.screen;

import fairflame.quote.Photo;
import fairflame.screen.photo.PhotoWork;
import fairflame.visit.Photos;
import fairflame.visit.Progress;
import fairflame.visit.Workplace;
import java.nio.file.Path;
import java.util.List;

/** The part of the door for photographs. */
final class PhotoDoor implements PhotoWork {
    private final Photos photos;

    PhotoDoor(Workplace workplace) {
        this.photos = new Photos(workplace);
    }

    @Override
    public List<Photo> of(String visit) {
        return photos.of(visit);
    }

    @Override
    public byte[] picture(String visit, String name) {
        return photos.picture(visit, name);
    }

    @Override
    public Photo add(String visit, Path file, Progress progress) {
        return photos.add(visit, file, progress);
    }

    @Override
    public void tell(String visit, Photo told) {
        photos.tell(visit, told);
    }

    @Override
    public void remove(String visit, String name) {
        photos.remove(visit, name);
    }
}

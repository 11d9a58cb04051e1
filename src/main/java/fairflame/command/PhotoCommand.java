package fairflame.command;

import com.fasterxml.jackson.databind.JsonNode;
import fairflame.quote.Photo;
import fairflame.visit.Photos;
import fairflame.visit.Workplace;
import java.nio.file.Path;
import java.util.List;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Keeps a photograph with a visit, or lists those that are there. */
@Command(
        name = "photo",
        mixinStandardHelpOptions = true,
        description = "Keep a picture with a visit as evidence: smaller, upright, without place or time of the camera."
                + " Without a file the pictures of the visit are listed.")
final class PhotoCommand extends ShopCommand {
    @Parameters(index = "0", paramLabel = "VISIT", description = "id of the visit")
    private String visit;

    @Parameters(index = "1", arity = "0..1", paramLabel = "FILE", description = "a picture, up to 15 MiB")
    private @Nullable Path file;

    @Option(names = "--caption", description = "one line about it")
    private String caption = "";

    @Option(names = "--about", paramLabel = "ID", description = "the check or gate that it belongs to")
    private String about = "";

    @Option(names = "--show", description = "print it on the quote for the customer")
    private boolean show;

    @Option(names = "--remove", paramLabel = "NAME", description = "take a picture out again, before it is sealed")
    private String removed = "";

    @Override
    void run(Workplace workplace) {
        var photos = new Photos(workplace);
        if (!removed.isEmpty()) {
            photos.remove(visit, removed);
        }
        if (file != null) {
            var photo = photos.add(visit, file);
            photos.tell(visit, new Photo(photo.name(), caption, about, photo.sha256(), show));
        }
        var all = photos.of(visit);
        print(() -> data(all), out -> all.forEach(photo -> out.println(line(photo))));
    }

    private JsonNode data(List<Photo> photos) {
        var root = Printing.object().put("visit", visit);
        var array = root.putArray("photos");
        photos.forEach(photo -> array.addObject()
                .put("name", photo.name())
                .put("caption", photo.caption())
                .put("about", photo.about())
                .put("sha256", photo.sha256())
                .put("shown", photo.shown()));
        return root;
    }

    private static String line(Photo photo) {
        return photo.name()
                + (photo.shown() ? ", shown" : "")
                + (photo.about().isEmpty() ? "" : ", " + photo.about())
                + (photo.caption().isEmpty() ? "" : ": " + photo.caption());
    }
}

package fairflame.document;

import fairflame.document.page.Block;
import fairflame.document.page.Columns;
import fairflame.document.page.Drawing;
import fairflame.document.page.Grid;
import fairflame.document.page.Paragraph;
import fairflame.document.page.Pen;
import fairflame.document.page.Picture;
import fairflame.document.page.Place;
import fairflame.document.page.Row;
import fairflame.document.page.Space;
import fairflame.document.page.Stack;
import fairflame.document.page.Together;
import fairflame.quote.Photo;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.imageio.ImageIO;

/** The photographs that the customer is shown, small, three in a row, each with its caption. */
final class PhotoBlock {
    private static final int ACROSS = 3;
    private static final double TALLEST = 120;

    private final PaperText text;

    PhotoBlock(PaperText text) {
        this.text = text;
    }

    /** The block; nothing when none is shown. A photograph whose file is not here is left out. */
    Optional<Block> of(List<Photo> photos, Map<String, byte[]> files) {
        var cells = new ArrayList<Block>();
        for (var photo : photos) {
            var file = files.get(photo.sha256());
            if (photo.shown() && file != null) {
                cells.add(cell(photo, file));
            }
        }
        if (cells.isEmpty()) {
            return Optional.empty();
        }
        var rows = new ArrayList<Row>();
        for (int i = 0; i < cells.size(); i += ACROSS) {
            var row = new ArrayList<>(cells.subList(i, Math.min(i + ACROSS, cells.size())));
            while (row.size() < ACROSS) {
                row.add(new Stack(List.of()));
            }
            rows.add(Row.of(row).padded(0, 8));
        }
        var grid = new Grid(Columns.equal(ACROSS, 14), List.of(), rows, Grid.Kind.LAYOUT);
        var heading = Words.section(text.say(Label.PHOTOS));
        return Optional.of(cells.size() > ACROSS ? Stack.of(heading, grid) : new Together(Stack.of(heading, grid)));
    }

    private Block cell(Photo photo, byte[] file) {
        var told = photo.caption().isEmpty() ? text.say(Label.PHOTO_TOLD) : photo.caption();
        var drawing = new Picture(new Shown(file, ratio(file), told));
        return photo.caption().isEmpty()
                ? drawing
                : Stack.of(drawing, new Space(3), Paragraph.of(photo.caption(), Type.SMALL));
    }

    /** Height over width. */
    private static double ratio(byte[] file) {
        try {
            var picture = ImageIO.read(new ByteArrayInputStream(file));
            return picture == null ? 1 : (double) picture.getHeight() / picture.getWidth();
        } catch (IOException e) {
            throw new IllegalStateException("a picture in memory cannot be read", e);
        }
    }

    @SuppressWarnings("ArrayRecordComponent") // drawn once, never compared
    private record Shown(byte[] file, double ratio, String told) implements Drawing {
        @Override
        public double height(double width) {
            return Math.min(TALLEST, width * ratio);
        }

        @Override
        public void draw(Pen pen, Place place) {
            double high = height(place.width());
            pen.photo(file, new Place(place.x(), place.top(), high / ratio), high);
        }
    }
}

package fairflame.screen;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import javafx.scene.Scene;
import javafx.scene.image.PixelFormat;
import javax.imageio.ImageIO;

/** Pictures of scenes under target/screens, for people to look at. */
public final class Shots {
    private static final Path FOLDER = Path.of("target", "screens");

    private Shots() {}

    /** Must be called on the window thread. */
    public static Path take(Scene scene, String name) {
        var picture = scene.snapshot(null);
        var width = (int) picture.getWidth();
        var height = (int) picture.getHeight();
        var pixels = new int[width * height];
        picture.getPixelReader().getPixels(0, 0, width, height, PixelFormat.getIntArgbInstance(), pixels, 0, width);
        var image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        image.setRGB(0, 0, width, height, pixels, 0, width);
        try {
            Files.createDirectories(FOLDER);
            var file = FOLDER.resolve(name + ".png");
            ImageIO.write(image, "png", file.toFile());
            return file;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}

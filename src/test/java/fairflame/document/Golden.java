package fairflame.document;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.fail;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.imageio.ImageIO;

/**
 * Kept results. {@code -Dgolden.write=true} renews them, and a renewing run still fails, so that nothing turns green by
 * overwriting.
 */
final class Golden {
    private static final Path FOLDER = Path.of("src/test/resources/golden/document");
    private static final boolean WRITE = Boolean.getBoolean("golden.write");
    // Of 255 levels of grey; letters' edges differ a little between versions of the drawing library.
    private static final int LOUD = 90;

    private Golden() {}

    static void assertSame(String name, String produced) throws IOException {
        var kept = FOLDER.resolve(name);
        if (WRITE) {
            Files.createDirectories(FOLDER);
            Files.writeString(kept, produced);
            fail("rewrote " + kept + "; review the difference and run again");
        }
        assertEquals(Files.readString(kept), produced, kept + " differs");
    }

    /** At most one dot in two hundred may differ loudly. */
    static void assertSame(String name, BufferedImage produced) throws IOException {
        var kept = FOLDER.resolve(name);
        if (WRITE) {
            Files.createDirectories(FOLDER);
            ImageIO.write(produced, "png", kept.toFile());
            fail("rewrote " + kept + "; look at it and run again");
        }
        var wanted = ImageIO.read(kept.toFile());
        assertEquals(wanted.getWidth(), produced.getWidth(), kept + ": width");
        assertEquals(wanted.getHeight(), produced.getHeight(), kept + ": height");
        int differing = differing(wanted, produced);
        int dots = produced.getWidth() * produced.getHeight();
        if (differing * 200 > dots) {
            var seen = Path.of("target", name);
            ImageIO.write(produced, "png", seen.toFile());
            fail(kept + ": " + differing + " of " + dots + " dots differ; see " + seen);
        }
    }

    private static int differing(BufferedImage a, BufferedImage b) {
        int differing = 0;
        for (int y = 0; y < a.getHeight(); y++) {
            for (int x = 0; x < a.getWidth(); x++) {
                if (Math.abs(grey(a.getRGB(x, y)) - grey(b.getRGB(x, y))) > LOUD) {
                    differing++;
                }
            }
        }
        return differing;
    }

    private static int grey(int rgb) {
        return ((rgb >> 16 & 0xFF) * 30 + (rgb >> 8 & 0xFF) * 59 + (rgb & 0xFF) * 11) / 100;
    }
}

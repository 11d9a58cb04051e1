package fairflame.catalog;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;

/** The shipped sample folder as text, for tests that change one thing in it. */
public final class SampleFolder {
    private static final Path ROOT = Path.of("catalog-sample");
    private static final Map<String, String> FILES = read();
    private static final Shop SHOP = ShopFiles.parse(FILES);

    private SampleFolder() {}

    /** A fresh copy: file name to text. */
    public static Map<String, String> files() {
        return new TreeMap<>(FILES);
    }

    /** The sample shop. */
    public static Shop shop() {
        return SHOP;
    }

    private static Map<String, String> read() {
        try (var paths = Files.walk(ROOT)) {
            var files = new TreeMap<String, String>();
            paths.filter(Files::isRegularFile)
                    .forEach(path -> files.put(ROOT.relativize(path).toString().replace('\\', '/'), read(path)));
            return files;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String read(Path path) {
        try {
            return Files.readString(path);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}

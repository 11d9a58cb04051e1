package fairflame.store;

import fairflame.Refusal;
import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystems;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.Collections;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * The text files of a shop's catalog, knowledge or templates folder, read whole. Names are relative to the folder with
 * {@code /} between parts, in order of name. Hidden files and folders (a dot in front) are passed over.
 */
public final class Folder {
    static final int MOST_FILES = 1000;
    static final int MOST_CHARACTERS = 32 * 1024 * 1024;

    private Folder() {}

    /** Reads a folder of a shop; refuses what is not UTF-8 text of reasonable size, naming the file. */
    public static SortedMap<String, String> read(Path folder) {
        if (!Files.exists(folder)) {
            throw Refusal.unusable("folder", folder, "an existing folder");
        }
        if (!Files.isDirectory(folder)) {
            throw Refusal.unusable("folder", folder, "a folder, not a file");
        }
        return walked(folder, folder.toString());
    }

    /**
     * Reads a folder that travels inside the program, such as {@code catalog-sample}, whether the program runs from its
     * jar or from a folder of classes.
     */
    public static SortedMap<String, String> shipped(String root) {
        var source = Folder.class.getProtectionDomain().getCodeSource();
        try {
            return within(Path.of(source.getLocation().toURI()), root);
        } catch (URISyntaxException e) {
            throw new StoreException("the program's own place is no path: " + source.getLocation(), e);
        }
    }

    /** The folder {@code root} of a jar or of a folder of classes. */
    static SortedMap<String, String> within(Path program, String root) {
        if (Files.isDirectory(program)) {
            return read(program.resolve(root));
        }
        // The jar's own file system also shows folders for which the jar holds no entry of their own.
        try (var jar = FileSystems.newFileSystem(program, Map.<String, Object>of())) {
            return read(jar.getPath("/", root.split("/")));
        } catch (IOException e) {
            throw new StoreException("could not read the program's own file " + program, e);
        }
    }

    private static SortedMap<String, String> walked(Path folder, String shown) {
        var reader = new Reader(folder);
        try {
            Files.walkFileTree(folder, reader);
        } catch (AccessDeniedException e) {
            throw Refusal.unusable("folder", shown, "a folder that this user may read: " + e.getFile());
        } catch (IOException e) {
            throw Refusal.unusable("folder", shown, "a folder that can be read (" + e.getMessage() + ")");
        } catch (Refusal refusal) {
            throw refusal.at(shown);
        }
        return Collections.unmodifiableSortedMap(reader.texts);
    }

    private static final class Reader extends SimpleFileVisitor<Path> {
        private final Path folder;
        private final SortedMap<String, String> texts = new TreeMap<>();
        private long characters;

        Reader(Path folder) {
            this.folder = folder;
        }

        @Override
        public FileVisitResult preVisitDirectory(Path directory, BasicFileAttributes attributes) throws IOException {
            return hidden(directory) && !directory.equals(folder)
                    ? FileVisitResult.SKIP_SUBTREE
                    : FileVisitResult.CONTINUE;
        }

        @Override
        public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) throws IOException {
            if (hidden(file)) {
                return FileVisitResult.CONTINUE;
            }
            var name = name(file);
            // Only files: a pipe would wait for ever, and a linked folder may lead back to itself.
            if (!Files.isRegularFile(file)) {
                throw Refusal.unusable("file", name, "a plain file; copy linked folders and files into the folder");
            }
            if (texts.size() == MOST_FILES) {
                throw Refusal.outOfRange("number of files", "more than " + MOST_FILES, "at most " + MOST_FILES);
            }
            var text = read(file, name);
            characters += text.length();
            if (characters > MOST_CHARACTERS) {
                throw Refusal.outOfRange("size of folder", "more than " + MOST_CHARACTERS, "at most 32 MiB of text");
            }
            texts.put(name, text);
            return FileVisitResult.CONTINUE;
        }

        private String read(Path file, String name) throws IOException {
            try {
                return TextFile.text(file);
            } catch (Refusal refusal) {
                throw refusal.at(name);
            }
        }

        /** Parts joined by hand, because the separator of the file system may be a backslash. */
        private String name(Path file) {
            var parts = new StringBuilder();
            for (var part : folder.relativize(file)) {
                parts.append(parts.length() == 0 ? "" : "/").append(part);
            }
            return parts.toString();
        }

        private static boolean hidden(Path path) throws IOException {
            var name = path.getFileName();
            return name != null && (name.toString().startsWith(".") || Files.isHidden(path));
        }
    }
}

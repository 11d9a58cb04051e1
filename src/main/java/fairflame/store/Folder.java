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
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * The text files of a shop's catalog, knowledge or templates folder, read whole. Names are relative to the folder with
 * {@code /} between parts, in order of name. Hidden files and folders (a dot in front) are passed over.
 */
public final class Folder {
    static final int MOST_FILES = 1000;
    static final int MOST_CHARACTERS = 32 * 1024 * 1024;

    /** Files of a templates folder that are no text: see {@link #spreadsheets}. */
    static final List<String> SPREADSHEETS = List.of("quote.xlsx", "invoice.xlsx");

    private static final int MOST_SPREADSHEET_BYTES = 4 * 1024 * 1024;

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
     * The spreadsheets of a templates folder by name, whole: the folder's own, else those that travel with the program.
     *
     * @param folder of a shop; empty for the one inside the program
     */
    public static SortedMap<String, byte[]> spreadsheets(Optional<Path> folder) {
        var found = new TreeMap<String, byte[]>();
        try {
            for (var name : SPREADSHEETS) {
                var own = folder.map(each -> each.resolve(name)).filter(Files::exists);
                found.put(name, own.isPresent() ? spreadsheet(own.get()) : shippedBytes("templates/" + name));
            }
        } catch (IOException e) {
            throw Refusal.unusable("spreadsheet", String.valueOf(e.getMessage()), "a file that can be read");
        }
        return Collections.unmodifiableSortedMap(found);
    }

    private static byte[] spreadsheet(Path file) throws IOException {
        if (!Files.isRegularFile(file)) {
            throw Refusal.unusable("file", file, "a plain file");
        }
        try (var in = Files.newInputStream(file)) {
            // One byte beyond the limit, instead of a size that the file system may misstate.
            var bytes = in.readNBytes(MOST_SPREADSHEET_BYTES + 1);
            if (bytes.length > MOST_SPREADSHEET_BYTES) {
                throw Refusal.outOfRange("size of file", "more than 4 MiB", "at most 4 MiB")
                        .at(file.toString());
            }
            return bytes;
        }
    }

    private static byte[] shippedBytes(String name) throws IOException {
        try (var in = Folder.class.getResourceAsStream("/" + name)) {
            if (in == null) {
                throw new StoreException("the program's own file is missing: " + name, new IOException(name));
            }
            return in.readAllBytes();
        }
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
            var name = name(file);
            if (hidden(file) || SPREADSHEETS.contains(name)) {
                return FileVisitResult.CONTINUE;
            }
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
            // An office program that has a file open leaves one beside it that begins with ~$.
            return name != null
                    && (name.toString().startsWith(".") || name.toString().startsWith("~$") || Files.isHidden(path));
        }
    }
}

package fairflame.store;

import fairflame.Refusal;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * A folder that receives a set of files, all of them or none. Each file is written under a passing name, forced to the
 * disk and then moved over its place, so that a reader never meets half a file. When one move fails, those before it are
 * undone. A process killed between two moves may leave whole new files beside whole old ones.
 */
public final class OutputFolder {
    private static final Logger LOG = LoggerFactory.getLogger(OutputFolder.class);
    private final Path folder;
    private final Writer writer;

    private OutputFolder(Path folder, Writer writer) {
        this.folder = folder;
        this.writer = writer;
    }

    /** Makes the folder when it is missing; refuses a path that is a file or cannot be made. */
    public static OutputFolder at(Path folder) {
        return at(folder, OutputFolder::force);
    }

    static OutputFolder at(Path folder, Writer writer) {
        try {
            Files.createDirectories(folder);
        } catch (FileAlreadyExistsException e) {
            throw Refusal.unusable("output folder", folder, "a folder, but " + e.getFile() + " is a file");
        } catch (IOException e) {
            throw Refusal.unusable("output folder", folder, "a folder that can be made (" + e.getMessage() + ")");
        }
        if (!Files.isWritable(folder)) {
            throw Refusal.unusable("output folder", folder, "a folder that this user may write to");
        }
        return new OutputFolder(folder, writer);
    }

    /** The folder itself. */
    public Path path() {
        return folder;
    }

    /**
     * Writes all files, over those of the same name.
     *
     * @param files content by plain name, without folders
     */
    public void write(Map<String, byte[]> files) {
        var undo = new ArrayDeque<Step>();
        var done = new ArrayList<Step>();
        try {
            var fresh = new ArrayList<Path>();
            for (var file : files.entrySet()) {
                var part = passing(target(file.getKey()), ".part");
                undo.push(() -> Files.deleteIfExists(part));
                writer.write(part, file.getValue());
                fresh.add(part);
            }
            var next = fresh.iterator();
            for (var name : files.keySet()) {
                replace(next.next(), target(name), undo, done);
            }
        } catch (IOException e) {
            take(undo);
            throw Refusal.unusable("output folder", folder, "a folder with room and right to write (" + e + ")");
        } catch (Refusal refusal) {
            take(undo);
            throw refusal.at(folder.toString());
        }
        take(done);
    }

    private void replace(Path part, Path target, Deque<Step> undo, List<Step> done) throws IOException {
        if (Files.exists(target)) {
            var old = passing(target, ".old");
            undo.push(() -> Files.deleteIfExists(old));
            Files.copy(target, old, StandardCopyOption.COPY_ATTRIBUTES);
            done.add(() -> Files.deleteIfExists(old));
            undo.push(() -> move(old, target));
        } else {
            undo.push(() -> Files.deleteIfExists(target));
        }
        move(part, target);
    }

    private static void move(Path from, Path to) throws IOException {
        Files.move(from, to, StandardCopyOption.ATOMIC_MOVE);
    }

    private Path target(String name) {
        if (!name.matches("[\\p{L}\\p{N}][\\p{L}\\p{N} ._-]{0,120}")) {
            throw Refusal.malformed("file name", name, "letters, digits, blanks, dots and dashes");
        }
        var target = folder.resolve(name);
        if (Files.isDirectory(target)) {
            throw Refusal.unusable("file", name, "a file, but a folder of that name is in the way");
        }
        return target;
    }

    /** Not a temporary file of the JDK: those may be read by their owner only, and the moved file would stay so. */
    private Path passing(Path target, String ending) {
        return folder.resolve("." + target.getFileName() + "." + UUID.randomUUID() + ending);
    }

    private static void force(Path file, byte[] content) throws IOException {
        try (var channel = FileChannel.open(file, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
            var rest = ByteBuffer.wrap(content);
            while (rest.hasRemaining()) {
                channel.write(rest);
            }
            channel.force(true);
        }
    }

    private static void take(Iterable<Step> steps) {
        for (var step : steps) {
            try {
                step.run();
            } catch (IOException e) {
                LOG.warn("could not tidy up the output folder: {}", e.toString());
            }
        }
    }

    /** One thing to undo or to tidy up. */
    private interface Step {
        void run() throws IOException;
    }

    /** How bytes reach a file; another one makes faults in tests. */
    interface Writer {
        void write(Path file, byte[] content) throws IOException;
    }
}

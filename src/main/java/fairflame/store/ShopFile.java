package fairflame.store;

import fairflame.Refusal;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.Optional;
import java.util.UUID;

/**
 * One text file of the shop's folder that is replaced whole or not at all: written beside, forced to the disk, then
 * moved over. A byte order mark that the file had stays.
 */
public final class ShopFile {
    private static final byte[] MARK = {(byte) 0xEF, (byte) 0xBB, (byte) 0xBF};

    private ShopFile() {}

    /** The text as it stands on the disk; absent when there is no such file. */
    public static Optional<String> read(Path file) {
        return Files.exists(file) ? Optional.of(TextFile.read(file)) : Optional.empty();
    }

    /** Puts a text in place of the file; without a text the file goes. */
    public static void put(Path file, Optional<String> text) {
        try {
            if (text.isEmpty()) {
                Files.deleteIfExists(file);
                return;
            }
            replace(file, text.get().getBytes(StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw Refusal.unusable("file", file, "a file in a folder with room and right to write (" + e + ")");
        }
    }

    private static void replace(Path file, byte[] content) throws IOException {
        // The reader of the folder passes over names with a dot in front, so half a file is never read.
        var part = file.resolveSibling("." + file.getFileName() + "." + UUID.randomUUID() + ".part");
        try {
            try (var channel = FileChannel.open(part, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
                if (marked(file)) {
                    write(channel, MARK);
                }
                write(channel, content);
                channel.force(true);
            }
            Files.move(part, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } finally {
            Files.deleteIfExists(part);
        }
    }

    private static boolean marked(Path file) throws IOException {
        if (!Files.exists(file)) {
            return false;
        }
        try (var in = Files.newInputStream(file)) {
            return java.util.Arrays.equals(in.readNBytes(MARK.length), MARK);
        }
    }

    private static void write(FileChannel channel, byte[] content) throws IOException {
        var rest = ByteBuffer.wrap(content);
        while (rest.hasRemaining()) {
            channel.write(rest);
        }
    }
}
